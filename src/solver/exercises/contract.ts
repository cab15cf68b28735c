import type { Problem, Refusal } from '../problem.ts';
import type { ChooseAnswer, ChooseField, ChooseOptions, ChooseProblem, ChooseSolution } from './choose/problem.ts';
import type { Level } from './level.ts';
import type { MarkAnswer, MarkField, MarkOptions, MarkProblem, MarkResult, MarkSolution } from './mark/problem.ts';
import type { NumberAnswer, NumberField, NumberOptions, NumberProblem, NumberSolution } from './number/problem.ts';
import type {
  OrderAnswer,
  OrderField,
  OrderOptions,
  OrderProblem,
  OrderResult,
  OrderSolution,
} from './order/problem.ts';
import type { Reason } from './read.ts';
import type { RowAnswer, RowField, RowOptions, RowProblem, RowResult, RowSolution } from './row/problem.ts';
import type { SayAnswer, SayField, SayOptions, SayProblem, SaySolution } from './say/problem.ts';
import type { Seed } from './seed.ts';
import type { SpotAnswer, SpotField, SpotOptions, SpotProblem, SpotResult, SpotSolution } from './spot/problem.ts';
import type { SumAnswer, SumField, SumOptions, SumProblem, SumSolution } from './sum/problem.ts';

export type { Level } from './level.ts';
export type { Seed } from './seed.ts';

/**
 * - `right`: as the solver has it
 * - `follows`: not that, but right from what was entered before it
 * - `wrong`: neither
 * - `missing`, `unreadable`: no try
 */
export type Verdict = 'right' | 'follows' | 'wrong' | 'missing' | 'unreadable';

export interface FieldResult {
  readonly verdict: Verdict;
  /** Why it could not be read. */
  readonly reason?: Reason;
}

export type Outcome = 'unreadable' | 'right' | 'not-right';

/** What a judge says of an answer. Only `right` and `not-right` count as a try. */
export interface Judged<Field extends string, Result extends FieldResult = FieldResult> {
  readonly outcome: Outcome;
  readonly fields: { readonly [F in Field]?: Result };
  /** The first field that is missing, cannot be read, or is neither right nor follows; null where there is none. */
  readonly first: Field | null;
}

/** What each kind of exercise is made of. */
export interface Kinds {
  readonly sum: {
    problem: SumProblem;
    answer: SumAnswer;
    solution: SumSolution;
    field: SumField;
    result: FieldResult;
    options: SumOptions;
  };
  readonly number: {
    problem: NumberProblem;
    answer: NumberAnswer;
    solution: NumberSolution;
    field: NumberField;
    result: FieldResult;
    options: NumberOptions;
  };
  readonly mark: {
    problem: MarkProblem;
    answer: MarkAnswer;
    solution: MarkSolution;
    field: MarkField;
    result: MarkResult;
    options: MarkOptions;
  };
  readonly row: {
    problem: RowProblem;
    answer: RowAnswer;
    solution: RowSolution;
    field: RowField;
    result: RowResult;
    options: RowOptions;
  };
  readonly spot: {
    problem: SpotProblem;
    answer: SpotAnswer;
    solution: SpotSolution;
    field: SpotField;
    result: SpotResult;
    options: SpotOptions;
  };
  readonly order: {
    problem: OrderProblem;
    answer: OrderAnswer;
    solution: OrderSolution;
    field: OrderField;
    result: OrderResult;
    options: OrderOptions;
  };
  readonly choose: {
    problem: ChooseProblem;
    answer: ChooseAnswer;
    solution: ChooseSolution;
    field: ChooseField;
    result: FieldResult;
    options: ChooseOptions;
  };
  readonly say: {
    problem: SayProblem;
    answer: SayAnswer;
    solution: SaySolution;
    field: SayField;
    result: FieldResult;
    options: SayOptions;
  };
}
export type KindName = keyof Kinds;
export type ProblemOf<K extends KindName> = Kinds[K]['problem'];
/** What can be entered; a solution is an answer too. */
export type AnswerOf<K extends KindName> = Kinds[K]['answer'] | Kinds[K]['solution'];
export type SolutionOf<K extends KindName> = Kinds[K]['solution'];
export type FieldOf<K extends KindName> = Kinds[K]['field'];
export type OptionsOf<K extends KindName> = Kinds[K]['options'];
export type JudgedOf<K extends KindName> = Judged<FieldOf<K>, Kinds[K]['result']>;
export type ExerciseProblem = ProblemOf<KindName>;

export interface JudgeOptions<Field extends string> {
  /** Judge this field and those before it; only this one has to be there. */
  readonly upTo?: Field | undefined;
  /** Judge whatever is there; empty fields are no hindrance as long as one is filled. */
  readonly partial?: boolean | undefined;
}

/** A half-worked form: what stands there already, and the fields left to the learner. */
export interface Faded<Given, Field extends string> {
  readonly given: Given;
  readonly open: readonly Field[];
}

/** What a page needs to ask an exercise and mark it: no slips, no worked steps. */
export interface Asking<K extends KindName> {
  make(seed: Seed, level: Level): ProblemOf<K>;
  /** @returns the problem, or a refusal where the figures given can be made into none */
  make(seed: Seed, level: Level, options: OptionsOf<K>): ProblemOf<K> | Refusal<Problem>;
  solve(problem: ProblemOf<K>): SolutionOf<K>;
  judge(problem: ProblemOf<K>, answer: AnswerOf<K>, options?: JudgeOptions<FieldOf<K>>): JudgedOf<K>;
  fade(problem: ProblemOf<K>, lastMissed?: FieldOf<K> | null): Faded<Partial<SolutionOf<K>>, FieldOf<K>>;
}
