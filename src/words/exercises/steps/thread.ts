import { count, figure, noun } from '../../numbers.ts';
import type { Saying } from './saying.ts';

export type ThreadStepKey =
  | 'rows-long'
  | 'one-end'
  | 'both-ends'
  | 'lone-end'
  | 'folds-from-strings'
  | 'base-string-in-all';

/** The steps of a length to cut. */
export const THREAD_STEPS: Readonly<Record<ThreadStepKey, Saying>> = {
  'rows-long': [
    ({ height, rowPitch, takeUp, rows }) =>
      `${count(height, 'row')} of ${figure(rowPitch)} mm, times ${figure(takeUp)}, use about ${figure(rows)} mm of each end.`,
  ],
  'one-end': [
    ({ mountingAndFinishing, tail, end }) =>
      `Add ${figure(mountingAndFinishing)} mm for mounting and finishing, and ${figure(tail)} mm to hold. One end is ${figure(end)} mm.`,
    ({ rows, mountingAndFinishing, tail, end }) =>
      `${figure(rows)} + ${figure(mountingAndFinishing)} + ${figure(tail)} = ${figure(end)}`,
  ],
  'both-ends': [
    ({ ends, length }) =>
      `A fold has two ends, which take ${figure(ends)} mm. Rounded up to the next 5 mm, cut ${figure(length)} mm.`,
    ({ end, ends }) => `2 × ${figure(end)} = ${figure(ends)}`,
  ],
  'lone-end': [
    ({ length }) => `A lone string has only one end. Rounded up to the next 5 mm, cut ${figure(length)} mm.`,
  ],
  'folds-from-strings': [
    ({ baseStrings, folds }) =>
      `One fold gives two strings, so ${count(baseStrings, 'string')} need ${count(folds, 'fold')}.`,
    ({ baseStrings, folds }) => `${figure(baseStrings)} ÷ 2 = ${figure(folds)}`,
  ],
  'base-string-in-all': [
    ({ folds, foldLength, length }) =>
      `${count(folds, 'fold')} of ${figure(foldLength)} mm ${noun(folds, 'takes', 'take')} ${figure(length)} mm of string.`,
    ({ folds, foldLength, length }) => `${figure(folds)} × ${figure(foldLength)} = ${figure(length)}`,
  ],
};
