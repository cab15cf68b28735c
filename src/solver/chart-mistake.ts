import type { Problem } from './problem.ts';

/** Everything that can be wrong with the text form of a chart; a sentence for each is in `src/words/`. */
export type ChartMistakeKey =
  | 'not-text'
  | 'empty-text'
  | 'unknown-line'
  | 'no-empty-line'
  | 'no-title'
  | 'second-title'
  | 'no-key'
  | 'key-not-a-key'
  | 'key-taken'
  | 'no-name'
  | 'no-colour'
  | 'bad-colour'
  | 'none-without-blank'
  | 'unknown-mark'
  | 'second-ground'
  | 'second-blank'
  | 'open-quotes'
  | 'after-quotes'
  | 'too-many-colours'
  | 'no-colours'
  | 'no-rows'
  | 'empty-row'
  | 'unknown-key'
  | 'space-in-row'
  | 'ragged-row'
  | 'too-narrow'
  | 'too-wide'
  | 'too-high';

/** The first mistake of a text, with its place. */
export interface ChartMistake extends Problem {
  readonly code: 'chart-mistake';
  /** From 1. */
  readonly line: number;
  /** From 1, in UTF-16 units; one past the end of the line where something is missing there. */
  readonly column: number;
  readonly values: Readonly<Record<string, number | string>> & {
    readonly mistake: ChartMistakeKey;
    /** What stands there: a word, a character, or a count. Long words are shown by their beginning. */
    readonly stands: number | string;
    /** What would work there: a form of line, the choices, or a count. */
    readonly works: number | string;
  };
}

/** Carries the first mistake from where it is met, lines deep, up to `parseChart`, and no further. */
export class MistakeMet extends Error {
  readonly problem: ChartMistake;

  constructor(problem: ChartMistake) {
    super(problem.values.mistake);
    this.problem = problem;
  }
}

/** Where a mistake is, both from 1. */
export interface Place {
  readonly line: number;
  readonly column: number;
}

const SHOWN = 40;

export function stop(
  { line, column }: Place,
  mistake: ChartMistakeKey,
  standing: number | string,
  works: number | string,
): never {
  const long = typeof standing === 'string' && standing.length > SHOWN;
  const stands = long ? `${standing.slice(0, SHOWN)}…` : standing;
  throw new MistakeMet({
    code: 'chart-mistake',
    field: 'chart',
    entered: stands,
    line,
    column,
    values: { mistake, stands, works },
  });
}
