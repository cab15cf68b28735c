import { endsOf } from '../exercises/number/cut.ts';
import type { ThreadQuestion } from '../exercises/number/problem.ts';
import { fromThread } from '../exercises/number/solve.ts';

export const THREAD_SLIPS = [
  'not-doubled',
  'rows-in-centimetres',
  'tail-forgotten',
  'folds-and-strings-mixed',
  'wrong-unit',
  'float-ends-counted',
] as const;
export type ThreadSlip = (typeof THREAD_SLIPS)[number];

/**
 * Each slip as what it makes of the right length, in mm, or of the right count; that itself where it does not come in.
 */
const THREAD: { readonly [Id in ThreadSlip]: (question: ThreadQuestion, right: number) => number } = {
  // The length of one end is cut for a fold.
  'not-doubled': (q, right) => (q.ask === 'cut-length' ? right / endsOf(q.place) : right),
  // Every row is taken to be a centimetre.
  'rows-in-centimetres': (q, right) =>
    q.ask === 'cut-length' ? right + endsOf(q.place) * q.height * q.takeUp * (10 - q.rowPitch) : right,
  // Nothing is left to hold.
  'tail-forgotten': (q, right) => (q.ask === 'cut-length' ? right - endsOf(q.place) * q.tail : right),
  // A fold for every base string.
  'folds-and-strings-mixed': (q, right) =>
    q.ask === 'base-string-in-all' ? q.baseStrings * q.foldLength : q.ask === 'folds-for-class' ? 2 * right : right,
  // Centimetres where millimetres were asked for, seconds where minutes were.
  'wrong-unit': (q, right) =>
    q.ask === 'making-minutes'
      ? q.knots * q.secondsPerKnot + q.beside
      : q.ask === 'cut-length' || q.ask === 'base-string-in-all'
        ? right / 10
        : right,
  // The two knots that hold a float are counted with the columns it skips.
  'float-ends-counted': (q, right) => (q.ask === 'longest-float' ? right + 2 : right),
};

/** The length a learner enters who makes this slip, in whole mm. */
export const slippedLength = (slip: ThreadSlip, question: ThreadQuestion): number =>
  Math.round(THREAD[slip](question, fromThread(question)));
