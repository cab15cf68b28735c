import { type Diagnosis, diagnose, NO_SLIP } from '../missteps/diagnose.ts';
import { asking } from './asking.ts';
import type { AnswerOf, FieldOf, JudgedOf, JudgeOptions, KindName, ProblemOf } from './contract.ts';

/** What a judge says, and the slips that may lie behind it. */
export type Checked<K extends KindName> = JudgedOf<K> & Diagnosis;

/**
 * Judges an answer and, where it is not right, looks for the slips that lead to exactly what was entered.
 *
 * @returns `outcome` 'unreadable' (no try), 'right' or 'not-right'; a verdict for each field; `first`, the first
 *   field that is missing, unreadable or neither right nor follows; `missteps`, every slip that explains the
 *   answer; `explanations`, the same as sets of slips made together; `needsFollowUp`
 * @example check('sum', sum of 26 on 16 for spare, onBar and bundle, { spare: 10, onBar: 16, bundle: 5 }).missteps
 * // ['odd-side-left-odd']
 */
export function check<K extends KindName>(
  kind: K,
  problem: ProblemOf<K>,
  answer: AnswerOf<K>,
  options: JudgeOptions<FieldOf<K>> = {},
): Checked<K> {
  const judged = asking[kind].judge(problem, answer, options);
  const diagnosis = judged.outcome === 'not-right' ? diagnose(kind, problem, answer, options) : NO_SLIP;
  return { ...judged, ...diagnosis };
}
