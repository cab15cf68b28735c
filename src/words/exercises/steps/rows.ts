import type { StepKeyOf } from '../../../solver/exercises/steps.ts';
import { count, figure, noun, type Values } from '../../numbers.ts';
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

/** How the bundles open as far as a row, without what is left of them there. */
const letOutBy = ({ row, mountedLeft, mountedRight, letOut }: Values): string => {
  const begin = `The bundles begin with ${both(mountedLeft, mountedRight)}, and row 1 lets nothing out.`;
  if (row === 1) return begin;
  const out =
    letOut === 0 ? 'none has come out yet' : `it is time for ${count(letOut, 'string')} on each side to be out`;
  return `${begin} By row ${figure(row)} ${out}.`;
};

/** How the bundles close as far as a row, without what is in them there. */
const outStillIn = ({ row, height, closingLeft, closingRight, rowsAfter, stillOut }: Values): string => {
  const end = `The last row, row ${figure(height)}, has bundles of ${both(closingLeft, closingRight)}.`;
  if (rowsAfter === 0) return end;
  const out =
    stillOut === 0
      ? 'all strings are in'
      : `${count(stillOut, 'string')} on each side ${noun(stillOut, 'is', 'are')} not taken in yet`;
  return `${end} Row ${figure(row)} comes ${count(rowsAfter, 'row')} before it, so ${out}.`;
};

/** The steps of what is counted or marked in the rows of a piece. */
export const ROW_STEPS: Readonly<Record<RowStepKey, Saying>> = {
  'let-out-by-row': [letOutBy],
  'out-still-in-row': [outStillIn],
  'row-opening': [
    (values) =>
      values['row'] === 1
        ? `Row 1 lets nothing out. The bundles are as they were hung: ${both(values['left'], values['right'])}.`
        : `${letOutBy(values)} That leaves ${both(values['left'], values['right'])}.`,
  ],
  'row-closing': [
    (values) =>
      values['rowsAfter'] === 0
        ? `Row ${figure(values['height'])} is the last row. It has its whole bundles: ${both(values['left'], values['right'])}.`
        : `${outStillIn(values)} That leaves ${both(values['left'], values['right'])}.`,
  ],
  'row-at-full-width': [
    ({ row, fullWidthRow }) =>
      `Row ${figure(row)} has full width. All strings are out since row ${figure(fullWidthRow)}, and none is taken in yet, so each edge is a single string.`,
  ],
  'bundle-in-row': [
    ({ row, side, bundle }) =>
      `In row ${figure(row)}, ${count(bundle, 'string')} ${noun(bundle, 'is', 'are')} tied as one ${side === 'both' ? 'at each edge' : `at the ${side} edge`}.`,
    ({ from, gone, bundle }) =>
      Number(gone) > 0 && Number(from) - Number(gone) === bundle
        ? `${figure(from)} − ${figure(gone)} = ${figure(bundle)}`
        : '',
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
};
