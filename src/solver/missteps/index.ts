import type { ExerciseProblem, KindName, ProblemOf, SolutionOf } from '../exercises/contract.ts';
import { FITTING_SLIPS } from './fitting.ts';
import type { SlipId } from './ids.ts';
import { KNOT_SLIPS } from './knots.ts';
import { MAKING_SLIPS } from './making.ts';
import { MEASURING_SLIPS } from './measuring.ts';
import { ROW_SLIPS } from './rows.ts';
import { slipsOf } from './slips.ts';
import { THREAD_SLIPS } from './thread.ts';

export type { Slipped, Slips } from './contract.ts';
export { type Diagnosis, diagnose } from './diagnose.ts';
export { FITTING_SLIPS, type FittingSlip } from './fitting.ts';
export { followUp, MOST_FOLLOW_UPS, settle } from './follow-up.ts';
export type { SlipId, SlipSet } from './ids.ts';
export { KNOT_SLIPS, type KnotSlip } from './knots.ts';
export { MAKING_SLIPS, type MakingSlip } from './making.ts';
export { MEASURING_SLIPS, type MeasuringSlip } from './measuring.ts';
export { ROW_SLIPS, type RowSlip } from './rows.ts';
export { THREAD_SLIPS, type ThreadSlip } from './thread.ts';

/** Every slip by the part of the craft it belongs to, in the order of the catalogue. */
export const SLIP_FAMILIES = {
  fitting: FITTING_SLIPS,
  rows: ROW_SLIPS,
  knots: KNOT_SLIPS,
  thread: THREAD_SLIPS,
  measuring: MEASURING_SLIPS,
  making: MAKING_SLIPS,
} as const;
export const SLIPS: readonly SlipId[] = Object.values(SLIP_FAMILIES).flat();

const slippedIn = <K extends KindName>(kind: K, slip: SlipId, problem: ProblemOf<K>): SolutionOf<K> | null =>
  slipsOf[kind].missteps[slip]?.(problem) ?? null;

function slipped(slip: SlipId, problem: ExerciseProblem): SolutionOf<KindName> | null {
  switch (problem.kind) {
    case 'sum':
      return slippedIn('sum', slip, problem);
    case 'number':
      return slippedIn('number', slip, problem);
    case 'mark':
      return slippedIn('mark', slip, problem);
    case 'row':
      return slippedIn('row', slip, problem);
    case 'spot':
      return slippedIn('spot', slip, problem);
    case 'order':
      return slippedIn('order', slip, problem);
    case 'choose':
      return slippedIn('choose', slip, problem);
    case 'say':
      return slippedIn('say', slip, problem);
  }
}

type Procedure = (problem: ExerciseProblem) => SolutionOf<KindName> | null;

/**
 * The catalogue of slips: from each to the procedure that gives the whole wrong answer a learner who makes it
 * would enter. Where the slip makes no difference to the problem that is the right answer; null where the
 * slip cannot be made in that kind of exercise at all.
 */
export const missteps = Object.fromEntries(
  SLIPS.map((slip): [SlipId, Procedure] => [slip, (problem) => slipped(slip, problem)]),
) as Record<SlipId, Procedure>; // fromEntries forgets which keys it was given; SLIPS holds them all
