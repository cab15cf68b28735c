import type { ChartAsk, InRowAsk, PieceAsk } from '../../../solver/exercises/number/problem.ts';
import { count, figure } from '../../numbers.ts';
import { COUNT_BACK, type HintsOn } from './hint.ts';

/** A single figure of the rows. */
export const ROWS_HINTS: HintsOn<InRowAsk | PieceAsk | ChartAsk> = {
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
  'look-column-of-knot': ({ row, startSide }) =>
    `Look at the number of the row. Row 1 begins on the ${startSide}, and every row begins where the one before it ended. Where does row ${figure(row)} begin?`,
  'do-column-of-knot': () =>
    'Find the column of the first knot on that side. If a bundle is tied there, its knot stands in its innermost column. Then go on from there, one column for each further knot.',
  'look-knots-of-colour': ({ colour }) => `Look for ${colour} in the whole row, and not only where it stands first.`,
  'do-knots-of-colour': ({ colour }) => `One cell is one knot. Add up all the ${colour} cells of the row.`,
  'look-plain-rows-above': ({ inset }) =>
    `Look at column ${figure(inset)}. In which row is the bundle small enough for a knot to be tied there?`,
  'do-plain-rows-above': ({ inset, pictureRow }) =>
    `A bundle’s knot stands in its innermost column. So go down to the row in which the larger bundle has ${count(inset, 'string')} or fewer. Then count the rows by which row ${figure(pictureRow)} has to move.`,
};
