import type { ChooseGroup } from '../../../solver/exercises/choose/groups.ts';
import { count, figure } from '../../numbers.ts';
import { type AskedOf, bundles, piece } from './saying.ts';

export const KNOTS_CHOICES: AskedOf<ChooseGroup['knots']> = {
  'knot-direction': {
    given: ({ row, startSide }) => `Row 1 begins on the ${startSide}. You are about to tie row ${figure(row)}.`,
    ask: () => 'Which knots do you tie on the single strings of this row?',
    choices: {
      forward: () => 'Forward knots, from left to right',
      backward: () => 'Backward knots, from right to left',
      'in-turn': () => 'Forward and backward knots in turn',
    },
  },
  'edge-knot': {
    given: (values) => `${bundles(values)} Row ${figure(values['row'])} begins on the ${figure(values['start'])}.`,
    ask: ({ side }) => `Which knot holds the bundle on the ${side}?`,
    choices: {
      'forward-backward': () => 'A forward-backward knot',
      'backward-forward': () => 'A backward-forward knot',
      ordinary: ({ knot }) => `A ${knot}, like the rest of the row`,
    },
  },
  'turning-knot': {
    given: piece,
    ask: ({ row }) => `Who gets a turning knot in row ${figure(row)}?`,
    choices: {
      'both-bundles': () => 'Each of the two bundles, and nobody else',
      'starting-string': ({ start }) => `The one string at the ${start} edge, where the row begins`,
      'every-edge-string': () => 'Every string at the edges, one by one',
      none: () => 'Nobody: all knots are ordinary ones',
    },
  },
  'leading-string': {
    given: piece,
    ask: ({ row }) => `Where is the leading string when row ${figure(row)} is done?`,
    choices: {
      'left-inner': () => 'On the left, on the inner side of the edge',
      'right-inner': () => 'On the right, on the inner side of the edge',
      'left-outer': () => 'On the left, outside the edge',
      'right-outer': () => 'On the right, outside the edge',
    },
  },
  'first-move': {
    given: piece,
    ask: ({ row, start }) => `Row ${figure(row)} begins on the ${start}. What happens there before the first knot?`,
    choices: {
      'let-out': () => 'The innermost string passes behind the leading string, to the inner side',
      'take-in': () => 'The next single string passes behind the leading string, to the outer side',
      'carry-behind': () => 'The leading string is carried behind the two edge strings',
      none: () => 'Nothing: the first knot comes at once',
    },
  },
  'let-out': {
    given: ({ row, start, startBefore }) =>
      `The bundle on the ${start} holds ${count(startBefore, 'string')}. Row ${figure(row)} begins there and makes it smaller.`,
    ask: () => 'What do you let out?',
    choices: {
      innermost: () => 'The string nearest to the middle of the piece',
      outermost: () => 'The string nearest to the edge',
      two: () => 'Two strings at once, to be quicker',
    },
  },
};
