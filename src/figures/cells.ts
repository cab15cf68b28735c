import type { Chart } from '../solver/chart.ts';
import { blankOf, groundOf } from '../solver/chart-ground.ts';
import type { Shape } from './drawing.ts';
import { isDark, markOf } from './marks.ts';

/** Cells smaller than this carry no mark: on paper it could not be read. */
const MARKED = 6;
/** Cells smaller than this, in units, are drawn in blocks: no screen or paper shows them one by one. */
const BLOCK = 1;

/**
 * The cells of each colour as path data in cells, from the top left corner: neighbours in a row are one run, and equal
 * runs of neighbouring rows are one rectangle. `colourAt` gives a palette index, or −1 for no cell.
 */
export function mergedCells(
  width: number,
  height: number,
  colourAt: (column: number, row: number) => number,
): Map<number, string> {
  const paths = new Map<number, string>();
  let above = new Map<string, [x: number, y: number, run: number, colour: number]>();
  for (let y = 0; y <= height; y += 1) {
    const here: typeof above = new Map();
    for (let x = 0; y < height && x < width; ) {
      const colour = colourAt(x, y);
      let run = 1;
      while (x + run < width && colourAt(x + run, y) === colour) run += 1;
      const key = `${x} ${run} ${colour}`;
      if (colour >= 0) here.set(key, above.get(key) ?? [x, y, run, colour]);
      above.delete(key);
      x += run;
    }
    for (const [x, top, run, colour] of above.values())
      paths.set(colour, `${paths.get(colour) ?? ''}M${x} ${top}h${run}v${y - top}h-${run}z`);
    above = here;
  }
  return paths;
}

/**
 * The cells of rows `from` to `to` of a chart, in their colours; with `marks`, each colour has its mark where cells are large
 * enough, but the ground has none. `inside` tells which cells belong to the picture (columns and rows from 0).
 */
export function chartCells<Key extends string>(
  chart: Chart,
  [x, y]: readonly [number, number],
  size: number,
  [from, to]: readonly [number, number],
  marks: boolean,
  inside: (column: number, row: number) => boolean = () => true,
): Shape<Key> {
  const { width, palette, cells } = chart;
  const blank = blankOf(chart);
  const ground = groundOf(chart);
  const block = Math.max(1, Math.ceil(BLOCK / size));
  const merged = mergedCells(Math.ceil(width / block), Math.ceil((to - from + 1) / block), (column, row) => {
    const at = from - 1 + row * block;
    const colour = cells[at * width + column * block] ?? -1;
    return colour === blank || !inside(column * block, at) ? -1 : colour;
  });
  const scale = (size * block).toFixed(3);
  const shapes: Shape<Key>[] = [];
  for (const [index, data] of merged) {
    const colour = palette[index]?.colour ?? 'none';
    shapes.push({ tag: 'path', d: data, fill: colour });
    if (!marks || index === ground || size < MARKED) continue;
    shapes.push(
      {
        tag: 'pattern',
        id: `mark-${index}`,
        width: 1,
        height: 1,
        patternUnits: 'userSpaceOnUse',
        shapes: [
          { tag: 'path', is: isDark(colour) ? 'mark on-dark' : 'mark', d: markOf(index), transform: 'scale(.1)' },
        ],
      },
      { tag: 'path', d: data, paint: `mark-${index}` },
    );
  }
  return { tag: 'g', is: 'cells', transform: `translate(${x.toFixed(1)} ${y.toFixed(1)}) scale(${scale})`, shapes };
}
