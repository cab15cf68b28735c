import { createHash } from 'node:crypto';
import { mkdir, readFile, rename, writeFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { dirname } from 'node:path';
import { fileURLToPath } from 'node:url';
import { fontProviders } from 'astro/config';
import subsetFont from 'subset-font';

/** A face as it is cut: which file of which package, and which stretch of its axes is kept. */
interface Cut {
  readonly source: string;
  readonly name: string;
  readonly axes: Readonly<Record<string, number | { min: number; max: number; default: number }>>;
}

const ASCII = String.fromCodePoint(...Array.from({ length: 0x7f - 0x20 }, (_, index) => 0x20 + index));
const LATIN_LETTERS = String.fromCodePoint(...Array.from({ length: 0x100 - 0xa0 }, (_, index) => 0xa0 + index));
/** Signs beyond Latin-1. A face that has no glyph for one of them leaves it to the reader's own fonts. */
const SIGNS = 'ŒœŠšŽž−√⅓→…‘’“”–—′″‑';
const KEPT = ASCII + LATIN_LETTERS + SIGNS;

/** The display face keeps one optical size: it is only ever set large, and each axis kept costs about a third more. */
const DISPLAY: Cut = {
  source: '@fontsource-variable/literata/files/literata-latin-opsz-normal.woff2',
  name: 'literata',
  axes: { opsz: 30, wght: { min: 400, max: 700, default: 400 } },
};
const TEXT: Cut = {
  source: '@fontsource-variable/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next-latin-wght-normal.woff2',
  name: 'atkinson',
  axes: { wght: { min: 400, max: 700, default: 400 } },
};
const TEXT_ITALIC: Cut = {
  source: '@fontsource-variable/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next-latin-wght-italic.woff2',
  name: 'atkinson-italic',
  axes: { wght: { min: 400, max: 700, default: 400 } },
};

const STORE = fileURLToPath(new URL('../node_modules/.cache/evenfold/fonts/', import.meta.url));
const require = createRequire(import.meta.url);

/** Path of the cut file; cut only when the source, the characters or the axes have changed since the last time. */
async function cut({ source, name, axes }: Cut): Promise<string> {
  const whole = await readFile(require.resolve(source));
  const mark = createHash('sha256').update(whole).update(KEPT).update(JSON.stringify(axes)).digest('hex').slice(0, 12);
  const path = `${STORE}${name}-${mark}.woff2`;
  try {
    await readFile(path);
  } catch {
    await mkdir(dirname(path), { recursive: true });
    const part = `${path}.${process.pid}`;
    await writeFile(part, await subsetFont(whole, KEPT, { targetFormat: 'woff2', variationAxes: axes }));
    // A second build may cut the same face at the same time: each moves a whole file into place.
    await rename(part, path);
  }
  return path;
}

/** The two families of the workbook, cut to the characters it uses, with size-adjusted fall-back faces. */
export async function fonts() {
  const [display, text, italic] = await Promise.all([cut(DISPLAY), cut(TEXT), cut(TEXT_ITALIC)]);
  return [
    {
      provider: fontProviders.local(),
      name: 'Literata',
      cssVariable: '--font-display',
      fallbacks: ['serif'],
      options: { variants: [{ src: [display], weight: '400 700', style: 'normal', display: 'swap' }] },
    },
    {
      provider: fontProviders.local(),
      name: 'Atkinson Hyperlegible Next',
      cssVariable: '--font-text',
      fallbacks: ['sans-serif'],
      options: {
        variants: [
          { src: [text], weight: '400 700', style: 'normal', display: 'swap' },
          { src: [italic], weight: '400 700', style: 'italic', display: 'swap' },
        ],
      },
    },
  ];
}
