import type { Knot, RowPlan, StartMove } from './piece.ts';

/** Where the leading string is when a run begins and ends, in base strings to its left. */
export interface Place {
  readonly row: number;
  /** Index into the row's runs, from 0. */
  readonly run: number;
  readonly at: number;
  readonly ends: number;
}

export type Walk =
  | { readonly ok: true; readonly path: readonly Place[] }
  | { readonly ok: false; readonly row: number; readonly run: number; readonly at: number; readonly needs: number };

/** Base strings the place of work moves inwards before the first knot (craft, section 5). */
const INWARDS: Readonly<Record<StartMove, number>> = { none: 0, 'let-out': -1, 'take-in': 1, 'carry-behind': 2 };

/** From which side of its base a knot starts, and on which it ends. */
const STARTS_LEFT: Readonly<Record<Knot, boolean>> = {
  forward: true,
  backward: false,
  'forward-backward': true,
  'backward-forward': false,
};
const ENDS_LEFT: Readonly<Record<Knot, boolean>> = {
  forward: false,
  backward: true,
  'forward-backward': true,
  'backward-forward': false,
};

/**
 * Walks the leading string knot by knot, counting base strings, and says where it would have to jump.
 * It knows nothing of how the rows were made: sizes, moves and knots alone must lead it through.
 *
 * @returns the place of work at the start and end of every run; or the first run it can't reach, with where
 *   it is (`at`) and where that run begins (`needs`).
 */
export function walkLead(rows: readonly RowPlan[]): Walk {
  const path: Place[] = [];
  let at = -1;
  for (const plan of rows) {
    const { row, leftBundle, rightBundle, firstColumn, lastColumn, runs } = plan;
    const rightward = plan.direction === 'rightward';
    const width = lastColumn + rightBundle - 1;
    if (at < 0) {
      // Row 1: inside the starting bundle, outside a single edge string (craft, section 6).
      at = rightward ? (leftBundle >= 2 ? leftBundle : 0) : rightBundle >= 2 ? width - rightBundle : width;
    }
    at += (rightward ? 1 : -1) * INWARDS[plan.startMove];
    for (let run = 0; run < runs.length; run += 1) {
      const current = runs[run];
      if (!current) continue;
      const { knot, columns, strands, count } = current;
      const low = Math.min(columns[0], columns[1]);
      const high = Math.max(columns[0], columns[1]);
      // A bundle stands in its innermost column; its other strings lie outside that.
      const inLeftBundle = strands > 1 && low === firstColumn;
      const inRightBundle = strands > 1 && !inLeftBundle && high === lastColumn;
      const leftOf = inLeftBundle ? low - strands : low - 1;
      const rightOf = inRightBundle ? high + strands - 1 : high;
      const turns = STARTS_LEFT[knot] === ENDS_LEFT[knot];
      const needs = STARTS_LEFT[knot] ? leftOf : rightOf;
      if (at !== needs || (turns && count !== 1)) return { ok: false, row, run, at, needs };
      const ends = ENDS_LEFT[knot] ? leftOf : rightOf;
      path.push({ row, run, at, ends });
      at = ends;
    }
  }
  return { ok: true, path };
}
