import type { ChooseGroup } from '../../../solver/exercises/choose/groups.ts';
import { count, figure } from '../../numbers.ts';
import { SUM_CHOICES } from '../choices/sum.ts';
import { chosen } from './chosen.ts';
import type { Saying } from './saying.ts';

/** What has to be known to choose, and the choice. */
export const CHOOSE_SUM_STEPS: Readonly<Record<`why-${ChooseGroup['sum']}` | 'chosen', Saying>> = {
  'why-borrow': [
    ({ spare, eachSide, borrowed }) =>
      `${count(spare, 'string')} are spare, so each side would get ${figure(eachSide)}. ${borrowed === 0 ? 'That is even, and can be made of folds.' : 'That is odd, and a fold is two strings. Each side lacks one.'}`,
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
      `The plan for ${figure(capacity)} puts ${figure(onBarLikely)} strings on the bar. If the bar takes only ${figure(low)}, they do not lie flat. ${figure(onBarLow)} lie flat even then.`,
  ],
  chosen: chosen(SUM_CHOICES),
};
