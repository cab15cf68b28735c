import type { StepKeyOf } from '../../../solver/exercises/steps.ts';
import type { FitStepKey } from '../../../solver/fit.ts';
import { fitStepSum, fitStepWords } from '../../fit-steps.ts';
import { count, figure } from '../../numbers.ts';
import type { Saying } from './saying.ts';

export type FittingStepKey = StepKeyOf<'sum'> | 'folds-to-cut';

/** A step that `fitPiece` has as well is said as there. */
const asInFit = (key: FitStepKey): Saying => [
  (values) => fitStepWords({ key, values }),
  (values) => fitStepSum({ key, values }),
];

/** The steps of a fitting sum, and of a figure taken from one. */
export const FITTING_STEPS: Readonly<Record<FittingStepKey, Saying>> = {
  'all-on-bar': asInFit('all-on-bar'),
  'carried-end': asInFit('carried-end'),
  'idle-place': asInFit('idle-place'),
  'no-idle-place': [
    ({ width, capacity }) =>
      `${count(width, 'string')} and ${count(capacity, 'place')} are both ${Number(width) % 2 === 0 ? 'even' : 'odd'} numbers. So all ${figure(capacity)} places are used.`,
  ],
  spare: asInFit('spare'),
  'nothing-spare': [({ width }) => `All ${count(width, 'string')} find a place. Nothing is spare.`],
  halved: asInFit('halved'),
  // That nothing is borrowed is a step of its own here.
  'half-even': [
    ({ half }) =>
      half === 0
        ? 'Nothing on each side counts as even.'
        : `${figure(half)} is even, so it can be made of folds, which are two strings each.`,
  ],
  'half-odd': asInFit('half-odd'),
  'borrow-two': asInFit('borrow-two'),
  'nothing-to-borrow': [() => 'Nothing has to be borrowed from the bar.'],
  'on-bar': asInFit('on-bar'),
  bundle: [
    ({ bundle }) => (bundle === 0 ? 'There are no side bundles.' : `Each side bundle has ${count(bundle, 'string')}.`),
    ({ half, added, bundle }) => (bundle === 0 ? '' : `${figure(half)} + ${figure(added)} = ${figure(bundle)}`),
  ],
  'folds-on-bar': asInFit('folds-on-bar'),
  'lone-string': asInFit('lone-string'),
  'folds-each-side': asInFit('folds-each-side'),
  'first-row': asInFit('first-row'),
  'full-width': asInFit('full-width'),
  'folds-to-cut': [
    ({ foldsOnBar, foldsEachSide, folds }) =>
      `With ${count(foldsOnBar, 'fold')} on the bar and ${figure(foldsEachSide)} on each side, you cut ${figure(folds)} in all.`,
    ({ foldsOnBar, foldsEachSide, folds }) =>
      `${figure(foldsOnBar)} + ${figure(foldsEachSide)} + ${figure(foldsEachSide)} = ${figure(folds)}`,
  ],
};
