import { count, figure } from '../numbers.ts';
import type { Words } from './shared.ts';

/** The ends of folds on the bar. */
export const levelEndsFigureWords = {
  'level-ends': ({ folds, slipped }) =>
    slipped
      ? `${count(folds, 'fold')} on the bar, one of which has slipped through its lark’s head.`
      : `${count(folds, 'fold')} on the bar, all of which end at one height.`,
  'level-ends-slipped': ({ column, other }) =>
    `String ${figure(column)} is short, and string ${figure(other)}, the other end of the same fold, is as much too long.`,
  'label-level-ends': () => 'all ends level',
  'label-short-end': () => 'one short, one long',
} satisfies Words;
