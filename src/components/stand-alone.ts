/**
 * Drawings as files of their own. In a page a drawing takes its colours from the style sheets; a file that is shown
 * from a memory stick or put into a hand-out has none, so they are written into it, those of the light page.
 */

/** Names of the house with their values on the light page: the first that a style sheet says, for it says that one first. */
function houseValues(css: string): ReadonlyMap<string, string> {
  const values = new Map<string, string>([['--font-text', 'Verdana']]);
  for (const [, name = '', value = ''] of withoutRemarks(css).matchAll(/(--[\w-]+):\s*([^;]+);/g))
    if (!values.has(name)) values.set(name, value.replace(/light-dark\(\s*([^,]+),[^)]*\)/g, '$1').trim());
  return values;
}

const withoutRemarks = (css: string): string => css.replace(/\/\*[\s\S]*?\*\//g, '');

/** The text with every name of the house in place of which a value can stand; names that an element sets itself stay. */
function filledIn(text: string, values: ReadonlyMap<string, string>): string {
  let filled = text;
  for (let before = ''; before !== filled; ) {
    before = filled;
    filled = filled.replace(/var\((--[\w-]+)(?:,[^()]*)?\)/g, (whole, name: string) => values.get(name) ?? whole);
  }
  return filled;
}

const PARTS = '@layer parts {';

/** The style sheet of figures in its two halves: its names, and what it says of the parts of a drawing. */
export function halvesOf(css: string): { readonly names: string; readonly parts: string } {
  const plain = withoutRemarks(css);
  const from = plain.indexOf(PARTS);
  return {
    names: plain.slice(0, from),
    parts: plain
      .slice(from + PARTS.length, plain.lastIndexOf('}'))
      .replace(/\s+/g, ' ')
      .trim(),
  };
}

export interface HouseStyle {
  /** Style sheets that say what the house's names are, the first to say one counts. */
  readonly tokens: string;
  /** The style sheet of figures. */
  readonly figures: string;
}

/** Pixels across that a file has where the program that opens it asks. */
const ACROSS = 1200;

/** A drawing as the text of an SVG file: a ground of its own, its colours, and its size. */
export function standAlone(svg: string, { tokens, figures }: HouseStyle): string {
  const { names, parts } = halvesOf(figures);
  const values = houseValues(tokens + names);
  const box = /viewBox="([^"]+)"/.exec(svg)?.[1] ?? '0 0 1 1';
  const [left = 0, top = 0, width = 1, height = 1] = box.split(' ').map(Number);
  const styled = /class="/.test(svg) ? `<style>${parts.replaceAll('&', '&amp;')}</style>` : '';
  const ground = `<rect x="${left}" y="${top}" width="${width}" height="${height}" fill="var(--raised)"/>`;
  const named = /xmlns=/.test(svg) ? svg : svg.replace('<svg', '<svg xmlns="http://www.w3.org/2000/svg"');
  const inside = /^(<svg[^>]*>(?:<title.*?<\/title>)?(?:<desc.*?<\/desc>)?)/s;
  const sized = named.replace('<svg', `<svg width="${ACROSS}" height="${Math.round((ACROSS * height) / width)}"`);
  return filledIn(sized.replace(inside, `$1${styled}${ground}`), values);
}
