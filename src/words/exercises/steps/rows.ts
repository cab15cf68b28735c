import type { StepKeyOf } from '../../../solver/exercises/steps.ts';
import { count, figure, noun, type Value } from '../../numbers.ts';
import type { FittingStepKey } from './fitting.ts';
import type { KnotStepKey } from './knots.ts';
import type { MeasuringStepKey } from './measuring.ts';
import type { ReadingStepKey } from './reading.ts';
import { both, type Saying } from './saying.ts';
import type { ThreadStepKey } from './thread.ts';

export type RowStepKey = Exclude<
  StepKeyOf<'sum' | 'number' | 'mark' | 'row' | 'spot'>,
  FittingStepKey | KnotStepKey | ThreadStepKey | MeasuringStepKey | ReadingStepKey
>;

const stepsOf = (step: Value): string => (step === 1 ? '' : `${figure(step)} × `);

const edge = (strings: Value, side: string, column: Value): string =>
  `on the ${side}, ${count(strings, 'string')} ${noun(strings, 'is', 'are')} tied in column ${figure(column)}`;

/** The steps of what is counted or marked in the rows of a piece. */
export const ROW_STEPS: Readonly<Record<RowStepKey, Saying>> = {
  'row-opening': [
    ({ row, mountedLeft, mountedRight, letOut, left, right }) =>
      row === 1
        ? `Row 1 lets nothing out. The bundles are as they were hung: ${both(left, right)}.`
        : `The bundles begin with ${both(mountedLeft, mountedRight)}, and row 1 lets nothing out. By row ${figure(row)} ${letOut === 0 ? 'none has come out yet' : `it is time for ${count(letOut, 'string')} on each side to be out`}. That leaves ${both(left, right)}.`,
  ],
  'row-closing': [
    ({ row, height, closingLeft, closingRight, rowsAfter, stillOut, left, right }) =>
      rowsAfter === 0
        ? `Row ${figure(height)} is the last row. It has its whole bundles: ${both(left, right)}.`
        : `The last row, row ${figure(height)}, has bundles of ${both(closingLeft, closingRight)}. Row ${figure(row)} comes ${count(rowsAfter, 'row')} before it, so ${stillOut === 0 ? 'all strings are in' : `${count(stillOut, 'string')} on each side ${noun(stillOut, 'is', 'are')} not taken in yet`}. That leaves ${both(left, right)}.`,
  ],
  'row-at-full-width': [
    ({ row, fullWidthRow }) =>
      `Row ${figure(row)} has full width. All strings are out since row ${figure(fullWidthRow)}, and none is taken in yet, so each edge is a single string.`,
  ],
  'bundle-in-row': [
    ({ row, side, bundle }) =>
      `In row ${figure(row)}, ${count(bundle, 'string')} ${noun(bundle, 'is', 'are')} tied as one ${side === 'both' ? 'at each edge' : `at the ${side} edge`}.`,
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
  'full-width-row': [
    ({ bundle, step, letOut, row }) =>
      letOut === 0
        ? 'Nothing has to be let out, so row 1 has full width already.'
        : `A bundle of ${figure(bundle)} lets out ${count(letOut, 'string')} until one is left. After row 1 one comes out ${step === 1 ? 'in every row' : `every ${figure(step)} rows`}, so row ${figure(row)} is the first of full width.`,
    ({ step, letOut, row }) => (letOut === 0 ? '' : `1 + ${stepsOf(step)}${figure(letOut)} = ${figure(row)}`),
  ],
  'corner-cells': [
    ({ rows, cells }) =>
      rows === 1
        ? `Only row 1 comes before full width. It has ${count(cells, 'corner cell')}.`
        : `Add up the ${count(rows, 'row')} before full width. Together they have ${count(cells, 'corner cell')}.`,
  ],
  'first-closing-row': [
    ({ height, bundle, step, takenIn, row }) =>
      `To end with a bundle of ${figure(bundle)}, ${count(takenIn, 'string')} ${noun(takenIn, 'is', 'are')} taken in on each side${step === 1 ? ', one in each row' : `, one every ${figure(step)} rows`}. Row ${figure(height)} is the last of these rows, so closing begins in row ${figure(row)}.`,
    ({ height, step, takenIn, row }) => `${figure(height)} − ${stepsOf(step)}${figure(takenIn)} + 1 = ${figure(row)}`,
  ],
  'row-corner-cells': [
    ({ row, left, right, cornersLeft, cornersRight }) =>
      `Row ${figure(row)} ties ${both(left, right)} as one, in the innermost column of each. Outside these columns the corner cells are ${both(cornersLeft, cornersRight)}.`,
  ],
  'row-bundle-knots': [
    ({ row, left, right, columnLeft, columnRight }) =>
      `A bundle’s knot stands in its innermost column. In row ${figure(row)}, ${edge(left, 'left', columnLeft)}, and ${edge(right, 'right', columnRight)}.`,
  ],
};
