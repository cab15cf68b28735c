import {
  CHOOSE_ASKS,
  type ExerciseProblem,
  exercises,
  type KindName,
  LEVELS,
  type Level,
  MARK_TARGETS,
  NUMBER_ASKS,
  type OptionsOf,
  ROW_PHASES,
  SAY_TOPICS,
  SEQUENCES,
  SPOT_FAULTS,
  SPOT_SHEETS,
} from '../src/solver/exercises/index.ts';
import { type Draw, replay } from './seed.ts';

/** All that a lesson can ask of each kind by name. A kind that is forgotten here does not compile. */
const FORMS: { readonly [K in KindName]: readonly OptionsOf<K>[] } = {
  sum: [{}],
  number: NUMBER_ASKS.map((ask) => ({ ask })),
  mark: MARK_TARGETS.map((target) => ({ target })),
  row: ROW_PHASES.map((phase) => ({ phase })),
  spot: SPOT_SHEETS.flatMap((sheet) => SPOT_FAULTS[sheet].map((fault) => ({ in: sheet, fault }))),
  order: SEQUENCES.map((of) => ({ of })),
  choose: CHOOSE_ASKS.map((ask) => ({ ask })),
  say: SAY_TOPICS.map((topic) => ({ topic })),
};

function formsOf<K extends KindName>(kind: K, level: Level, times: number, draw: Draw): ExerciseProblem[] {
  return FORMS[kind].flatMap((options) =>
    Array.from({ length: times }, () => {
      const problem = exercises[kind].make(`every ${draw(0, 1e9)}`, level, options);
      if ('ok' in problem) throw new Error(`${kind} ${JSON.stringify(options)} is refused; ${replay}`);
      return problem;
    }),
  );
}

/** Problems of every kind in all its forms and at every level, each form as many times as is said for its kind. */
export const everyProblem = (draw: Draw, times: { readonly [K in KindName]: number }): readonly ExerciseProblem[] =>
  LEVELS.flatMap((level) =>
    (Object.keys(FORMS) as KindName[]).flatMap((kind) => formsOf(kind, level, times[kind], draw)),
  );
