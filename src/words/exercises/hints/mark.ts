import { figure } from '../../numbers.ts';
import { COUNT_BACK, type Hints } from './hint.ts';

export const MARK_HINTS: Hints<'mark'> = {
  'look-corner-cells': ({ from, to }) =>
    `Look at the edges of ${from === to ? `row ${figure(from)}` : `rows ${figure(from)} to ${figure(to)}`}. The knot of a bundle stands in its innermost column.`,
  'do-corner-cells': () =>
    'In each row, mark the cells outside these knots, on both sides: one fewer than the bundle has strings.',
  'look-bundle-knot': ({ from }) => `Look at how many strings each bundle has in row ${figure(from)}.`,
  'do-bundle-knot': () =>
    'On each side, count as many columns in from the edge as the bundle has strings. Mark the last of them.',
  'look-first-closing-row': ({ height, closingLeft, closingRight }) =>
    `Look at the last row, row ${figure(height)}. Its bundles are ${figure(closingLeft)} on the left and ${figure(closingRight)} on the right.`,
  'do-first-closing-row': () => COUNT_BACK,
};
