import type { Ending } from './model-types.ts';
import type { MomentPlan, Standing } from './moments.ts';

/** A place in the walk through a piece: a row with its tied knots, and what comes after the last of them. */
export interface At extends Standing {
  readonly upToKnot: number;
}

const knotsIn = ({ rows }: Pick<MomentPlan, 'rows'>, row: number): number => rows[row - 1]?.knots ?? 0;

/** What comes after the last row, in order. A piece with nothing to gather goes straight to its finish. */
const endingsOf = ({ finish }: MomentPlan): Ending[] =>
  finish.perSide > 0 ? ['hanging', 'gathered', 'finished'] : ['hanging', 'finished'];

/** How many steps of a row there are, from 0, the strings mounted, to the finished piece. */
export const stepsIn = (plan: MomentPlan): number => plan.rows.length + endingsOf(plan).length - 1;

/** The piece after so many steps: after that row, or further on in its finish. */
export function atStep(plan: MomentPlan, step: number): At {
  const height = plan.rows.length;
  const within = Math.max(0, Math.min(stepsIn(plan), Math.round(step)));
  const row = Math.min(height, within);
  return { upToRow: row, upToKnot: knotsIn(plan, row), ending: endingsOf(plan)[within - row] ?? 'hanging' };
}

/** How many steps it is to a place; one in the middle of a row counts that row. */
export const stepOf = (plan: MomentPlan, { upToRow, ending }: Standing): number =>
  upToRow + Math.max(0, endingsOf(plan).indexOf(ending));

/** A standing with its knots told. */
export const atStanding = (plan: MomentPlan, { upToRow, upToKnot, ending }: Standing): At => ({
  upToRow,
  upToKnot: Math.max(0, Math.min(upToKnot ?? Number.POSITIVE_INFINITY, knotsIn(plan, upToRow))),
  ending,
});

const inRow = (row: number, knot: number): At => ({ upToRow: row, upToKnot: knot, ending: 'hanging' });

/** One row on or back: in the middle of a row, on to its end and back to the end of the one before. */
export function rowOn(plan: MomentPlan, at: At): At {
  const whole = at.upToKnot === knotsIn(plan, at.upToRow);
  return atStep(plan, stepOf(plan, at) + (whole ? 1 : 0));
}
export const rowBack = (plan: MomentPlan, at: At): At => atStep(plan, stepOf(plan, at) - 1);

/** One knot on; after a row the first of the next, and after the last row what follows it. */
export function knotOn(plan: MomentPlan, at: At): At {
  if (at.upToKnot < knotsIn(plan, at.upToRow)) return inRow(at.upToRow, at.upToKnot + 1);
  return at.upToRow < plan.rows.length ? inRow(at.upToRow + 1, 1) : rowOn(plan, at);
}

/** One knot back; from the first of a row to the whole row before it. */
export function knotBack(plan: MomentPlan, at: At): At {
  if (at.ending !== 'hanging') return rowBack(plan, at);
  if (at.upToKnot > 1) return inRow(at.upToRow, at.upToKnot - 1);
  return rowBack(plan, at);
}

/** The same place in the walk through another piece, or the nearest that it has. */
export function sameIn(plan: MomentPlan, at: At): At {
  if (at.ending !== 'hanging') return atStep(plan, at.ending === 'finished' ? stepsIn(plan) : plan.rows.length + 1);
  return at.upToRow > plan.rows.length ? atStep(plan, plan.rows.length) : atStanding(plan, at);
}
