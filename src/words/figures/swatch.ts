import { count } from '../numbers.ts';
import type { Words } from './shared.ts';

/** A strip to measure. */
export const swatchFigureWords = {
  swatch: ({ columns, rows }) => `A swatch: a strip of ${count(columns, 'knot')} and ${count(rows, 'row')}.`,
  'swatch-width': ({ columns }) =>
    `Its width is measured across all ${count(columns, 'knot')} and divided by so many, which gives the width of one column.`,
  'swatch-height': ({ rows }) =>
    `Its height is measured over all ${count(rows, 'row')} and divided by so many, which gives the height of one row.`,
  'label-swatch-width': ({ columns }) => `width of ${count(columns, 'knot')}`,
  'label-swatch-height': ({ rows }) => count(rows, 'row'),
} satisfies Words;
