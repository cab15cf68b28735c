import { figure } from '../../numbers.ts';
import type { Hints } from './hint.ts';

export const SAY_HINTS: Hints<'say'> = {
  'look-two-borrowed': () => 'Look at half of the spare strings, and at what a side is made of.',
  'do-two-borrowed': () => 'Say what the half is, why that will not do, and what each of the two sides needs.',
  'look-bundle-one-knot': ({ row }) =>
    `Look at one edge of row ${figure(row)}. How often is the leading string tied there?`,
  'do-bundle-one-knot': () =>
    'Say what one knot holds, what it treats the bundle as, and where it stands on the chart.',
  'look-sides-even': () => 'Look at what you cut for a side, and at what hangs down from it.',
  'do-sides-even': () =>
    'Say what a fold gives, what an odd number would leave over, and what the other side has to be.',
  'look-leading-inside': () => 'Look at the way the leading string goes round a bundle, and at where the next knot is.',
  'do-leading-inside': () =>
    'Say where the next knot is, what a turning knot does, and what the string can’t do by itself.',
  'look-closing-from-the-end': ({ height }) => `Look at row ${figure(height)}. What do you know of it for certain?`,
  'do-closing-from-the-end': () =>
    'Say what the last row needs, how fast strings are taken in, and what follows for counting.',
  'look-rows-short': ({ row }) => `Look at both edges of row ${figure(row)} on the chart.`,
  'do-rows-short': () =>
    'Say how the bundles are tied, what the empty cells are called, and whether it is meant to be so.',
  'look-trim-last': () => 'Look at what holds the last row, and at what the last knots are tied with.',
  'do-trim-last': () =>
    'Say what would come undone, what the ends are still needed for, and what a short end can’t do.',
};
