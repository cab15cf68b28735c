import type { ThreadQuestion } from '../../solver/exercises/number/problem.ts';
import type { ThreadSlip } from '../../solver/missteps/thread.ts';
import { count, figure } from '../numbers.ts';
import type { SlipText } from './slip-text.ts';

/** A question about string to cut, and the length the learner entered, in mm. */
export interface SlippedLength {
  readonly question: ThreadQuestion;
  readonly mine: number;
}

/** A figure that only one of the two questions states. */
const stated = (question: ThreadQuestion, name: 'height' | 'rowPitch' | 'tail' | 'baseStrings'): number | undefined =>
  (question as Partial<Record<typeof name, number>>)[name];

export const THREAD_WORDS: Readonly<Record<ThreadSlip, (slipped: SlippedLength) => SlipText>> = {
  'not-doubled': ({ mine }) => ({
    did: `cut the length of one end, ${figure(mine)} mm`,
    why: 'A fold hangs down as two strings, and each of them needs that length.',
    next: 'Take the length of one end twice.',
  }),
  'rows-in-centimetres': ({ question }) => ({
    did: 'took each row to be one centimetre high',
    why: `These rows are ${figure(stated(question, 'rowPitch'))} mm high, not 10 mm. The string would be cut far too long.`,
    next: `Take the ${count(stated(question, 'height'), 'row')} times the height of one row.`,
  }),
  'tail-forgotten': ({ question }) => ({
    did: 'left nothing to hold',
    why: `You can’t tie the last rows with ends that are used up. Each end needs ${figure(stated(question, 'tail'))} mm more.`,
    next: 'Add what you hold to each end.',
  }),
  'folds-and-strings-mixed': ({ question }) => ({
    did:
      question.ask === 'folds-for-class'
        ? 'cut a fold for each base string'
        : `cut a fold for each of the ${count(stated(question, 'baseStrings'), 'base string')}`,
    why: 'One fold gives two base strings, so you would have twice as many as you need.',
    next: 'Halve the base strings first. That is how many folds you cut.',
  }),
  'wrong-unit': ({ question, mine }) =>
    question.ask === 'making-minutes'
      ? {
          did: 'left the knotting in seconds and added minutes to it',
          why: 'Seconds and minutes can’t be added as they stand, since one minute has 60 seconds.',
          next: 'Divide the seconds by 60 first. Then add the rest.',
        }
      : {
          did: `wrote ${figure(mine)}, which is the length in centimetres`,
          why: 'Millimetres are asked for, and one centimetre is 10 of them.',
          next: 'Take your figure ten times.',
        },
  'float-ends-counted': () => ({
    did: 'counted the two knots that hold the float as well',
    why: 'A float begins behind the last knot of its colour and ends behind the next one. It skips only what lies between them.',
    next: 'Count the knots of the other colours, and no others.',
  }),
};
