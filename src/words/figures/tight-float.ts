import { count, figure } from '../numbers.ts';
import type { Words } from './shared.ts';

/** A float behind its columns. */
export const tightFloatFigureWords = {
  'tight-float': ({ row, rows, columns }) =>
    `The back of ${count(rows, 'row')}. In row ${figure(row)} a float runs behind ${count(columns, 'column')}.`,
  'tight-float-pulled': () =>
    'It was pulled tight. It draws its columns together, and the piece is narrower there than above and below.',
  'tight-float-flat': () => 'It reaches across at its ease, and the columns stand as far apart as everywhere else.',
  'label-tight-float': () => 'seen from behind',
} satisfies Words;
