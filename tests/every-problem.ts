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
import { type Draw, drawing, replay } from './seed.ts';

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

type Times = { readonly [K in KindName]: number };

const drawn = (draw: Draw, times: Times): ExerciseProblem[] =>
  LEVELS.flatMap((level) =>
    (Object.keys(FORMS) as KindName[]).flatMap((kind) => formsOf(kind, level, times[kind], draw)),
  );

/** Draws in which even the steps and slips that are rare come up. */
const SAME_EVERY_TIME = 7919;

/**
 * Problems of every kind in all its forms and at every level, each form as many times as is said for its kind: first
 * some that are always the same, so that nothing rare is missed by bad luck, then as many new ones in each run.
 */
export const everyProblem = (times: Times): readonly ExerciseProblem[] => [
  ...drawn(drawing(SAME_EVERY_TIME), times),
  ...drawn(drawing(), times),
];
