import { count, figure, noun } from '../numbers.ts';
import type { Words } from './shared.ts';

/** A row from behind. */
export const backFigureWords = {
  back: ({ row, knots }) => `Row ${figure(row)} seen from behind, with the backs of ${count(knots, 'knot')}.`,
  'back-float': ({ colour, columns, from, to }) =>
    `From column ${figure(from)} to column ${figure(to)}, ${colour} floats past ${count(columns, 'column')}.`,
  'back-long': ({ colour, columns, from, to }) =>
    `From column ${figure(from)} to column ${figure(to)}, ${colour} floats past ${count(columns, 'column')}, which is long: it wants to be caught under a knot on the way.`,
  'back-none': () => 'No colour comes twice in this row with another one between, so nothing floats inside it.',
  'label-back-left': () => 'the left of the front',
  'label-back-right': () => 'the right of the front',
  'label-back-floats': ({ floats, columns }) =>
    floats === 0
      ? 'no float inside this row'
      : `${count(floats, 'float')}, ${noun(floats, 'past', 'the longest past')} ${count(columns, 'column')}`,
} satisfies Words;
