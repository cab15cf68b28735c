import type { SumFigures } from '../../solver/exercises/sum/problem.ts';
import type { FittingSlip } from '../../solver/missteps/fitting.ts';
import { count, figure, noun } from '../numbers.ts';
import type { SlipText } from './slip-text.ts';

/** A fitting sum as it is, and as this learner worked it. */
export interface SlippedSum {
  readonly width: number;
  readonly capacity: number;
  /** Strings to share out: the width, and one more with a carried end. */
  readonly strands: number;
  readonly due: Readonly<SumFigures>;
  readonly mine: Readonly<SumFigures>;
}

/** All strings as the learner shared them out. */
const inAll = ({ onBar, bundle }: Readonly<SumFigures>): number => onBar + 2 * bundle;

const ALL_STRINGS = 'The strings on the bar and on both sides have to be as many as the piece needs.';

/** The learner's own total, where it shows that something is left over or missing. */
function total({ strands, mine }: SlippedSum): string {
  const all = inAll(mine);
  if (all === strands || Math.min(mine.onBar, mine.bundle) < 0) return ALL_STRINGS;
  const off = Math.abs(all - strands);
  return `${figure(mine.onBar)} on the bar and ${figure(mine.bundle)} on each side are ${count(all, 'string')}. The piece needs ${figure(strands)}, so ${figure(off)} ${noun(off, 'is', 'are')} ${all > strands ? 'too many' : 'missing'}.`;
}

/** Odd, and a number of strings there can be: a slip before this one may have led below zero. */
const isOdd = (value: number): boolean => value > 0 && value % 2 === 1;

/** Below zero where the subtraction went the other way round. */
const allSpare = (spare: number): string =>
  Math.abs(spare) === 2 ? 'both spare strings' : `all ${count(Math.abs(spare), 'spare string')}`;

/** An odd side has no folds to be made of. */
const oddSide = (strings: number): string =>
  isOdd(strings)
    ? `${figure(strings)} is odd. A side bundle is made of folds, and a fold is always two strings.`
    : 'A side bundle is made of folds, and a fold is always two strings, so it has to be even.';

