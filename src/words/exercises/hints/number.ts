import type { FitAsk, MeasureAsk, ThreadAsk } from '../../../solver/exercises/number/problem.ts';
import { figure } from '../../numbers.ts';
import type { HintsOn } from './hint.ts';

/** A single figure of a sum, of the string to cut or of a ring. */
export const NUMBER_HINTS: HintsOn<FitAsk | ThreadAsk | MeasureAsk> = {
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
  'look-capacity-low': ({ tenTurns }) =>
    `Look at the ten turns first: ${figure(tenTurns)} mm. How thick is the cord? Then think which columns are the fewest, the wide ones or the narrow ones.`,
  'do-capacity-low': ({ barWidth, widest }) =>
    `Take the thickness of one turn ${figure(widest)} times. See how often that goes into ${figure(barWidth)} mm, and leave out the rest.`,
  'look-capacity-by-swatch': ({ knots, swatchWidth }) =>
    `Look at the swatch: ${figure(knots)} knots in ${figure(swatchWidth)} mm. How wide is one of them?`,
  'do-capacity-by-swatch': ({ barWidth }) =>
    `Divide the width of the swatch by its knots. See how often that goes into ${figure(barWidth)} mm, and leave out the rest.`,
};
