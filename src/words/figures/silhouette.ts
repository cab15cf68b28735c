import { count } from '../numbers.ts';
import { rowEdges, type Words } from './shared.ts';

/** A wished shape and the outline nearest to it. */
export const silhouetteFigureWords = {
  silhouette: ({ width, height, cells }) =>
    `A shape that is wished for, dashed, and the ${cells === 0 ? 'outline that is tied' : 'nearest outline that can be tied'}, ${count(width, 'column')} wide and ${count(height, 'row')} high.`,
  'silhouette-same': () => 'The two are the same: every edge of the wish can be tied.',
  'silhouette-differs': ({ cells }) =>
    cells === 0
      ? 'The piece has too few rows for any such shape, so its own outline is drawn.'
      : `They differ by ${count(cells, 'cell')} at the edges, and no outline that can be tied differs by less.`,
  'silhouette-bundle': (values) => `The largest bundles are tied in this one. ${rowEdges(values)}`,
} satisfies Words;
