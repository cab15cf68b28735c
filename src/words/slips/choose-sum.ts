import type { ChoiceSlip } from '../../solver/exercises/choose/missteps.ts';
import { count, figure, type Values } from '../numbers.ts';
import type { SlipText } from './slip-text.ts';
import { tellsChoices } from './tell-choices.ts';

const WORDS: { readonly [Slip in ChoiceSlip]?: (values: Values) => SlipText } = {
  'one-borrowed': ({ eachSide, borrowed }) => ({
    did: 'borrowed one string for two sides',
    why:
      borrowed === 0
        ? `Each side has ${figure(eachSide)}, which is even. One string more would make one of them odd.`
        : `Each side has ${figure(eachSide)}, which is odd. One string more helps one of them, and the other stays odd.`,
    next: borrowed === 0 ? 'Leave an even half as it is.' : 'Borrow one for each side.',
  }),
  'four-borrowed': ({ eachSide }) => ({
    did: 'borrowed two strings for each side',
    why: `${figure(eachSide)} and two more are ${figure(Number(eachSide) + 2)}. That is odd again.`,
    next: 'One more on each side makes it even.',
  }),
  'borrowed-though-even': ({ eachSide }) => ({
    did: 'borrowed from the bar although each side is even',
    why: `${figure(eachSide)} can be made of folds as it is. With one more, each side would have ${figure(Number(eachSide) + 1)}, which is odd.`,
    next: 'Look first whether the half is even or odd. Borrow only where it is odd.',
  }),
  'odd-side-left-odd': ({ eachSide }) => ({
    did: 'left both sides odd',
    why: `${count(eachSide, 'string')} can’t hang in folds. One string on each side would have no partner.`,
    next: 'Make each side even with one string more. Think where these strings come from.',
  }),
  'odd-side-rounded-down': ({ eachSide, width }) => ({
    did: 'took one string off each side, and let two of them go',
    why: `The chart has ${count(width, 'column')}, and each needs its string. With ${figure(Number(eachSide) - 1)} on each side two columns have none.`,
    next: 'Go the other way: one string more on each side, and two fewer on the bar.',
  }),
  'sides-raised-bar-kept': ({ places, strands, width }) => ({
    did: 'raised both sides and kept the bar as it was',
    why: `${figure(places)} on the bar and ${figure(strands)} on each side are two more than the ${figure(width)} that are needed.`,
    next: 'Take from the bar what the sides gain.',
  }),
  'strings-counted-as-folds': ({ strands, folds }) => ({
    did: `took a whole fold for each of the ${count(strands, 'string')}`,
    why: `Each fold hangs down as two. So many folds would give ${count(2 * Number(strands), 'string')} on one side.`,
    next: `Halve first: ${figure(strands)} strings are ${count(folds, 'fold')}.`,
  }),
  'singles-cut': ({ strands }) => ({
    did: `cut ${count(strands, 'single string')}`,
    why: 'A single string has nothing to hang by. A fold hangs by its middle, on the ring or on the bar.',
    next: 'Cut pieces of double length, half as many, and fold them.',
  }),
  'not-doubled': ({ folds }) => ({
    did: `cut the ${count(folds, 'fold')} as long as one end`,
    why: 'A fold is used from both its ends. Folded in half, this one hangs down only half as far as it should.',
    next: 'Take the length of one end twice for each fold.',
  }),
  'likely-trusted': ({ capacity, onBarLikely, low }) => ({
    did: `trusted the likely figure, ${figure(capacity)}`,
    why: `That plan puts ${count(onBarLikely, 'string')} on the bar. If the bar takes only ${figure(low)}, the knots stack up and nothing lies flat.`,
    next: 'Ask of a plan whether it can be tied even if the bar takes the least.',
  }),
  'most-on-bar': ({ high, onBarHigh, low }) => ({
    did: `took the plan with the most on the bar, ${figure(onBarHigh)}`,
    why: `It is right only if the bar takes ${figure(high)}. If it takes ${figure(low)}, the knots stack up.`,
    next: 'Begin with the least that the bar may take. The more hang on it, the surer you have to be.',
  }),
};

/** What lies behind a choice that is not right. */
export const tellSumChoice = tellsChoices(WORDS);
