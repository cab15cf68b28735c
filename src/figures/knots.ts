import type { Knot, RowPlan, Run } from '../solver/piece.ts';

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
