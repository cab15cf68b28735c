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
  'look-first-knot': ({ from, startSide }) =>
    `Row 1 begins on the ${startSide}, and every row begins where the one before it ended. Is ${figure(from)} even or odd?`,
  'do-first-knot': () =>
    'On the side where the row begins, find the knot nearest to the edge. A bundle’s knot stands in its innermost column.',
  'look-colour-in-row': ({ from }) => `Find the number ${figure(from)} beside the chart, and read along that row.`,
  'do-colour-in-row': ({ colour }) =>
    `Mark each cell of this row that is ${colour}. There may be more than one stretch.`,
  'look-picture-cut': ({ from, to }) =>
    `Look at both edges of rows ${figure(from)} to ${figure(to)}. First find the corner cells of each row.`,
  'do-picture-cut': () =>
    'Each side has one corner cell fewer than its bundle has strings. Of these cells mark only those that have a colour of the picture.',
};
