import type { AnswerOf, FieldOf, JudgeOptions, KindName, ProblemOf } from '../exercises/contract.ts';
import { type Diagnosis, explain } from './explain.ts';
import { slipsOf } from './slips.ts';

export { type Diagnosis, NO_SLIP } from './explain.ts';

/** What `explain` says by the slips of this kind. All kinds are at hand here; a page fetches the one it needs. */
export const diagnose = <K extends KindName>(
  kind: K,
  problem: ProblemOf<K>,
  answer: AnswerOf<K>,
  options: JudgeOptions<FieldOf<K>> = {},
): Diagnosis => explain(slipsOf[kind], problem, answer, options);
