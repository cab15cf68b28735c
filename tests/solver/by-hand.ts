import type { Bundles, Chart, Fit, Knot, RowPlan, Run, SideName, StartMove } from '../../src/solver/index.ts';
import { mounted } from './worlds.ts';

/**
 * Rows worked out knot by knot, as a maker follows the rules for one row at a time, and the
 * place of work followed string by string. A second reading of the craft; it calls no solver.
 */

interface TiedKnot {
  readonly knot: Knot;
  readonly column: number;
  readonly strands: number;
}

/** Knots of one row in the order they are tied. `before` is the size of the first edge's bundle one row up. */
function knotsOfRow(width: number, rightward: boolean, left: number, right: number, before: number): TiedKnot[] {
  const ordinary: Knot = rightward ? 'forward' : 'backward';
  const leftEdge: Knot = left >= 2 || (rightward && before >= 2) ? 'backward-forward' : ordinary;
  const rightEdge: Knot = right >= 2 || (!rightward && before >= 2) ? 'forward-backward' : ordinary;
  const knots: TiedKnot[] = [{ knot: leftEdge, column: left, strands: left }];
  for (let column = left + 1; column <= width - right; column++) knots.push({ knot: ordinary, column, strands: 1 });
  knots.push({ knot: rightEdge, column: width - right + 1, strands: right });
  return rightward ? knots : knots.reverse();
}

/** Neighbouring knots of one kind, one colour and one string each, taken together. */
function inRuns(knots: readonly TiedKnot[], colourAt: ((column: number) => number) | null): Run[] {
  const runs: Run[] = [];
  for (const { knot, column, strands } of knots) {
    const last = runs.at(-1);
    const colour = colourAt?.(column);
    if (last !== undefined && last.knot === knot && last.strands === 1 && strands === 1 && last.colour === colour)
      runs[runs.length - 1] = { ...last, columns: [last.columns[0], column], count: last.count + 1 };
    else runs.push({ knot, columns: [column, column], count: 1, strands, ...(colour === undefined ? {} : { colour }) });
  }
  return runs;
}

function moveBefore(now: number, before: number): StartMove {
  if (now < before) return 'let-out';
  if (now > before) return before === 1 ? 'carry-behind' : 'take-in';
  return 'none';
}

export function planByHand(fit: Fit, bundles: Bundles, startSide: SideName, chart?: Chart): RowPlan[] {
  let above = mounted(fit);
  return bundles.left.map((left, i) => {
    const right = bundles.right[i] ?? Number.NaN;
    const rightward = (i % 2 === 0) === (startSide === 'left');
    const before = rightward ? above.left : above.right;
    const knots = knotsOfRow(fit.width, rightward, left, right, before);
    above = { left, right };
    return {
      row: i + 1,
      direction: rightward ? 'rightward' : 'leftward',
      leftBundle: left,
      rightBundle: right,
      firstColumn: left,
      lastColumn: fit.width - right + 1,
      knots: knots.length,
      startMove: moveBefore(rightward ? left : right, before),
      runs: inRuns(knots, chart ? (column) => chart.cells[i * chart.width + column - 1] ?? Number.NaN : null),
    };
  });
}

export interface Place {
  readonly row: number;
  readonly run: number;
  readonly at: number;
  readonly ends: number;
}

/** Base strings to the left of the place where a knot begins and where it ends. */
function startAndEnd(
  { knot, columns: [from], count, strands }: Run,
  leftEdge: boolean,
): { start: number; end: number } {
  const inner = leftEdge ? from : from - 1;
  const outer = leftEdge ? from - strands : from - 1 + strands;
  const leftOf = Math.min(inner, outer);
  const rightOf = Math.max(inner, outer);
  if (knot === 'forward') return { start: from - 1, end: from - 1 + count };
  if (knot === 'backward') return { start: from, end: from - count };
  return knot === 'forward-backward' ? { start: leftOf, end: leftOf } : { start: rightOf, end: rightOf };
}

/** Follows the place of work from row 1 on; the first place where it would have to jump stops it. */
export function walkByHand(rows: readonly RowPlan[]): {
  path: Place[];
  jump: { row: number; run: number; at: number; needs: number } | null;
} {
  const path: Place[] = [];
  const [first] = rows;
  if (first === undefined) return { path, jump: null };
  const width = first.lastColumn + first.rightBundle - 1;
  // The string is pinned inside the starting bundle, or outside the edge string where there is no bundle.
  let at =
    first.direction === 'rightward'
      ? first.leftBundle >= 2
        ? first.leftBundle
        : 0
      : first.rightBundle >= 2
        ? width - first.rightBundle
        : width;
  for (const { row, direction, startMove, runs, leftBundle } of rows) {
    const inward = direction === 'rightward' ? 1 : -1;
    if (startMove === 'let-out') at -= inward;
    if (startMove === 'take-in') at += inward;
    if (startMove === 'carry-behind') at += 2 * inward;
    for (const [run, tied] of runs.entries()) {
      const { start, end } = startAndEnd(tied, tied.columns[0] === leftBundle);
      if (start !== at) return { path, jump: { row, run, at, needs: start } };
      path.push({ row, run, at, ends: end });
      at = end;
    }
  }
  return { path, jump: null };
}
