import type { OrderSlip } from '../../solver/exercises/order/missteps.ts';
import { count, figure, noun, type Values } from '../numbers.ts';
import type { SlipText } from './slip-text.ts';

/** What a learner who orders the steps by this slip thought, why it does not come out, and the next step. */
export const ORDER_SLIP_WORDS: Readonly<Record<OrderSlip, (values: Values) => SlipText>> = {
  'turned-before-freeing': ({ start, startBefore, startBundle }) => ({
    did: 'tied the turning knot before you freed the string',
    why: `All ${figure(startBefore)} strings on the ${start} would be held in it. Only ${figure(startBundle)} belong there, and the row would be one knot short.`,
    next: 'Let the innermost string out first. Then tie round those that are left.',
  }),
  'freed-knot-first': ({ start, startBundle }) => ({
    did: 'tied the string that came out before the bundle',
    why: `The bundle of ${figure(startBundle)} lies nearer to the ${start} edge. If the row begins inside it, no knot ties the edge.`,
    next: 'Tie the edge first, and go on inwards from there.',
  }),
  'turned-before-taking-in': ({ start, startBefore, startBundle }) => ({
    did: 'tied the turning knot before anything had moved',
    why:
      startBefore === 1
        ? `The leading string is still outside the ${start} edge. From there it can’t turn round ${count(startBundle, 'string')}.`
        : `Only ${figure(startBefore)} strings are together on the ${start}, and the knot has to hold ${figure(startBundle)}.`,
    next: 'Bring strings and leading string to their places. Then tie.',
  }),
  'pinned-before-looping': ({ startSide, foldsEachSide }) => ({
    did: 'pinned the leading string before the bundle was there',
    why: `The ${count(foldsEachSide, 'fold')} on the ${startSide} then ${noun(foldsEachSide, 'hangs', 'hang')} beside a string that is already fixed. It is hard to get inside them, and it must lie there.`,
    next: 'Loop the bundle through. Then pin the leading string on its inner side.',
  }),
  'ring-left-loose': ({ foldsEachSide }) => ({
    did: 'looped the bundle through while the ring could still turn',
    why: `The ${count(foldsEachSide, 'fold')} of the bundle ${noun(foldsEachSide, 'is', 'are')} not knotted to the ring. When it turns, they slide out or grow uneven.`,
    next: 'Pin the ring first. Steady it with a scrap of string if it still moves.',
  }),
  'turned-before-looping': ({ startSide }) => ({
    did: 'tied the turning knot before the bundle was looped through',
    why: `There is nothing on the ${startSide} yet that it could hold.`,
    next: 'Loop the bundle through the ring, pin the leading string inside it, then tie.',
  }),
  'borrowed-before-halving': ({ eachSide, borrowed }) => ({
    did: 'borrowed before you knew what the half is',
    why: `Half of the spare strings is ${figure(eachSide)} here. ${borrowed === 0 ? 'It is even, so nothing is borrowed at all.' : 'That it is odd is the reason to borrow, and you see it only after halving.'}`,
    next: 'Halve, look whether the half is even or odd, and only then decide.',
  }),
  'folds-before-borrowing': ({ borrowed, onBar }) => ({
    did: 'counted folds before you knew how many strings there are',
    why: `${borrowed === 0 ? 'You can’t know before that nothing is borrowed.' : `The ${figure(borrowed)} strings from the bar change every count.`} In the end the bar holds ${count(onBar, 'string')}.`,
    next: 'Settle the strings of the bar and of both sides. Folds come last.',
  }),
  'trimmed-too-early': ({ singles, perSide }) => ({
    did: 'trimmed before you gathered',
    why: `${count(singles, 'single string')} ${noun(singles, 'hangs', 'hang')} between the bundles, ${Number(perSide) > 0 ? `${figure(perSide)} for each side to gather` : 'and they have to tie the last knots'}. Short ends can’t be tied, and what holds nothing comes undone.`,
    next: 'Put trimming at the very end.',
  }),
  'trimmed-before-square-knots': ({ core }) => ({
    did: 'trimmed before the square knots',
    why: `The last two strings have to go round a core of ${count(core, 'string')}, two or three times. They need their length.`,
    next: 'Tie all square knots and draw them tight. Then trim.',
  }),
  'passed-before-gathering': ({ singles, middle }) => ({
    did: 'passed two strings outside before the others were gathered',
    why: `Of ${count(singles, 'single string')} only ${figure(middle)} are meant to stay in the middle. The rest would hang loose between the bundles.`,
    next: 'Gather from both sides first. What is left over ties.',
  }),
  'mirror-half-first': ({ core }) => ({
    did: 'began with the half that belongs second',
    why: `Round this core of ${count(core, 'string')} the left string goes over first, as the question says. “On the right now” speaks of a string that has changed sides.`,
    next: 'Find the half that begins with the left string. The other one is its mirror image.',
  }),
  'joined-on-turning-knot': ({ startBundle, start }) => ({
    did: 'laid the new string in before the turning knot',
    why: `The knot round ${count(startBundle, 'string')} on the ${start} turns the string back. A loose end in it slips out.`,
    next: 'Tie the edge with the old string. Join on the next ordinary knot.',
  }),
  'old-end-cut-first': () => ({
    did: 'cut the ends before knots held them',
    why: 'Two short ends behind one base slip out at the first pull. Three knots over both make them safe.',
    next: 'Tie three knots over both ends and go on a little. Then trim what shows.',
  }),
  'cut-before-measuring': ({ width, capacity }) => ({
    did: 'cut string before anything was measured',
    why: `How many folds hang on the bar, and how long they are, comes from the ring and the cord. “About ${figure(capacity)}” for a chart of ${count(width, 'column')} is not enough to cut by.`,
    next: 'Measure, reckon and write the list. Cut by the list.',
  }),
};