export const FITTING_WORDS: Readonly<Record<FittingSlip, (sum: SlippedSum) => SlipText>> = {
  'spare-not-halved': ({ mine: { spare } }) => ({
    did: `gave each side ${allSpare(spare)}`,
    why: `Two sides with ${figure(Math.abs(spare))} each would need ${count(2 * Math.abs(spare), 'string')}, which is twice what is spare.`,
    next: 'Both sides share the spare strings, so halve them first.',
  }),
  'odd-side-left-odd': ({ mine }) => ({
    did: `left each side at ${count(mine.bundle, 'string')}`,
    why: `${oddSide(mine.bundle)} One string would have no partner.`,
    next: 'Make each side even: it needs one string more. Think where these two strings can come from.',
  }),
  'odd-side-rounded-down': (sum) => ({
    did: `made each side one string smaller, ${figure(sum.mine.bundle)} instead of ${figure(sum.mine.eachSide)}, so that it is even`,
    why: total(sum),
    next: 'No string may be lost. Make each side one larger instead, and take those two strings from the bar.',
  }),
  'sides-raised-bar-kept': (sum) => ({
    did: `gave each side one string more, and kept ${figure(sum.mine.onBar)} on the bar`,
    why: total(sum),
    next: 'The string that each side gains has to come from somewhere. Take it off the bar.',
  }),
  'borrowed-not-given': (sum) => ({
    did: `took ${count(sum.mine.borrowed, 'string')} off the bar, and left each side at ${figure(sum.mine.bundle)}`,
    why: total(sum),
    next: 'What the bar gives up has to hang somewhere. Each side gets one of the two strings.',
  }),
  'one-borrowed': ({ strands, mine: { onBar } }) => ({
    did: 'borrowed one string from the bar',
    why: isOdd(strands - onBar)
      ? `With ${figure(onBar)} on the bar, ${count(strands - onBar, 'string')} are left for the sides. That is odd, so the two sides can’t be alike.`
      : 'One string can only help one side, and then the two sides are not alike.',
    next: 'Both sides are one string short. Borrow one for each of them.',
  }),
  'borrowed-from-one-side': ({ mine: { eachSide, bundle } }) => ({
    did: 'put both borrowed strings on one side',
    why:
      bundle === eachSide
        ? 'The two sides would not be alike.'
        : `One side would have ${figure(bundle)} and the other ${figure(eachSide)}. They would not be alike${isOdd(bundle) && isOdd(eachSide) ? ', and both would be odd' : ''}.`,
    next: 'Give each side one of the two.',
  }),
  'four-borrowed': ({ mine: { eachSide, bundle } }) => ({
    did: 'borrowed four strings, two for each side',
    why:
      isOdd(eachSide) && isOdd(bundle)
        ? `${figure(eachSide)} and two more are ${figure(bundle)}. That is odd again, so it still can’t be made of folds.`
        : 'Two more on an odd side leave it odd, so it still can’t be made of folds.',
    next: 'To make an odd number even, one more is enough. Borrow one for each side.',
  }),
  'borrowed-though-even': ({ mine: { eachSide, bundle } }) => ({
    did: `borrowed from the bar although ${figure(eachSide)} on each side ${isOdd(eachSide) ? 'needed nothing' : 'was even'}`,
    why: isOdd(bundle)
      ? `With one more, each side has ${figure(bundle)}. That is odd, so it can’t be made of folds.`
      : 'A half that is even can be made of folds as it is.',
    next: 'Leave an even half alone. The bar keeps all its places then.',
  }),
  'folds-counted-as-strings': ({ mine: { onBar, bundle } }) => ({
    did: `counted folds where strings are asked for: ${figure(onBar)} on the bar, ${figure(bundle)} on each side`,
    why: 'A fold is one cut string, but it hangs down as two. So there are twice as many strings as folds.',
    next: 'Count the strings that hang down, not the loops over the bar.',
  }),
  'strings-counted-as-folds': ({ mine: { foldsOnBar, foldsEachSide } }) => ({
    did: `took a whole fold for every string: ${count(foldsOnBar, 'fold')} on the bar, ${figure(foldsEachSide)} on each side`,
    why: `One fold hangs down as two strings. So many folds would give ${count(2 * (foldsOnBar + 2 * foldsEachSide), 'string')} in all.`,
    next: 'Put the strings in twos: each two are one fold.',
  }),
  'capacity-not-matched': ({ capacity, strands, mine: { spare } }) => ({
    did: `used all ${count(capacity, 'place')} of the bar`,
    why: isOdd(spare)
      ? `Of ${count(strands, 'string')} that leaves ${figure(spare)} spare. That is odd, so two sides can’t share it.`
      : 'Then an odd number of strings is spare, and two sides can’t share it.',
    next: 'Leave one place of the bar idle. Then an even number is spare.',
  }),
  added: ({ strands, mine: { places, spare } }) => ({
    did: `added the places to the strings: ${figure(strands)} + ${figure(places)} = ${figure(strands + places)}`,
    why: `There are only ${count(strands, 'string')} in all, so ${figure(spare)} of them can’t be spare.`,
    next: 'Spare strings are those that find no place. Take the places away from the strings.',
  }),
  'subtracted-wrong-way': ({ strands, mine: { places } }) => ({
    did: `took the strings away from the places: ${figure(places)} − ${figure(strands)} = ${figure(places - strands)}`,
    why: 'There are more strings than places, so this goes below zero. There can’t be fewer than no strings.',
    next: `Begin with the ${count(strands, 'string')}, and take the places away from them.`,
  }),
  'all-spare-on-one-side': ({ mine: { spare } }) => ({
    did: `hung ${allSpare(spare)} on one side`,
    why: 'The piece would grow wider on one side only, and hang crooked.',
    next: 'Share the spare strings between both ends of the bar: halve them.',
  }),
  'capacity-halved-too': (sum) => ({
    did: `halved the places of the bar as well, and kept ${figure(sum.mine.onBar)} on it`,
    why: total(sum),
    next: 'Only the spare strings are halved, for the two sides. The bar keeps its places, but for those it lends.',
  }),
  'lone-string-forgotten': ({ width, mine: { foldsOnBar } }) => ({
    did: 'left out the lone string',
    why: `${count(foldsOnBar, 'fold')} on the bar and the folds on both sides give an even number of strings. The chart is ${figure(width)} wide, which is odd.`,
    next: 'One single string hangs on the bar beside the folds. It gets a knot of its own, so count it too.',
  }),
};
