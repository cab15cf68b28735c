import { rowFloats } from '../../thread/row-floats.ts';
import { endsOf, rowsLong } from './cut.ts';
import type { ThreadQuestion } from './problem.ts';
import type { NumberStep } from './solution.ts';
import { foldsOfPiece, fromThread } from './solve.ts';

/** A figure of the string or of the time, worked out; mm to the whole millimetre on the way; the length itself is rounded up to the next 5 mm. */
export function workThread(problem: ThreadQuestion): NumberStep[] {
  if (problem.ask === 'base-string-in-all') {
    const { baseStrings, foldLength } = problem;
    const folds = baseStrings / 2;
    return [
      { key: 'folds-from-strings', values: { baseStrings, folds }, gives: null },
      { key: 'base-string-in-all', values: { folds, foldLength, length: fromThread(problem) }, gives: 'figure' },
    ];
  }
  if (problem.ask === 'longest-float') {
    const columns = fromThread(problem);
    const told = rowFloats(problem.runs).map(
      ({ colour, columns: skipped, after }): NumberStep => ({
        key: 'float-skips',
        values: { colour, columns: skipped, after },
        gives: null,
      }),
    );
    return [...told, { key: 'longest-float', values: { columns }, gives: 'figure' }];
  }
  if (problem.ask === 'folds-for-class') {
    const { onBar, bundle, learners } = problem;
    const folds = foldsOfPiece(problem);
    return [
      {
        key: 'folds-of-piece',
        values: { onBar, bundle, onBarFolds: onBar / 2, sideFolds: bundle / 2, folds },
        gives: null,
      },
      { key: 'folds-for-class', values: { folds, learners, inAll: fromThread(problem) }, gives: 'figure' },
    ];
  }
  if (problem.ask === 'making-minutes') {
    const { knots, secondsPerKnot, beside } = problem;
    const seconds = knots * secondsPerKnot;
    return [
      { key: 'knotting-seconds', values: { knots, secondsPerKnot, seconds }, gives: null },
      { key: 'knotting-minutes', values: { seconds, minutes: seconds / 60 }, gives: null },
      { key: 'making-minutes', values: { minutes: seconds / 60, beside, inAll: fromThread(problem) }, gives: 'figure' },
    ];
  }
  const { height, rowPitch, takeUp, mountingAndFinishing, tail, place } = problem;
  const length = fromThread(problem);
  const rows = rowsLong(problem);
  const end = rows + mountingAndFinishing + tail;
  return [
    { key: 'rows-long', values: { height, rowPitch, takeUp, rows }, gives: null },
    { key: 'one-end', values: { rows, mountingAndFinishing, tail, end }, gives: null },
    {
      key: place === 'lone' ? 'lone-end' : 'both-ends',
      values: { end, ends: endsOf(place) * end, length },
      gives: 'figure',
    },
  ];
}
