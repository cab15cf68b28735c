/**
 * Drawings as files of their own. In a page a drawing takes its colours from the style sheets; a file that is shown
 * from a memory stick or put into a hand-out has none, so they are written into it: those of the light page on the
 * white ground of the printed one. The dark page shows the same file by the address `#in-the-dark`, and then it has
 * the colours of the dark page.
 */

/** What a file is called by in an address that wants it dark. */
export const IN_THE_DARK = 'in-the-dark';

/** What lies behind a drawing, and behind one in the colours of threads. */
const GROUNDS = ['--raised', '--board'] as const;
const groundOf = (svg: string): string =>
  /^<svg[^>]*class="fig fig-(?:piece|chart)"/.test(svg) ? GROUNDS[1] : GROUNDS[0];

type Theme = 'light' | 'dark';
type Values = ReadonlyMap<string, string>;

/** The colours that a style sheet of tokens says for a page of this theme, and everything it says once for both. */
function houseValues(css: string, theme: Theme): Values {
  const plain = withoutRemarks(css);
  const values = new Map<string, string>([['--font-text', 'Verdana']]);
  if (theme === 'dark')
    for (const [name, value] of saidIn(blockOf(plain, ":root[data-theme='dark']"))) values.set(name, value);
  else {
    const paper = saidIn(blockOf(plain.slice(Math.max(0, plain.indexOf('@media print'))), ':root'));
    for (const name of GROUNDS) {
      const value = paper.get(name);
      if (value) values.set(name, value);
    }
  }
  // The first that a style sheet says of a name is what it says for the light page.
  for (const [name, value] of saidIn(plain)) if (!values.has(name)) values.set(name, value);
  const side = theme === 'light' ? '$1' : '$2';
  for (const [name, value] of values)
    values.set(name, value.replace(/light-dark\(\s*([^,]+),\s*([^)]*)\)/g, side).trim());
  return values;
}

/** Every name with the first value that is said of it. */
function saidIn(css: string): Map<string, string> {
  const said = new Map<string, string>();
  for (const [, name = '', value = ''] of css.matchAll(/(--[\w-]+):\s*([^;]+);/g))
    if (!said.has(name)) said.set(name, value);
  return said;
}

/** What stands between the braces of the first rule with this selector. */
function blockOf(css: string, selector: string): string {
  const from = css.indexOf('{', css.indexOf(selector));
  return css.slice(from + 1, css.indexOf('}', from));
}

const withoutRemarks = (css: string): string => css.replace(/\/\*[\s\S]*?\*\//g, '');

/** The text with every name of the house in place of which a value can stand; names that an element sets itself stay. */
function filledIn(text: string, values: Values): string {
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

/** Where a drawing's own attributes take a paint of the house: which attribute, and which name. */
function paintsOf(svg: string): (readonly [attribute: string, name: string])[] {
  const found = [...svg.matchAll(/(stroke|fill)="var\((--[\w-]+)/g)].map(
    ([, attribute = '', name = '']) => [attribute, name] as const,
  );
  return [...new Map(found.map((paint) => [paint.join(), paint])).values()];
}

/** What makes the file dark when it is asked for so: each paint that it holds, and what the style sheet says anew. */
function darkRules(svg: string, parts: string, light: Values, dark: Values): string {
  const rules = paintsOf(svg).flatMap(([attribute, name]) => {
    const [before, after] = [light, dark].map((values) => filledIn(`var(${name})`, values));
    return before === after ? [] : [`[${attribute}="${before}"]{${attribute}:${after}}`];
  });
  // The drawing itself is the figure here, and what is in it stands alone in a rule.
  const inside = filledIn(parts, dark).replace(/\.fig(?=[ {])/g, '&');
  return `:root:target{>rect:first-of-type{fill:${dark.get(groundOf(svg))}}${rules.join('')}${inside}}`;
}

/** A drawing as the text of an SVG file: a ground of its own, its colours on both pages, and its size. */
export function standAlone(svg: string, { tokens, figures }: HouseStyle): string {
  const { names, parts } = halvesOf(figures);
  const [light, dark] = (['light', 'dark'] as const).map((theme) => houseValues(tokens + names, theme)) as [
    Values,
    Values,
  ];
  const box = /viewBox="([^"]+)"/.exec(svg)?.[1] ?? '0 0 1 1';
  const [left = 0, top = 0, width = 1, height = 1] = box.split(' ').map(Number);
  const classed = /class="/.test(svg) ? parts : '';
  const ground = `<rect x="${left}" y="${top}" width="${width}" height="${height}" fill="var(${groundOf(svg)})"/>`;
  const rules = `${filledIn(classed, light)}${darkRules(svg, classed, light, dark)}`;
  const style = `<style>${rules.replaceAll('&', '&amp;')}</style>`;
  const named = /xmlns=/.test(svg) ? svg : svg.replace('<svg', '<svg xmlns="http://www.w3.org/2000/svg"');
  const inside = /^(<svg[^>]*>(?:<title.*?<\/title>)?(?:<desc.*?<\/desc>)?)/s;
  const sized = named.replace(
    '<svg',
    `<svg id="${IN_THE_DARK}" width="${ACROSS}" height="${Math.round((ACROSS * height) / width)}"`,
  );
  return filledIn(sized.replace(inside, `$1${ground}`), light).replace(inside, `$1${style}`);
}
