import type { AnswerOf, FieldOf, JudgeOptions, KindName, ProblemOf, SolutionOf } from '../exercises/contract.ts';
import type { SlipId, SlipSet } from './ids.ts';

/** A whole answer, and the slip or the two slips by which a learner comes to it. */
export interface Slipped<Solution> {
  readonly slips: SlipSet;
  readonly answer: Solution;
}

/** The slips that can be made in one kind of exercise. */
export interface Slips<K extends KindName> {
  /**
   * From slip to the whole answer that a learner who makes it would enter, by the likeliest way of making it.
   * Where the slip makes no difference to the problem this is the right answer.
   */
  readonly missteps: { readonly [Id in SlipId]?: (problem: ProblemOf<K>) => SolutionOf<K> };
  /**
   * The answers that these slips lead to, by all the ways they are made, the likeliest first. An answer that
   * comes out right all the same is among them; none where the two cannot be made together.
   */
  every(problem: ProblemOf<K>, slips: SlipSet): readonly SolutionOf<K>[];
  /** Every wrong answer that one slip leads to, in all the ways it is made. */
  singles(problem: ProblemOf<K>): readonly Slipped<SolutionOf<K>>[];
  /** Every wrong answer that two slips together lead to; none where the problem is too short to tell. */
  pairs(problem: ProblemOf<K>): readonly Slipped<SolutionOf<K>>[];
  /**
   * Reads an answer once; what it gives says of the answer that slips lead to whether it is that, in every
   * field entered. Nothing entered is like nothing.
   */
  like(
    problem: ProblemOf<K>,
    answer: AnswerOf<K>,
    options?: JudgeOptions<FieldOf<K>>,
  ): (slipped: SolutionOf<K>) => boolean;
  /** How many figures were entered and read; one alone proves no slip. */
  figuresIn(problem: ProblemOf<K>, answer: AnswerOf<K>, options?: JudgeOptions<FieldOf<K>>): number;
  /** Other problems of the kind on which slips can be told apart, smallest first. */
  followUps(problem: ProblemOf<K>): Iterable<ProblemOf<K>>;
}
