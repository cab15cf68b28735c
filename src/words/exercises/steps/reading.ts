import { count, figure, ordinal } from '../../numbers.ts';
import { both, type Saying } from './saying.ts';

export type ReadingStepKey =
  | 'bundles-in-row'
  | 'row-begins'
  | 'column-of-knot'
  | 'stretches-of-colour'
  | 'knots-of-colour'
  | 'row-for-picture'
  | 'plain-rows-above';

/** The steps of how a chart is read, and of where its picture falls. */
export const READING_STEPS: Readonly<Record<ReadingStepKey, Saying>> = {
  'bundles-in-row': [
    ({ row, left, right }) =>
      left === 1 && right === 1
        ? `In row ${figure(row)} each edge is a single string, so every column has a knot.`
        : `In row ${figure(row)} the strings tied as one are ${both(left, right)}.`,
  ],
  'row-begins': [
    ({ row, startSide, begins, first }) =>
      `Row 1 begins on the ${startSide}, so every ${begins === startSide ? 'odd' : 'even'} row begins on the ${begins}. The first knot of row ${figure(row)} stands in column ${figure(first)}.`,
  ],
  'column-of-knot': [
    ({ knot, begins, steps, column }) =>
      `The ${ordinal(Number(knot))} knot stands ${count(steps, 'column')} farther to the ${begins === 'left' ? 'right' : 'left'}, in column ${figure(column)}.`,
    ({ begins, first, steps, column }) =>
      `${figure(first)} ${begins === 'left' ? '+' : '−'} ${figure(steps)} = ${figure(column)}`,
  ],
  'stretches-of-colour': [
    ({ row, colour, stretches }) => `Row ${figure(row)} has ${count(stretches, 'stretch')} of ${colour}.`,
  ],
  'knots-of-colour': [
    ({ colour, knots }) => `One cell is one knot, so the ${colour} string ties ${figure(knots)}.`,
    ({ stretches, sum, knots }) => (Number(stretches) > 1 ? `${sum} = ${figure(knots)}` : ''),
  ],
  'row-for-picture': [
    ({ inset, bundle, row }) =>
      `A knot is tied in column ${figure(inset)} as soon as the bundles have ${count(inset, 'string')} or fewer. They begin with ${figure(bundle)}, so that is in row ${figure(row)}.`,
  ],
  'plain-rows-above': [
    ({ pictureRow, row, plain }) =>
      `The picture begins in row ${figure(pictureRow)}, and it has to move down to row ${figure(row)}. That takes ${count(plain, 'plain row')}.`,
    ({ pictureRow, row, plain }) => `${figure(row)} − ${figure(pictureRow)} = ${figure(plain)}`,
  ],
};
