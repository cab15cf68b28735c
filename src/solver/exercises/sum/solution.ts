import type { FitStepKey } from '../../fit.ts';
import type { WorkedStep } from '../steps.ts';
import { SUM_FIELDS, type SumField, type SumProblem } from './problem.ts';
import { carriedEnds, workOut } from './solve.ts';

/** The steps of `fitPiece`'s working, with the same values, and four that only an exercise needs. */
export type SumStepKey =
  | Extract<
      FitStepKey,
      | 'all-on-bar'
      | 'carried-end'
      | 'idle-place'
      | 'spare'
      | 'halved'
      | 'half-even'
      | 'half-odd'
      | 'borrow-two'
      | 'on-bar'
      | 'folds-on-bar'
      | 'lone-string'
      | 'folds-each-side'
      | 'first-row'
      | 'full-width'
    >
  | 'no-idle-place'
  | 'nothing-spare'
  | 'nothing-to-borrow'
  | 'bundle';
export type SumHintKey = `look-${SumField | 'sum'}` | `do-${SumField | 'sum'}`;
export type SumStep = WorkedStep<SumStepKey, SumField>;

/**
 * The sum worked through, up to the last figure asked for; figures on the way are worked as well.
 *
 * @example solution(sum of 26 on 16).map(({ key }) => key)
 * // no-idle-place, spare, halved, half-odd, borrow-two, on-bar, bundle, folds-on-bar, folds-each-side, first-row, full-width
 */
export function solution(problem: SumProblem): SumStep[] {
  const { width, capacity } = problem;
  const strands = width + carriedEnds(problem);
  const f = workOut(problem);
  const steps: SumStep[] = [];
  const step = (gives: SumField | null, key: SumStepKey, values: SumStep['values']) =>
    steps.push({ key, values, gives });
  if (strands > width) step(null, 'carried-end', { width, strands });
  if (width <= capacity) step('places', 'all-on-bar', { width, capacity });
  else if (f.places < capacity) step('places', 'idle-place', { width, capacity, places: f.places });
  else step('places', 'no-idle-place', { width: strands, capacity, places: f.places });
  if (f.spare > 0) step('spare', 'spare', { width: strands, places: f.places, spare: f.spare });
  else step('spare', 'nothing-spare', { width, places: f.places });
  step('eachSide', 'halved', { spare: f.spare, half: f.eachSide });
  step('parity', f.parity === 1 ? 'half-odd' : 'half-even', { half: f.eachSide });
  if (f.borrowed > 0)
    step('borrowed', 'borrow-two', { places: f.places, onBar: f.onBar, half: f.eachSide, bundle: f.bundle });
  else step('borrowed', 'nothing-to-borrow', { half: f.eachSide });
  step('onBar', 'on-bar', { onBar: f.onBar });
  step('bundle', 'bundle', { half: f.eachSide, added: f.borrowed / 2, bundle: f.bundle });
  step('foldsOnBar', 'folds-on-bar', { onBar: f.onBar, folds: f.foldsOnBar, loneStrings: f.loneStrings });
  if (f.loneStrings > 0) step('loneStrings', 'lone-string', { folds: f.foldsOnBar, onBar: f.onBar });
  step('foldsEachSide', 'folds-each-side', { bundle: f.bundle, folds: f.foldsEachSide });
  step('firstRowKnots', 'first-row', { onBar: f.onBar, bundles: f.firstRowKnots - f.onBar, knots: f.firstRowKnots });
  step('fullWidthRow', 'full-width', { row: f.fullWidthRow, width });

  const last = Math.max(...problem.fields.map((field) => SUM_FIELDS.indexOf(field)));
  return steps.filter(({ gives }) => gives === null || SUM_FIELDS.indexOf(gives) <= last);
}
