import type { Step } from '../../../solver/problem.ts';
import { figure, type Value, type Values } from '../../numbers.ts';

type Say = (values: Values) => string;
/** A step in words, and its sum in figures where it has one. */
export type Saying = readonly [words: Say, sum?: Say];
/** The steps of one family of exercises, by key. */
export type Sayings = Readonly<Record<string, Saying>>;

/** What both sides have, or each of them. */
export const both = (left: Value, right: Value): string =>
  left === right ? `${figure(left)} on each side` : `${figure(left)} on the left and ${figure(right)} on the right`;

/** Rows from one string to the next, as they stand in a sum; nothing where it is each row. */
export const stepsOf = (step: Value): string => (step === 1 ? '' : `${figure(step)} × `);

/** A step of a working as it is shown. */
export interface StepLine {
  /** The step's sum in figures, '32 − 5 + 1 = 28'; empty where it has none. */
  readonly sum: string;
  /** One to three sentences. */
  readonly text: string;
}

/**
 * A step in the words of its family.
 *
 * @throws where the family has no such step: a working is never shown with a gap
 */
export function lineOf(sayings: Sayings, { key, values }: Step<string>): StepLine {
  const saying = sayings[key];
  if (!saying) throw new Error(`There are no words for the step '${key}'.`);
  const [words, sum] = saying;
  return { sum: sum?.(values) ?? '', text: words(values) };
}
