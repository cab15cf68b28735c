import { count, figure, noun } from '../../numbers.ts';
import { threadName } from '../../thread-names.ts';
import type { Saying } from './saying.ts';

export type ThreadStepKey =
  | 'rows-long'
  | 'one-end'
  | 'both-ends'
  | 'lone-end'
  | 'folds-from-strings'
  | 'base-string-in-all'
  | 'float-skips'
  | 'longest-float'
  | 'folds-of-piece'
  | 'folds-for-class'
  | 'knotting-seconds'
  | 'knotting-minutes'
  | 'making-minutes';

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
  'float-skips': [
    ({ colour, columns, after }) =>
      `After knot ${figure(after)} of the row, ${threadName(Number(colour))} rests while ${count(columns, 'knot')} of other colours ${noun(columns, 'is', 'are')} tied.`,
  ],
  'longest-float': [({ columns }) => `The longest of these floats skips ${count(columns, 'column')}.`],
  'folds-of-piece': [
    ({ onBarFolds, sideFolds, folds }) =>
      `One piece takes ${count(onBarFolds, 'fold')} on the bar and ${figure(sideFolds)} on each side, which makes ${count(folds, 'fold')}.`,
    ({ onBarFolds, sideFolds, folds }) =>
      `${figure(onBarFolds)} + ${figure(sideFolds)} + ${figure(sideFolds)} = ${figure(folds)}`,
  ],
  'folds-for-class': [
    ({ learners, inAll }) => `${count(learners, 'learner')} need ${count(inAll, 'fold')}.`,
    ({ folds, learners, inAll }) => `${figure(folds)} × ${figure(learners)} = ${figure(inAll)}`,
  ],
  'knotting-seconds': [
    ({ knots, seconds }) => `${count(knots, 'knot')} take ${count(seconds, 'second')}.`,
    ({ knots, secondsPerKnot, seconds }) => `${figure(knots)} × ${figure(secondsPerKnot)} = ${figure(seconds)}`,
  ],
  'knotting-minutes': [
    ({ minutes }) => `A minute has 60 seconds, so that is ${count(minutes, 'minute')}.`,
    ({ seconds, minutes }) => `${figure(seconds)} ÷ 60 = ${figure(minutes)}`,
  ],
  'making-minutes': [
    ({ beside, inAll }) =>
      `Mounting and finishing add ${count(beside, 'minute')}. The whole piece takes ${count(inAll, 'minute')}.`,
    ({ minutes, beside, inAll }) => `${figure(minutes)} + ${figure(beside)} = ${figure(inAll)}`,
  ],
  'base-string-in-all': [
    ({ folds, foldLength, length }) =>
      `${count(folds, 'fold')} of ${figure(foldLength)} mm ${noun(folds, 'takes', 'take')} ${figure(length)} mm of string.`,
    ({ folds, foldLength, length }) => `${figure(folds)} × ${figure(foldLength)} = ${figure(length)}`,
  ],
};
