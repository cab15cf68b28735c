import { asking } from '../exercises/asking.ts';
import type { AnswerOf, KindName, ProblemOf } from '../exercises/contract.ts';
import type { SlipId, SlipSet } from './ids.ts';
import { partingCase, stillPossible } from './parting.ts';
import { slipsOf } from './slips.ts';

export { MOST_FOLLOW_UPS } from './parting.ts';

/**
 * The next question by which explanations of a wrong answer can be told apart, as `partingCase` finds it. All kinds
 * are at hand here; a page fetches the one it needs.
 *
 * @example followUp('number', knots in row 30 of 32, ['bundle-counted-as-strings', 'closing-counted-as-freed'])
 * // a row of the opening, where only the first of them goes wrong
 */
export const followUp = <K extends KindName>(
  kind: K,
  problem: ProblemOf<K>,
  explanations: readonly (SlipId | SlipSet)[],
  earlier: readonly ProblemOf<K>[] = [],
): ProblemOf<K> | null => partingCase(slipsOf[kind], asking[kind].judge, problem, explanations, earlier);

/** The explanations that are left after a follow-up, as `stillPossible` finds them. */
export const settle = <K extends KindName>(
  kind: K,
  problem: ProblemOf<K>,
  answer: AnswerOf<K>,
  explanations: readonly (SlipId | SlipSet)[],
): SlipSet[] => stillPossible(slipsOf[kind], problem, answer, explanations);
