import type { RowPlan } from '../solver/piece.ts';
import { walkLead } from '../solver/walk.ts';
import { isTurning } from './knots.ts';

/** Where the place of work is, in base strings to its left. */
export interface LeadAt {
  /** At the end of the row before. */
  readonly from: number;
  /** Where the row begins. */
  readonly start: number;
  /** Now. */
  readonly at: number;
}

/** The leading string in a row of a plan, with so many of the row's knots tied. */
export function leadAt(rows: readonly RowPlan[], row: number, tied: number): LeadAt {
  const begun = rows.slice(0, row);
  const walk = walkLead(begun);
  const path = walk.ok ? walk.path : [];
  const start = path.find((place) => place.row === row)?.at ?? 0;
  const from = path.findLast((place) => place.row < row)?.ends ?? start;
  const plan = begun.at(-1);
  const way = plan?.direction === 'rightward' ? 1 : -1;
  let [left, at] = [tied, start];
  // Ordinary knots carry the place of work on by one string each; turning knots leave it where it was.
  for (const { knot, count } of plan?.runs ?? []) {
    const done = Math.min(left, count);
    left -= done;
    if (!isTurning(knot)) at += way * done;
  }
  return { from, start, at };
}
