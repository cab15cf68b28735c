import type { Step } from '../problem.ts';
import type { ChooseHintKey, ChooseStepKey } from './choose/solution.ts';
import type { FieldOf, KindName, ProblemOf } from './contract.ts';
import type { MarkHintKey, MarkStepKey } from './mark/solution.ts';
import type { NumberHintKey, NumberStepKey } from './number/solution.ts';
import type { OrderHintKey, OrderStepKey } from './order/solution.ts';
import type { RowHintKey, RowStepKey } from './row/solution.ts';
import type { SayHintKey, SayStepKey } from './say/solution.ts';
import type { SpotHintKey, SpotStepKey } from './spot/solution.ts';
import type { SumHintKey, SumStepKey } from './sum/solution.ts';

/** One step of a worked solution, and the field it gives; null for a step on the way. */
export interface WorkedStep<Key extends string, Field extends string> extends Step<Key> {
  readonly gives: Field | null;
}

/** Another problem of the same shape with other figures, worked through. */
export interface WorkedCase<Problem, S> {
  readonly problem: Problem;
  readonly steps: readonly S[];
}

/** Where to look, and what to do. No figure of the answer is in them. */
export interface Clues<Key extends string> {
  readonly look: Step<Key>;
  readonly do: Step<Key>;
}

/** The clues, and a case worked with other figures. */
export interface Hints<Problem, S, Key extends string> extends Clues<Key> {
  /** null only where no other figures can be found. */
  readonly worked: WorkedCase<Problem, S> | null;
}

interface Keys {
  readonly sum: { step: SumStepKey; hint: SumHintKey };
  readonly number: { step: NumberStepKey; hint: NumberHintKey };
  readonly mark: { step: MarkStepKey; hint: MarkHintKey };
  readonly row: { step: RowStepKey; hint: RowHintKey };
  readonly spot: { step: SpotStepKey; hint: SpotHintKey };
  readonly order: { step: OrderStepKey; hint: OrderHintKey };
  readonly choose: { step: ChooseStepKey; hint: ChooseHintKey };
  readonly say: { step: SayStepKey; hint: SayHintKey };
}
export type StepKeyOf<K extends KindName> = Keys[K]['step'];
export type HintKeyOf<K extends KindName> = Keys[K]['hint'];
export type WorkedStepOf<K extends KindName> = WorkedStep<StepKeyOf<K>, FieldOf<K>>;
export type HintsOf<K extends KindName> = Hints<ProblemOf<K>, WorkedStepOf<K>, HintKeyOf<K>>;

/** What a page fetches when help is asked for. */
export interface Helping<K extends KindName> {
  /** The whole working with these figures, from the first step to the last field asked for. */
  solution(problem: ProblemOf<K>): readonly WorkedStepOf<K>[];
  /** Hints for one field of the exercise, or for all of it. */
  hints(problem: ProblemOf<K>, field?: FieldOf<K> | null): HintsOf<K>;
}
