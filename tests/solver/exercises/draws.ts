import {
  type ExerciseProblem,
  exercises,
  type KindName,
  MARK_TARGETS,
  NUMBER_ASKS,
  type OptionsOf,
  type ProblemOf,
  type SumOptions,
  type SumProblem,
} from '../../../src/solver/exercises/index.ts';
import type { Refusal } from '../../../src/solver/problem.ts';

/** Problems are plain data with a kind; a refusal here is a test that asks for the impossible. */
export function made<P extends ExerciseProblem>(result: P | Refusal): P {
  if ('ok' in result) throw new Error(`refused: ${JSON.stringify(result.problem)}`);
  return result;
}

export const makeWith = <K extends KindName>(kind: K, seed: string, options: OptionsOf<K>): ProblemOf<K> =>
  made<ProblemOf<K>>(exercises[kind].make(seed, 'mixed', options));

/** A sum of these figures, asking for all of its fields or for some. */
export const sumOf = (options: SumOptions): SumProblem => made(exercises.sum.make('worked', 'mixed', options));

/** What each kind can be asked for by name, beside what chance draws. */
export const ASKED: { readonly [K in KindName]: readonly OptionsOf<K>[] } = {
  sum: [{}],
  number: NUMBER_ASKS.map((ask) => ({ ask })),
  mark: MARK_TARGETS.map((target) => ({ target })),
  row: [{}],
  spot: [{}],
  order: [{}],
  choose: [{}],
  say: [{}],
};

export const KINDS: readonly KindName[] = ['sum', 'number', 'mark', 'row', 'spot', 'order', 'choose', 'say'];
