import type { ChooseGroup } from '../../../solver/exercises/choose/groups.ts';
import { figure } from '../../numbers.ts';
import type { Hints } from './hint.ts';

export const CHOOSE_WORK_HINTS: Pick<Hints<'choose'>, `look-${ChooseGroup['work']}` | `do-${ChooseGroup['work']}`> = {
  'look-rows-length': () => 'Look at what a base string does on its way through a row. Does it go straight?',
  'do-rows-length': () => 'Count in rows first. Then make a length of it, and leave something for the way round.',
  'look-float': ({ span }) =>
    `Look at how long ${figure(span)} columns of loose string are. Five is as much as may hang free.`,
  'do-float': () => 'Count the columns. Up to five, the string may run free. A longer float would catch on a finger.',
  'look-colour-change': ({ start }) =>
    `Look at what holds the new string at the ${start} edge, and where the old one turns back.`,
  'do-colour-change': () => 'Leave turning knots alone. The tails of old and new lie under three ordinary knots.',
  'look-trim': () => 'Look at what holds the last turning knots and the strings you have gathered.',
  'do-trim': () => 'Trim only what no later step needs in its hand.',
  'look-spiral': () => 'Look at the two halves of a square knot. How do they differ?',
  'do-spiral': () => 'Ask of each fault what you would see: loose knots slide, uneven ends hang unlike. What winds?',
};
