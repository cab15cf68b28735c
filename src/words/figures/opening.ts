import { count, figure } from '../numbers.ts';
import { rowEdges, type Words } from './shared.ts';

/** The first rows as a stack. */
export const openingFigureWords = {
  opening: ({ rows, width }) =>
    `The first ${rows === 1 ? 'row' : `${figure(rows)} rows`} of a piece ${count(width, 'column')} wide, one under the other.`,
  'opening-row': rowEdges,
  'opening-full': ({ row, width }) => `Row ${figure(row)} has all ${count(width, 'column')}.`,
} satisfies Words;
