import type { SlipId } from '../missteps/ids.ts';
import { slipsOf } from '../missteps/slips.ts';
import { asking } from './asking.ts';
import { type Checked, check } from './check.ts';
import type { AnswerOf, Asking, FieldOf, JudgeOptions, KindName, ProblemOf, SolutionOf } from './contract.ts';
import { helping } from './helping.ts';
import type { Helping } from './steps.ts';

/** All of one kind of exercise in one place, for Node, tests and printed sheets. */
export interface Exercise<K extends KindName> extends Asking<K>, Helping<K> {
  readonly kind: K;
  check(problem: ProblemOf<K>, answer: AnswerOf<K>, options?: JudgeOptions<FieldOf<K>>): Checked<K>;
  /** From slip to the whole answer of a learner who makes it; the right answer where the slip makes no difference. */
  readonly missteps: { readonly [Id in SlipId]?: (problem: ProblemOf<K>) => SolutionOf<K> };
  /** Whether the slip, made in its likeliest way or another, changes the answer to this problem. */
  applies(problem: ProblemOf<K>, slip: SlipId): boolean;
}

/** Puts the parts of a kind together. */
export const exercise = <K extends KindName>(kind: K): Exercise<K> => ({
  kind,
  ...asking[kind],
  ...helping[kind],
  check: (problem, answer, options) => check(kind, problem, answer, options),
  missteps: slipsOf[kind].missteps,
  applies: (problem, slip) => slipsOf[kind].singles(problem).some(({ slips }) => slips[0] === slip),
});
