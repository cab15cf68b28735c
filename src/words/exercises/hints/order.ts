import { figure } from '../../numbers.ts';
import type { Hints } from './hint.ts';

export const ORDER_HINTS: Hints<'order'> = {
  'look-mounting': ({ startSide }) =>
    `Look at what each step needs to be there already. What has to hang before the leading string can lie inside on the ${startSide}?`,
  'do-mounting': () => 'Begin with the scissors. Fill the bar, then hold the ring still, then turn to the bundle.',
  'look-first-row': ({ startSide }) => `Follow the leading string from the ${startSide} to the other side.`,
  'do-first-row': () =>
    'Put each thing that is tied after what brings it there. The far bundle has time until its knot is due.',
  'look-let-out': ({ start }) =>
    `Look at the ${start} bundle. Which of the steps can no longer be done once it is tied?`,
  'do-let-out': () => 'Free first, then tie the edge, and go on inwards from there.',
  'look-take-in': ({ start }) =>
    `Look at the ${start} edge. What has to be together, and on which side is the leading string?`,
  'do-take-in': () => 'Let everything come to its place first. Then tie from edge to edge.',
  'look-row': ({ row }) =>
    `Walk along row ${figure(row)} in your mind, from the edge where it begins to the other one.`,
  'do-row': () =>
    'Free, tie the edge, tie what came out, and go on. At the far edge the freed string comes before the bundle.',
  'look-sum': () => 'Look at which figure each step needs. It has to be found before.',
  'do-sum': () =>
    'Find what is spare, then half of it, and what the half asks for. Count bar, sides and folds at the end.',
  'look-gathering': () => 'Look at what is held by nothing yet, and at what each step still needs in its hand.',
  'do-gathering': () =>
    'Secure the leading strings, gather from both sides, and bring the last two outside. Then tie, and at the very end cut.',
  'look-square-knot': () => 'Look at which string is over the core. In the second half it is the other way round.',
  'do-square-knot': () => 'For each half: lay one string over, bring the other up through its loop, draw up.',
  'look-new-string': ({ startBundle }) =>
    `Look at the knot round the ${figure(startBundle)} strings. May a join fall on it?`,
  'do-new-string': () => 'Get past the edge with the old string. Then lay, tie over, and go on. Scissors come last.',
  'look-evening': () => 'Look at what each task takes its figures from.',
  'do-evening': () => 'Measure, reckon, write, cut, pack. One of the tasks needs none of the others.',
};
