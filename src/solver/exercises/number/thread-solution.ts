import { endsOf, rowsLong } from './cut.ts';
import type { ThreadQuestion } from './problem.ts';
import type { NumberStep } from './solution.ts';
import { fromThread } from './solve.ts';

/** mm to the whole millimetre on the way; the length itself is rounded up to the next 5 mm. */
export function workThread(problem: ThreadQuestion): NumberStep[] {
  if (problem.ask === 'base-string-in-all') {
    const { baseStrings, foldLength } = problem;
    const folds = baseStrings / 2;
    return [
      { key: 'folds-from-strings', values: { baseStrings, folds }, gives: null },
      { key: 'base-string-in-all', values: { folds, foldLength, length: fromThread(problem) }, gives: 'figure' },
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
