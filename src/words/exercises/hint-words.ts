import type { KindName } from '../../solver/exercises/contract.ts';
import type { HintKeyOf } from '../../solver/exercises/steps.ts';
import type { Step } from '../../solver/problem.ts';
import { figure, type Values } from '../numbers.ts';

type Say = (values: Values) => string;

const COUNT_BACK =
  'Count how many strings have to be taken in on each side, one less than the bundle. Count that many steps back from the last row. The last row is one of those you count.';

/** Where to look, then what to do, for each figure of the sum. */
const SUM: Readonly<Record<HintKeyOf<'sum'>, Say>> = {
  'look-sum': ({ width, capacity }) =>
    `Look at the two figures you know: the chart is ${figure(width)} wide, and the bar takes ${figure(capacity)}.`,
  'do-sum': () => 'Go from top to bottom. Each figure follows from the ones above it.',
  'look-places': ({ strands, capacity }) =>
    `Look at the ${figure(strands)} strings and at what the bar takes, ${figure(capacity)}. Are they both even, or both odd?`,
  'do-places': () =>
    'If one is even and the other odd, leave one place idle. If the chart is no wider than the bar, each string has its place.',
  'look-spare': ({ strands }) => `Look at the ${figure(strands)} strings, and at the places you use on the bar.`,
  'do-spare': () => 'Take the places away from the strings. What is left finds no place, so it is spare.',
  'look-eachSide': () => 'Look at the spare strings. They hang at the two ends of the bar.',
  'do-eachSide': () => 'Both sides get the same, so halve the spare strings.',
  'look-parity': () => 'Look at the half you found.',
  'do-parity': () => 'See whether it can be put in twos with nothing over. Then it is even.',
  'look-borrowed': () => 'Look whether the half is even or odd. Each side is made of folds, and a fold is two strings.',
  'do-borrowed': () =>
    'If the half is odd, each of the two sides needs one string more from the bar. If it is even, none.',
  'look-onBar': () => 'Look at the places you use on the bar, and at what you borrowed from it.',
  'do-onBar': () => 'Take what is borrowed away from the places.',
  'look-bundle': () => 'Look at the half of the spare strings, and at what you borrowed for the two sides.',
  'do-bundle': () => 'Each side gets half of what is borrowed. Add that to the half of the spare strings.',
  'look-foldsOnBar': () => 'Look at the strings on the bar. One fold gives two of them.',
  'do-foldsOnBar': () => 'Halve the strings on the bar. If there is a lone string, leave it out first.',
  'look-loneStrings': () => 'Look whether the strings on the bar are an even or an odd number.',
  'do-loneStrings': () => 'Put them in twos, for folds. Count what is left over.',
  'look-foldsEachSide': () => 'Look at the strings in one side bundle. One fold gives two of them.',
  'do-foldsEachSide': () => 'Halve the strings of one bundle.',
  'look-firstRowKnots': () => 'Look at the strings on the bar, and picture a bundle at each end of row 1.',
  'do-firstRowKnots': () => 'Count one knot for each string on the bar, and one for each whole bundle.',
  'look-fullWidthRow': () =>
    'Look at one side bundle. Row 1 lets nothing out, and each row after it lets out one string.',
  'do-fullWidthRow': () =>
    'Count the strings that come out until one is left at the edge. Then add row 1. Without bundles row 1 has full width already.',
};

const NUMBER: Readonly<Record<HintKeyOf<'number'>, Say>> = {
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
  'look-base-string-in-all': () => 'Look at how many base strings one fold gives.',
  'do-base-string-in-all': ({ foldLength }) =>
    `First find how many folds there are. Then take ${figure(foldLength)} mm that many times.`,
};

const MARK: Readonly<Record<HintKeyOf<'mark'>, Say>> = {
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

const HINTS: { readonly [K in KindName]: Readonly<Record<HintKeyOf<K>, Say>> } = {
  sum: SUM,
  number: NUMBER,
  mark: MARK,
};

/** A hint in words: where to look (`look`) or what to do (`do`). */
export function hintWords<K extends KindName>(kind: K, { key, values }: Step<HintKeyOf<K>>): string {
  const says: Readonly<Record<HintKeyOf<K>, Say>> = HINTS[kind];
  return says[key](values);
}

/** Before the third hint, a case worked with other figures. */
export const WORKED_CASE = 'Here is one like it, worked with other figures.';
