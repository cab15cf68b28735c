import { judge } from '../sum/judge.ts';
import type { SumField, SumProblem } from '../sum/problem.ts';
import { asEntered, type Overrides, workOut } from '../sum/solve.ts';
import type { Faulty } from './in-row.ts';
import type { SpotFault, SpotSum } from './problem.ts';

type Sum = Omit<SpotSum, 'shown'>;

/** The lines of a written sum; folds are left out, since one slip shows in both of their lines. */
export const WRITTEN = [
  'places',
  'spare',
  'eachSide',
  'parity',
  'borrowed',
  'onBar',
  'bundle',
  'firstRowKnots',
] as const;

/** What is wrong in one line, as a rule in the place of a maker's; all lines below follow from it. */
const WRONG: readonly (readonly [SpotFault, SumField, Overrides])[] = [
  ['not-halved', 'eachSide', { eachSide: (_, b) => b.spare }],
  ['none-borrowed', 'borrowed', { borrowed: () => 0 }],
  ['one-borrowed', 'borrowed', { borrowed: (_, __, usual) => (usual > 0 ? 1 : usual) }],
  ['borrowed-from-even', 'borrowed', { borrowed: (_, b, usual) => (b.parity === 0 && b.spare > 0 ? 2 : usual) }],
  ['bar-kept', 'onBar', { onBar: (_, b) => b.places }],
  ['bundles-left-out', 'firstRowKnots', { firstRowKnots: (_, b) => b.onBar }],
];

export const sumOfSpot = ({ width, capacity, oddMethod, startSide, fields }: Sum): SumProblem => ({
  kind: 'sum',
  width,
  capacity,
  oddMethod,
  startSide,
  fields,
});

/** Every way in which one line of this sum can be wrong, and no other line does not follow. */
export function faultySums(problem: Sum): Faulty<SpotSum['shown']>[] {
  const sum = sumOfSpot(problem);
  return WRONG.flatMap(([fault, place, overrides]) => {
    const figures = workOut(sum, overrides);
    const shown = sum.fields.map((field) => asEntered(field, figures[field]));
    const { fields } = judge(sum, Object.fromEntries(sum.fields.map((field, index) => [field, shown[index]])));
    const wrong = sum.fields.filter((field) => fields[field]?.verdict === 'wrong');
    return wrong.join() === place ? [{ place, fault, shown }] : [];
  });
}
