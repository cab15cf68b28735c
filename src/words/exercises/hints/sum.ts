import { figure } from '../../numbers.ts';
import type { Hints } from './hint.ts';

export const SUM_HINTS: Hints<'sum'> = {
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
