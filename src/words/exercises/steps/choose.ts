import type { ChooseAsk } from '../../../solver/exercises/choose/problem.ts';
import type { ChooseStepKey } from '../../../solver/exercises/choose/solution.ts';
import { count, figure, type Value } from '../../numbers.ts';
import { choiceWords } from '../choose.ts';
import type { Saying } from './saying.ts';

const both = (left: Value, right: Value): string =>
  left === right ? `${figure(left)} on each side` : `${figure(left)} on the left and ${figure(right)} on the right`;

const MOVES: Readonly<Record<string, string>> = {
  'let-out': 'It gets smaller, so one string comes out first.',
  'take-in': 'It gets larger, and the leading string is inside it already. So the next string comes to it.',
  'carry-behind':
    'It was a single string, and the leading string waits outside. So the leading string goes behind both strings that are to be one bundle.',
  none: 'It stays as it is, so nothing has to move.',
};

const TURNS: Readonly<Record<string, string>> = {
  'both-bundles': 'Both are bundles. One turning knot holds each of them.',
  'starting-string':
    'Here the last string of the starting bundle is tied alone, and the leading string still lies on its inner side. So this string gets one more turning knot.',
  none: 'Both are single strings, and the leading string waits outside the first. So no knot has to turn.',
};

/** What has to be known to choose, and the choice. */
export const CHOOSE_STEPS: Readonly<Record<ChooseStepKey, Saying>> = {
  'why-knot-direction': [
    ({ row, startSide, start }) =>
      `Row 1 begins on the ${startSide}, and every row begins where the last one ended. So row ${figure(row)} begins on the ${start}.`,
  ],
  'why-edge-knot': [
    ({ side }) =>
      `At the ${side} edge the leading string comes from the inner side and has to go back there. A turning knot does that. Its first half goes out to the ${side}, and its second half comes back.`,
  ],
  'why-turning-knot': [
    ({ row, left, right, choice }) =>
      `In row ${figure(row)} the edges hold ${both(left, right)}. ${TURNS[String(choice)] ?? figure(undefined)}`,
  ],
  'why-leading-string': [
    ({ row, end, endBundle }) =>
      `Row ${figure(row)} ends on the ${end}, with ${count(endBundle, 'string')} at the edge. ${endBundle === 1 ? 'An ordinary knot leaves the leading string outside.' : 'The turning knot brings the leading string back to the inner side.'}`,
  ],
  'why-first-move': [
    ({ row, start, startBundle, startBefore, choice }) =>
      `${row === 1 ? `In row 1 the ${start} edge holds ${count(startBundle, 'string')}, as it was mounted.` : `The ${start} edge held ${count(startBefore, 'string')} in the row before, and holds ${count(startBundle, 'string')} in row ${figure(row)}.`} ${MOVES[String(choice)] ?? figure(undefined)}`,
  ],
  'why-let-out': [
    ({ startBefore, startBundle }) =>
      `The ${count(startBefore, 'string')} of the bundle lie side by side. The one that goes has to hang beside the single strings, and ${count(startBundle, 'string')} stay behind at the edge.`,
  ],
  'why-corner-cells': [
    ({ row, side, bundle, outside }) =>
      `In row ${figure(row)} one knot holds the ${count(bundle, 'string')} on the ${side}. It stands in the innermost of their columns, and ${count(outside, 'column')} outside it ${outside === 1 ? 'stays' : 'stay'} empty.`,
  ],
  'why-closing-end': [
    ({ height, closingLeft, closingRight }) =>
      `Only the last row is sure: row ${figure(height)} ties the whole bundles, ${both(closingLeft, closingRight)}. Each step back from there takes one string off.`,
  ],
  'why-bundle-knot': [
    ({ left, right, single, knots }) =>
      `One knot holds all ${figure(left)} strings on the left, one all ${figure(right)} on the right, and each of the ${count(single, 'single string')} has its own. That makes ${count(knots, 'knot')}.`,
    ({ single, knots }) => `1 + ${figure(single)} + 1 = ${figure(knots)}`,
  ],
  'why-borrow': [
    ({ spare, eachSide, borrowed }) =>
      `${count(spare, 'string')} are spare, so each side would get ${figure(eachSide)}. ${borrowed === 0 ? 'That is even, and can be made of folds.' : 'That is odd, and folds come in twos. Each side needs one string more.'}`,
  ],
  'why-odd-half': [
    ({ eachSide, strands, onBar, borrowed }) =>
      `${figure(eachSide)} can’t be made of folds, and no string may be lost. With one more, each side has ${figure(strands)}. These ${figure(borrowed)} strings come off the bar, which keeps ${figure(onBar)}.`,
  ],
  'why-fold-or-string': [
    ({ strands, folds }) =>
      `One fold hangs down as two strings. So ${figure(strands)} strings are ${count(folds, 'fold')}, and each is cut as long as both its ends.`,
  ],
  'why-safe-sheet': [
    ({ low, onBarLow, capacity, onBarLikely }) =>
      `The sheet for ${figure(capacity)} puts ${figure(onBarLikely)} strings on the bar. If the bar takes only ${figure(low)}, they do not lie flat. ${figure(onBarLow)} do, on this ring and on every wider one.`,
  ],
  'why-rows-length': [
    ({ height }) =>
      `${figure(height)} is a number of rows, and not a length. Times the height of a row it becomes one. The string does not go straight, it bends round each knot, so it needs a little more.`,
  ],
  'why-float': [
    ({ span, choice }) =>
      `${count(span, 'column')} ${span === 1 ? 'is' : 'are'} skipped. ${choice === 'leave' ? 'Up to five, a string may run free along the back.' : 'More than five would hang as a loop and catch, so a knot on the way has to hold it.'}`,
  ],
  'why-colour-change': [
    ({ start, startBundle }) =>
      `The turning knot holds the ${count(startBundle, 'string')} on the ${start} by itself, and turns the string back. A join there would come loose. Three ordinary knots hold both tails.`,
  ],
  'why-trim': [
    () =>
      'The last turning knots are held by nothing but the ends that lie in the bundles. The square knots hold these, and need ends that a hand can pull.',
  ],
  'why-spiral': [
    () =>
      'A square knot lies flat because its second half is the mirror image of the first. Each half turns the knot a little. Mirrored, the turns cancel. Repeated, they add up.',
  ],
  chosen: [
    ({ ask, choice, ...values }) =>
      `So this is right: “${choiceWords(ask as ChooseAsk, String(choice), values)}”.`.replace('.”.', '”.'),
  ],
};
