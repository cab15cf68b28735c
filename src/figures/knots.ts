import type { Knot, RowPlan, Run } from '../solver/piece.ts';
import { d } from './drawing.ts';

export const isTurning = (knot: Knot): boolean => knot === 'forward-backward' || knot === 'backward-forward';

/**
 * The runs of a row as they are drawn: by colour where the drawing has the chart's colours, else neighbours of one kind
 * together, in the colour that all drawings have for the leading string.
 */
export function runsOf({ runs }: RowPlan, coloured: boolean): Run[] {
  const joined: Run[] = [];
  for (const { colour, ...run } of runs) {
    const last = joined.at(-1);
    if (coloured) joined.push(colour === undefined ? run : { ...run, colour });
    else if (last?.knot === run.knot && !isTurning(run.knot))
      joined.splice(-1, 1, { ...run, columns: [last.columns[0], run.columns[1]], count: last.count + run.count });
    else joined.push(run);
  }
  return joined;
}

/**
 * How a knot looks once it is tied: two strokes over the base, which slant down the way the leading string went; a
 * turning knot goes out and comes back, so its strokes meet in a bend. `half` is half its breadth, `weight` the cord's.
 */
export function knotStrokes(knot: Knot, x: number, y: number, half: number, weight: number): string {
  const way = knot.startsWith('forward') ? 1 : -1;
  const reach = Math.max(0.1, half - weight / 2) * way;
  const lean = weight * 0.34;
  const apart = weight * (isTurning(knot) ? 0.84 : 0.52);
  const first = d`M${x - reach} ${y - apart - lean}l${2 * reach} ${2 * lean}`;
  return isTurning(knot)
    ? first + d`q${way * weight * 0.5} ${apart - lean} 0 ${2 * (apart - lean)}l${-2 * reach} ${2 * lean}`
    : first + d`m${-2 * reach} ${2 * (apart - lean)}l${2 * reach} ${2 * lean}`;
}
