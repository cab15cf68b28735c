import { readFileSync } from 'node:fs';

/** The values of one block of tokens.css, by name without the two hyphens. */
export type Tokens = Readonly<Record<string, string>>;

const css = readFileSync(new URL('../../src/styles/tokens.css', import.meta.url), 'utf8').replace(
  /\/\*[\s\S]*?\*\//g,
  '',
);

/** The first block whose selectors, white space apart, are these; `after` skips what comes before that text. */
export function block(selectors: string, after = ''): Tokens {
  const from = css.indexOf(after);
  const rules = [...css.slice(from).matchAll(/([^{};]+)\{([^{}]*)\}/g)];
  const found = rules.find(([, head = '']) => head.trim().replace(/\s+/g, ' ') === selectors);
  if (from < 0 || !found) throw new Error(`tokens.css has no block “${selectors}” after “${after}”.`);
  return Object.fromEntries(
    [...(found[2] ?? '').matchAll(/--([\w-]+):\s*([^;]+);/g)].map(([, name, value]) => [name, value]),
  );
}

function channels(colour: string): number[] {
  const digits = /^#([0-9a-f]{6})$/.exec(colour)?.[1];
  if (!digits) throw new Error(`“${colour}” is not a colour of six digits.`);
  return [0, 2, 4].map((at) => Number.parseInt(digits.slice(at, at + 2), 16) / 255);
}

function luminance(colour: string): number {
  const [red = 0, green = 0, blue = 0] = channels(colour).map((channel) =>
    channel <= 0.04045 ? channel / 12.92 : ((channel + 0.055) / 1.055) ** 2.4,
  );
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
}

/** Contrast of two colours by WCAG 2.2, 1 to 21. */
export function contrast(one: string, other: string): number {
  const [darker = 0, lighter = 0] = [luminance(one), luminance(other)].sort((a, b) => a - b);
  return (lighter + 0.05) / (darker + 0.05);
}
