/**
 * What went wrong with a person's figures, as data: a code, the figures needed to
 * explain it, and what would work. Sentences are made in `src/words/`.
 */
export type ProblemCode =
  | 'not-a-whole-number'
  | 'not-a-number'
  | 'out-of-range'
  | 'unknown-choice'
  | 'bundle-too-big'
  | 'too-narrow'
  | 'closing-too-big'
  | 'too-short'
  | 'never-full-width'
  | 'no-rows'
  | 'sides-differ-in-length'
  | 'not-what-was-mounted'
  | 'changes-by-more-than-one'
  | 'bundles-exceed-width'
  | 'no-strings-to-finish-with'
  | 'chart-size-differs'
  | 'hole'
  | 'no-fit'
  | 'no-chart'
  | 'chart-mistake';

export type Entered = number | string | boolean | null | undefined;

export interface Problem {
  readonly code: ProblemCode;
  /** The name of the input the problem is about, where it is about one. */
  readonly field?: string;
  /** What was entered, as far as it can be shown. */
  readonly entered?: Entered;
  /** Row (from 1) where a problem of an outline or chart first shows. */
  readonly row?: number;
  /** The figures a sentence about this problem needs, by name. */
  readonly values: Readonly<Record<string, number | string>>;
}

export interface Refusal<P extends Problem = Problem> {
  readonly ok: false;
  readonly problem: P;
}

/** One step of a list of steps: a key that `src/words/` turns into a sentence, and its figures. */
export interface Step<Key extends string> {
  readonly key: Key;
  readonly values: Readonly<Record<string, number | string>>;
}

export const refuse = <P extends Problem>(problem: P): Refusal<P> => ({ ok: false, problem });

/** A value that can stand in a message: objects and functions are told by their type only. */
export const shown = (value: unknown): Entered =>
  typeof value === 'number' ||
  typeof value === 'string' ||
  typeof value === 'boolean' ||
  value === null ||
  value === undefined
    ? value
    : typeof value;

export interface Range {
  readonly low: number;
  readonly high: number;
}

/** A problem when `value` is not a whole number from `low` to `high` (both ends count), else null. */
export function wholeNumberProblem(field: string, value: unknown, { low, high }: Range): Problem | null {
  if (typeof value !== 'number' || !Number.isFinite(value) || !Number.isInteger(value))
    return { code: 'not-a-whole-number', field, entered: shown(value), values: { low, high } };
  if (value < low || value > high) return { code: 'out-of-range', field, entered: value, values: { low, high } };
  return null;
}

/** A problem when `value` is not a finite number from `low` to `high` (both ends count), else null. */
export function measureProblem(field: string, value: unknown, { low, high }: Range): Problem | null {
  if (typeof value !== 'number' || !Number.isFinite(value))
    return { code: 'not-a-number', field, entered: shown(value), values: { low, high } };
  if (value < low || value > high) return { code: 'out-of-range', field, entered: value, values: { low, high } };
  return null;
}

/** A problem when `value` is not one of `choices`, else null. */
export function choiceProblem(field: string, value: unknown, choices: readonly string[]): Problem | null {
  return typeof value === 'string' && choices.includes(value)
    ? null
    : { code: 'unknown-choice', field, entered: shown(value), values: { choices: choices.join(', ') } };
}
