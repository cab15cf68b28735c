import type { ExerciseProblem } from '../../solver/exercises/contract.ts';
import type { SlipId, SlipSet } from '../../solver/missteps/ids.ts';
import { tellChoice } from './tell-choose.ts';
import { tellFitting } from './tell-fitting.ts';
import { tellKnots } from './tell-knots.ts';
import { tellMeasuring } from './tell-measuring.ts';
import { tellOrder } from './tell-order.ts';
import { tellReading } from './tell-reading.ts';
import { tellThread } from './tell-thread.ts';
import { type Answer, explanationsIn, type SlipWords, slipIn, type Tell } from './telling.ts';

export type { SlipText } from './slip-text.ts';
export { FOLLOW_UP, noSlipWords, type SlipWords } from './telling.ts';

/** All families together, for Node; a page fetches the one it needs. */
const tell: Tell = (slip, problem, answer) =>
  tellFitting(slip, problem, answer) ??
  tellReading(slip, problem, answer) ??
  tellKnots(slip, problem, answer) ??
  tellThread(slip, problem, answer) ??
  tellMeasuring(slip, problem, answer) ??
  tellOrder(slip, problem, answer) ??
  tellChoice(slip, problem, answer);

/** One slip in the learner's own figures, as `slipIn` tells it. */
export const slipWords = (problem: ExerciseProblem, slip: SlipId, answer: Answer, certain = true): SlipWords | null =>
  slipIn(tell, problem, slip, answer, certain);

/** All that may lie behind an answer, as `explanationsIn` tells it. */
export const explanationWords = (
  problem: ExerciseProblem,
  answer: Answer,
  diagnosis: { readonly explanations: readonly SlipSet[]; readonly needsFollowUp: boolean },
): SlipWords[][] => explanationsIn(tell, problem, answer, diagnosis);
