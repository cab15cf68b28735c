/**
 * Drawings of cords, made lighter for a page: the same lines in fewer characters. `Knot.astro` has the style sheet.
 */

/** Marks of the twist as they are drawn: a start, a bend, an end. In a page a straight mark looks the same. */
const MARK = /M(-?[\d.]+) ?(-?[\d.]+)q-?[\d.]+ ?-?[\d.]+ ?(-?[\d.]+) ?(-?[\d.]+)/g;

/** The marks of a drawing in steps from one to the next, in half the characters. */
const leanMarks = (svg: string): string =>
  svg.replace(/ d="(M[^"]*q[^"]*)"/g, (whole, marks: string) => {
    let [x, y] = [0, 0];
    let short = '';
    const rest = marks.replace(MARK, (_mark, ...found: string[]) => {
      const [fromX = 0, fromY = 0, wayX = 0, wayY = 0] = found
        .slice(0, 4)
        .map((value) => Math.round(Number(value) * 100));
      short += `m${pair(fromX - x, fromY - y)}l${pair(wayX, wayY)}`;
      [x, y] = [fromX + wayX, fromY + wayY];
      return '';
    });
    return rest === '' ? ` d="${short}"` : whole;
  });

/** Two figures of a path, from hundredths, as short as they go. */
function pair(x: number, y: number): string {
  const [a = '', b = ''] = [x, y].map((value) => String(value / 100).replace(/^(-?)0\./, '$1.'));
  return b.startsWith('-') ? a + b : `${a} ${b}`;
}

/** Path data without what a reader of paths can do without: signs between figures, and a command that is said again. */
export function shortPath(data: string): string {
  let [last, short] = ['', ''];
  for (const [, command = '', told = ''] of data.matchAll(/([a-zA-Z])([^a-zA-Z]*)/g)) {
    const figures = told.replace(/(\.\d+) (?=\.)/g, '$1');
    const joins = figures.startsWith('-') || (figures.startsWith('.') && /\.\d+$/.test(short));
    short += command === last && 'lc'.includes(command) && joins ? figures : command + figures;
    last = command;
  }
  return short;
}

/** What is said of cords again and again, in the order in which it is looked for, and the class that says it in a page. */
const PAINTS: readonly (readonly [said: RegExp, name: string])[] = [
  [/ stroke="var\(--cord-line,[^"]*" stroke-opacity="\.5" stroke-width="\.06"/g, 'twist'],
  [/ stroke="var\(--cord-line,[^"]*" stroke-width="1"/g, 'line'],
  [/ stroke="var\(--cord-gap,[^"]*" stroke-width="1\.28"/g, 'gap'],
  [/ stroke="var\(--cord-shade,[^"]*" stroke-opacity="\.16" stroke-width="\.36"/g, 'shade'],
  [/ stroke="var\(--cord-light,[^"]*" stroke-opacity="\.38" stroke-width="\.2"/g, 'light'],
  [/ stroke="var\(--cord-(lead|base|freed|resting),[^"]*" stroke-width="\.82"/g, '$1'],
];

/** A drawing for a page, whose style sheet says once what the drawing would say at every stroke. */
export const lean = (svg: string): string =>
  PAINTS.reduce((text, [said, name]) => text.replace(said, ` class="k-${name}"`), leanMarks(svg))
    .replace(' xmlns="http://www.w3.org/2000/svg"', '')
    .replaceAll('-over-', 'o')
    .replace(/ d="([^"]*)"/g, (_whole, data: string) => ` d="${shortPath(data)}"`);
