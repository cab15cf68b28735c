import { count, figure } from '../numbers.ts';
import { rowEdges, type Words } from './shared.ts';

/** The last rows as a stack. */
export const closingFigureWords = {
  closing: ({ from, to }) =>
    from === to
      ? `Row ${figure(to)}, the last.`
      : `The last rows, ${figure(from)} to ${figure(to)}, one under the other.`,
  'closing-row': rowEdges,
  'closing-none': ({ width }) => `Nothing is taken in: the piece keeps its ${count(width, 'column')} to the end.`,
} satisfies Words;
