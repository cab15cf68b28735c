import type { StepKeyOf } from '../../../solver/exercises/steps.ts';
import { count, figure, noun } from '../../numbers.ts';
import type { FittingStepKey } from './fitting.ts';
import type { KnotStepKey } from './knots.ts';
import type { MeasuringStepKey } from './measuring.ts';
import type { ReadingStepKey } from './reading.ts';
import { both, type Saying, stepsOf } from './saying.ts';
import type { ThreadStepKey } from './thread.ts';

export type RowStepKey = Exclude<
  StepKeyOf<'sum' | 'number' | 'row' | 'spot'>,
  FittingStepKey | KnotStepKey | ThreadStepKey | MeasuringStepKey | ReadingStepKey
>;

/** The steps of what is counted or marked in the rows of a piece. */
export const ROW_STEPS: Readonly<Record<RowStepKey, Saying>> = {
  'row-opening': [
    ({ row, mountedLeft, mountedRight, letOut }) =>
      row === 1
        ? `The bundles are hung with ${both(mountedLeft, mountedRight)}, and row 1 lets nothing out.`
        : `The bundles begin with ${both(mountedLeft, mountedRight)}, and row 1 lets nothing out. By row ${figure(row)} ${letOut === 0 ? 'none has come out yet' : `it is time for ${count(letOut, 'string')} on each side to be out`}.`,
  ],
  'row-closing': [
    ({ row, height, closingLeft, closingRight, rowsAfter, stillOut }) =>
      rowsAfter === 0
        ? `Row ${figure(height)} is the last row, and it has the whole bundles: ${both(closingLeft, closingRight)}.`
        : `The last row, row ${figure(height)}, has bundles of ${both(closingLeft, closingRight)}. Row ${figure(row)} comes ${count(rowsAfter, 'row')} before it, so ${stillOut === 0 ? 'all strings are in' : `${count(stillOut, 'string')} on each side ${noun(stillOut, 'is', 'are')} not taken in yet`}.`,
  ],
  'row-at-full-width': [
    ({ row, fullWidthRow }) =>
      `Row ${figure(row)} has full width: all strings are out since row ${figure(fullWidthRow)}, and none is taken in yet.`,
  ],
  'bundles-left': [
    ({ left, right }) =>
      left === 1 && right === 1
        ? 'So each edge is a single string.'
        : `So the strings tied as one are ${both(left, right)}.`,
  ],
  'bundle-in-row': [
    ({ row, side, bundle }) =>
      `So in row ${figure(row)}, ${count(bundle, 'string')} ${noun(bundle, 'is', 'are')} tied as one ${side === 'both' ? 'at each edge' : `at the ${side} edge`}.`,
    ({ whole, apart, bundle }) => (apart === 0 ? '' : `${figure(whole)} − ${figure(apart)} = ${figure(bundle)}`),
  ],
  'knots-in-row': [
    ({ row, width, outside, knots }) =>
      outside === 0
        ? `Every column of row ${figure(row)} has its knot: ${figure(knots)}.`
        : `${count(outside, 'column')} of row ${figure(row)} ${noun(outside, 'lies', 'lie')} outside the knots of the bundles. The rest of the ${figure(width)} have one knot each: ${figure(knots)}.`,
    ({ width, outside, knots }) => `${figure(width)} − ${figure(outside)} = ${figure(knots)}`,
  ],
  'corner-cells-in-row': [
    ({ row, left, right, cells }) =>
      `Each side has one corner cell fewer than its bundle has strings. In row ${figure(row)} that is ${both(left, right)}, so ${figure(cells)} together.`,
    ({ left, right, cells }) => `${figure(left)} + ${figure(right)} = ${figure(cells)}`,
  ],
  'strings-to-let-out': [
    ({ bundle, letOut }) =>
      letOut === 0
        ? 'Each edge is a single string from the start, so nothing has to be let out.'
        : `Row 1 ties the whole bundle of ${figure(bundle)}. Until one string of it is left, ${count(letOut, 'string')} ${noun(letOut, 'has', 'have')} to come out.`,
  ],
  'full-width-row': [
    ({ step, letOut, row }) =>
      letOut === 0
        ? 'So row 1 has full width already.'
        : `After row 1 one comes out ${step === 1 ? 'in every row' : `every ${figure(step)} rows`}, so row ${figure(row)} is the first of full width.`,
    ({ step, letOut, row }) => (letOut === 0 ? '' : `1 + ${stepsOf(step)}${figure(letOut)} = ${figure(row)}`),
  ],
  'corner-cells': [
    ({ rows, cells }) =>
      rows === 1
        ? `Only row 1 comes before full width. It has ${count(cells, 'corner cell')}.`
        : `Add up the ${count(rows, 'row')} before full width. Together they have ${count(cells, 'corner cell')}.`,
  ],
  'strings-to-take-in': [
    ({ bundle, takenIn }) =>
      `To grow from a single string to a bundle of ${figure(bundle)}, a side has to take in ${count(takenIn, 'string')}.`,
  ],
  'first-closing-row': [
    ({ height, step, takenIn, row }) =>
      takenIn === 1 && step === 1
        ? `That happens in the last row, so closing begins in row ${figure(row)}.`
        : `${step === 1 ? 'Every row takes one in' : `${takenIn === 1 ? 'It' : 'Each'} takes ${figure(step)} rows`}. Row ${figure(height)} is the last of these rows, so closing begins in row ${figure(row)}.`,
    ({ height, step, takenIn, row }) => `${figure(height)} − ${stepsOf(step)}${figure(takenIn)} + 1 = ${figure(row)}`,
  ],
};
