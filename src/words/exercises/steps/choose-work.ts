import type { ChooseGroup } from '../../../solver/exercises/choose/groups.ts';
import { count, figure } from '../../numbers.ts';
import { WORK_CHOICES } from '../choices/work.ts';
import { chosen } from './chosen.ts';
import type { Saying } from './saying.ts';

/** What has to be known to choose, and the choice. */
export const CHOOSE_WORK_STEPS: Readonly<Record<`why-${ChooseGroup['work']}` | 'chosen', Saying>> = {
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
  chosen: chosen(WORK_CHOICES),
};
