import type { MarkStepKey } from '../../../solver/exercises/mark/solution.ts';
import { count, figure, noun, type Value } from '../../numbers.ts';
import { both, type Saying, stepsOf } from './saying.ts';

const edge = (strings: Value, side: string, column: Value): string =>
  `on the ${side}, ${count(strings, 'string')} ${noun(strings, 'is', 'are')} tied in column ${figure(column)}`;

/** The steps of what is marked on a chart. */
export const MARKING_STEPS: Readonly<Record<MarkStepKey, Saying>> = {
  'row-corner-cells': [
    ({ row, left, right, cornersLeft, cornersRight }) =>
      `Row ${figure(row)} ties ${both(left, right)} as one, in the innermost column of each. Outside these columns the corner cells are ${both(cornersLeft, cornersRight)}.`,
  ],
  'row-bundles': [({ row, left, right }) => `Row ${figure(row)} ties ${both(left, right)} as one.`],
  'row-bundle-knots': [
    ({ left, right, columnLeft, columnRight }) =>
      `A bundle’s knot stands in its innermost column. So ${edge(left, 'left', columnLeft)}, and ${edge(right, 'right', columnRight)}.`,
  ],
  'strings-taken-in': [
    ({ bundle, step, takenIn }) =>
      `To end with a bundle of ${figure(bundle)}, ${count(takenIn, 'string')} ${noun(takenIn, 'is', 'are')} taken in on each side${step === 1 ? ', one in each row' : `, one every ${figure(step)} rows`}.`,
  ],
  'closing-row': [
    ({ height, row }) => `Row ${figure(height)} is the last of these rows, so closing begins in row ${figure(row)}.`,
    ({ height, step, takenIn, row }) => `${figure(height)} − ${stepsOf(step)}${figure(takenIn)} + 1 = ${figure(row)}`,
  ],
  'row-side': [
    ({ startSide, begins }) =>
      `Row 1 begins on the ${startSide}, so every ${begins === startSide ? 'odd' : 'even'} row begins on the ${begins}.`,
  ],
  'row-first-knot': [
    ({ row, strings, column }) =>
      `${Number(strings) > 1 ? `A bundle of ${figure(strings)} is tied there` : 'The edge there is a single string'}, so the first knot of row ${figure(row)} stands in column ${figure(column)}.`,
  ],
  'row-read': [({ row, read }) => `From left to right, row ${figure(row)} reads ${read}.`],
  'row-colour': [
    ({ colour, cells, columns }) =>
      `So ${count(cells, 'cell')} ${noun(cells, 'is', 'are')} ${colour}, in ${noun(cells, 'column')} ${columns}.`,
  ],
  'row-picture-cut': [
    ({ row, cornersLeft, cornersRight, cut }) =>
      `Row ${figure(row)} has corner cells at its edges: ${both(cornersLeft, cornersRight)}. ${Number(cut) === 0 ? 'None of them belongs to the picture.' : `Of these, ${count(cut, 'cell')} ${noun(cut, 'belongs', 'belong')} to the picture.`}`,
  ],
};
