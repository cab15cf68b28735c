import type { ChooseGroup } from '../../../solver/exercises/choose/groups.ts';
import { count, figure } from '../../numbers.ts';
import { KNOTS_CHOICES } from '../choices/knots.ts';
import { both } from '../choices/saying.ts';
import { chosen } from './chosen.ts';
import type { Saying } from './saying.ts';

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
export const CHOOSE_KNOTS_STEPS: Readonly<Record<`why-${ChooseGroup['knots']}` | 'chosen', Saying>> = {
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
  chosen: chosen(KNOTS_CHOICES),
};
