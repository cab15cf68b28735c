import { count, figure } from '../numbers.ts';
import { side, type Words } from './shared.ts';

/** One row of the chart, read as it is tied. */
export const rowReadFigureWords = {
  'row-read': ({ row, knots }) => `Row ${figure(row)} of the chart has ${count(knots, 'knot')}.`,
  'row-read-begins': ({ side: name }) => `It begins on the ${side({ side: name ?? '' })}.`,
  'row-read-stretches': ({ stretches, more }) =>
    `In the order in which they are tied, these are ${stretches}${more === 0 ? '' : ', and more'}.`,
  'row-read-plain': () => 'There is no picture on this chart yet.',
  'label-first-knot': ({ row, side: name }) => `row ${figure(row)}, from the ${side({ side: name ?? '' })}`,
  'label-last-knot': ({ knot }) => `knot ${figure(knot)}`,
  'label-colour': ({ name, knots }) => `${name}: ${count(knots, 'knot')}`,
} satisfies Words;
