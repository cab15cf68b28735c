import { figure } from '../../numbers.ts';
import { COUNT_BACK, type Hints } from './hint.ts';

export const NUMBER_HINTS: Hints<'number'> = {
  'look-spare': ({ width, capacity }) =>
    `Look at the width of the chart, ${figure(width)}, and at what the bar takes, ${figure(capacity)}.`,
  'do-spare': () =>
    'Take the places away from the strings. If an odd number is left, one place stays idle, so one string more is spare.',
  'look-each-side': () => 'Begin with the spare strings. Each side bundle is made of folds, and a fold is two strings.',
  'do-each-side': () =>
    'Halve the spare strings. If the half is odd, each side needs one string more, and both come from the bar. If it is even, leave it.',
  'look-on-bar': () => 'Begin with the places of the bar. One may stay idle, and two may be lent.',
  'do-on-bar': () =>
    'Halve the spare strings. If the half is odd, take two from the places of the bar. If it is even, take none.',
  'look-folds-to-cut': () => 'Folds hang in three places: on the bar, on the left and on the right.',
  'do-folds-to-cut': () =>
    'Halve the strings on the bar, and halve the strings of each side bundle. Then add up all three. A lone string is no fold.',
  'look-knots-in-row': ({ row }) =>
    `Look at the two edges of row ${figure(row)}. How many strings are tied as one there?`,
  'do-knots-in-row': ({ width }) =>
    `On each side, one column fewer than the bundle has strings gets no knot of its own. Take these away from the ${figure(width)} columns.`,
  'look-bundle-in-row': ({ row, height }) =>
    row === height
      ? `Row ${figure(row)} is the last row. Look at the bundles it closes to.`
      : row === 1
        ? 'Row 1 ties the bundles as they hang there. Look at what hangs on each side.'
        : `Look whether row ${figure(row)} is nearer to row 1 or to the last row, row ${figure(height)}.`,
  'do-bundle-in-row': () =>
    'While opening, take one off the bundle of row 1 for each string let out so far. While closing, take one off the last bundle for each string that is not in yet. One string always stays.',
  'look-corner-cells-in-row': ({ row }) =>
    `Look at the two edges of row ${figure(row)}, outside the knots of the bundles.`,
  'do-corner-cells-in-row': () =>
    'Find the bundle of each side in this row. It has one corner cell fewer than strings. Add both sides.',
  'look-full-width-row': ({ mountedLeft, mountedRight }) =>
    `Look at the bundles of row 1: ${figure(mountedLeft)} on the left and ${figure(mountedRight)} on the right.`,
  'do-full-width-row': () =>
    'Count the strings that the larger one lets out until one is left at the edge. Each takes one step. Add them to row 1.',
  'look-first-closing-row': ({ height, closingLeft, closingRight }) =>
    `Look at the last row, row ${figure(height)}. Its bundles are ${figure(closingLeft)} on the left and ${figure(closingRight)} on the right.`,
  'do-first-closing-row': () => COUNT_BACK,
  'look-corner-cells': () => 'Look at each row from row 1 up to the first of full width.',
  'do-corner-cells': () =>
    'In each of these rows, each side has one corner cell fewer than its bundle has strings. Add up both sides of all rows.',
  'look-cut-length': () => 'Look at what one end is needed for: the rows, mounting and finishing, and what you hold.',
  'do-cut-length': ({ height, rowPitch, takeUp, place }) =>
    `The rows need ${figure(height)} × ${figure(rowPitch)} × ${figure(takeUp)} mm. Add the rest to that. ${place === 'lone' ? 'A lone string has only this one end.' : 'A fold has two such ends.'}`,
  'look-longest-float': () => 'Look for a colour that stops and comes again.',
  'do-longest-float': () =>
    'Between two uses of a colour, count the knots of other colours. That is one float. Find the longest.',
  'look-folds-for-class': ({ onBar, bundle }) =>
    `Begin with one piece: ${figure(onBar)} strings on the bar and ${figure(bundle)} in each bundle.`,
  'do-folds-for-class': ({ learners }) => `Halve the strings of one piece. Take these folds ${figure(learners)} times.`,
  'look-making-minutes': () => 'The knots are in seconds, and the rest in minutes.',
  'do-making-minutes': ({ beside }) =>
    `Take the knots times the seconds for one. Turn that into minutes, and add ${figure(beside)}.`,
  'look-base-string-in-all': () => 'Look at how many base strings one fold gives.',
  'do-base-string-in-all': ({ foldLength }) =>
    `First find how many folds there are. Then take ${figure(foldLength)} mm that many times.`,
};
