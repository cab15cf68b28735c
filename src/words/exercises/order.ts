import type { Sequence, Steps } from '../../solver/exercises/order/problem.ts';
import { count, figure, noun, type Value, type Values } from '../numbers.ts';

type Say = (values: Values) => string;

/** What is known, what is to be put in order, and each step. */
interface Ordered<S extends Sequence> {
  readonly given: Say;
  readonly ask: Say;
  readonly steps: { readonly [Id in Steps[S]]: Say };
}

const both = (left: Value, right: Value): string =>
  left === right ? `${figure(left)} on each side` : `${figure(left)} on the left and ${figure(right)} on the right`;

const across = (side: Value): string => (side === 'left' ? 'right' : 'left');

const loopFirst: Say = ({ startSide, foldsEachSide }) =>
  `Loop ${count(foldsEachSide, 'fold')} through the ring on the ${startSide}.`;
const pinLeading: Say = ({ startSide }) => `Pin the leading string on the inner side of the ${startSide} bundle.`;
const free: Say = ({ start }) =>
  `Pass the innermost string of the ${start} bundle behind the leading string, to the inner side.`;
const turn: Say = ({ startBundle, startTurn, start }) =>
  `Tie a ${startTurn} round the ${figure(startBundle)} strings on the ${start}.`;
const freedKnot: Say = ({ knot }) => `Tie a ${knot} on the string that came out.`;
const goOn: Say = ({ knot }) => `Tie ${knot}s on the single strings, one after the other.`;
const turnEnd: Say = ({ endBundle, endTurn, end }) =>
  `Tie a ${endTurn} round the ${figure(endBundle)} strings on the ${end}.`;

/** The sequences of the kind, each with its steps. */
export const ORDER_WORDS: { readonly [S in Sequence]: Ordered<S> } = {
  mounting: {
    given: ({ onBar, strands, startSide }) =>
      `${count(onBar, 'string')} hang on the bar, and each side bundle holds ${figure(strands)}. Row 1 begins on the ${startSide}.`,
    ask: () => 'Put the steps of mounting in order.',
    steps: {
      cut: ({ foldsOnBar, foldsEachSide, loneStrings }) =>
        loneStrings === 1
          ? `Cut ${count(foldsOnBar, 'fold')} for the bar, ${figure(foldsEachSide)} for each side, and the lone string.`
          : `Cut ${count(foldsOnBar, 'fold')} for the bar and ${figure(foldsEachSide)} for each side.`,
      'hang-folds': ({ foldsOnBar }) =>
        `Fix ${count(foldsOnBar, 'fold')} on the bar with ${noun(foldsOnBar, 'a lark’s head', 'lark’s heads')}.`,
      'fix-lone': () => 'Fix the lone string on the bar, beside the folds.',
      'pin-ring': () => 'Pin the ring down so that it can’t turn.',
      'loop-first': loopFirst,
      'pin-leading': pinLeading,
    },
  },
  'first-row': {
    given: ({ onBar, strands, startSide }) =>
      `${count(onBar, 'string')} hang on the bar, and the ring is pinned. Each side bundle is to hold ${figure(strands)}. Row 1 begins on the ${startSide}.`,
    ask: () => 'Put the steps of the first row in order.',
    steps: {
      'loop-first': loopFirst,
      'pin-leading': pinLeading,
      'turn-first': ({ startSide }) => `Tie a turning knot round the whole ${startSide} bundle.`,
      ordinary: ({ onBar, knot }) => `Tie ${knot}s on the ${figure(onBar)} strings of the bar.`,
      'loop-second': ({ startSide, foldsEachSide }) =>
        `Loop ${count(foldsEachSide, 'fold')} through the ring on the ${across(startSide)}.`,
      'turn-second': ({ startSide }) => `Tie a turning knot round the whole ${across(startSide)} bundle.`,
    },
  },
  'let-out': {
    given: ({ row, start, startBefore, startBundle }) =>
      `Row ${figure(row)} begins on the ${start}. The bundle there goes from ${figure(startBefore)} to ${count(startBundle, 'string')}. The leading string is on its inner side.`,
    ask: () => 'Put the beginning of this row in order.',
    steps: { free, turn, 'freed-knot': freedKnot, 'go-on': goOn },
  },
  'take-in': {
    given: ({ row, start, startBefore, startBundle }) =>
      `Row ${figure(row)} begins on the ${start}. The edge there goes from ${figure(startBefore)} to ${count(startBundle, 'string')}. The leading string is ${startBefore === 1 ? 'outside the edge' : 'on the inner side of the bundle'}.`,
    ask: () => 'Put the steps of this row in order.',
    steps: {
      carry: ({ start }) =>
        `Carry the leading string behind the two edge strings on the ${start}, to their inner side.`,
      join: ({ start }) =>
        `Pass the next string behind the leading string, to the outer side. It joins the ${start} bundle.`,
      turn,
      'go-on': goOn,
      'turn-end': turnEnd,
    },
  },
  row: {
    given: ({ row, start, end, startBefore, startBundle, endBundle }) =>
      `Row ${figure(row)} begins on the ${start}. The bundle there goes from ${figure(startBefore)} to ${count(startBundle, 'string')}. The one on the ${end} does the same, and then holds ${figure(endBundle)}.`,
    ask: () => 'Put the whole row in order.',
    steps: {
      free,
      turn,
      'freed-knot': freedKnot,
      'go-on': goOn,
      'end-freed': ({ knot, end }) => `Tie a ${knot} on the innermost string of the ${end} bundle.`,
      'turn-end': ({ endBundle, endTurn, end }) =>
        `Tie a ${endTurn} round the ${figure(endBundle)} strings left on the ${end}.`,
    },
  },
  sum: {
    given: ({ width, capacity }) =>
      `The chart is ${count(width, 'column')} wide. The bar takes ${count(capacity, 'string')}.`,
    ask: () => 'Put the steps of the fitting sum in order.',
    steps: {
      match: ({ width, capacity }) =>
        `See whether ${figure(width)} and ${figure(capacity)} are both even or both odd. If not, leave one place idle.`,
      spare: () => 'Take the places away from the width: these strings are spare.',
      halve: () => 'Halve the spare strings, for the two sides.',
      'even-or-odd': () => 'See whether the half is even or odd.',
      borrow: () => 'If it is odd, borrow two strings from the bar.',
      'on-bar': () => 'Write down how many strings the bar keeps.',
      bundle: () => 'Write down how many strings each side has now.',
      folds: () => 'Turn strings into folds: one fold for every two.',
    },
  },
  gathering: {
    given: ({ height, closingLeft, closingRight, singles }) =>
      `Row ${figure(height)}, the last, is tied. At the edges hang ${both(closingLeft, closingRight)}, with ${count(singles, 'single string')} between.`,
    ask: () => 'Put the steps of finishing in order.',
    steps: {
      'lay-leading': () => 'Lay each leading string into the bundle nearest to it.',
      'gather-left': ({ perSide }) => `Take ${count(perSide, 'string')} into the left bundle, one after the other.`,
      'gather-right': ({ perSide }) => `Take ${count(perSide, 'string')} into the right bundle, one after the other.`,
      'lay-middle': ({ startSide }) => `Lay the middle one of the last three strings against the ${startSide} bundle.`,
      'pass-left': () => 'Pass the left one of the last two strings behind the left bundle, to its outer side.',
      'pass-right': () => 'Pass the right one of the last two strings behind the right bundle, to its outer side.',
      'square-first': () => 'Tie the first half of a square knot round both bundles.',
      'square-second': () => 'Tie the second half, as the mirror image.',
      'square-again': () => 'Tie the whole square knot once or twice more, and draw each one tight.',
      trim: () => 'Trim the ends.',
    },
  },
  'square-knot': {
    given: ({ core }) =>
      `Two strings hang beside a core of ${count(core, 'string')}, one on the left and one on the right. Begin with the left one.`,
    ask: () => 'Put the steps of one square knot in order.',
    steps: {
      'first-over': () => 'Lay the left string over the core, and under the right string.',
      'first-up': () => 'Bring the right string under the core, and up through the loop on the left.',
      'draw-first': () => 'Draw the first half up.',
      'second-over': () => 'Lay the string that is on the right now over the core, and under the other one.',
      'second-up': () => 'Bring the other string under the core, and up through the loop on the right.',
      'draw-second': () => 'Draw the second half up against the first.',
    },
  },
  'new-string': {
    given: ({ row, start, startBundle }) =>
      `Row ${figure(row)} begins on the ${start}, where ${count(startBundle, 'string')} are tied as one. The leading string is nearly used up.`,
    ask: () => 'Put the joining of a new leading string in order.',
    steps: {
      turn: ({ startTurn }) => `Tie the ${startTurn} round the bundle with the old string.`,
      'lay-both': () => 'Lay the ends of the old string and the new one behind the next base string.',
      'three-knots': ({ knot }) => `Tie three ${knot}s over both ends, with the new string.`,
      'go-on': ({ knot }) => `Go on along the row with ${knot}s.`,
      'trim-tails': () => 'Trim what still shows of the two ends.',
    },
  },
  evening: {
    given: ({ width, capacity }) =>
      `Next Tuesday the whole room makes a piece ${count(width, 'column')} wide. Their rings take about ${count(capacity, 'string')}.`,
    ask: () => 'Put what you prepare in order.',
    steps: {
      measure: () => 'Measure every ring and cord, and tie a swatch.',
      'try-sums': ({ width }) => `See on which rings a chart of ${count(width, 'column')} can be made.`,
      'cut-list': () => 'Write the cut list for each person.',
      cut: () => 'Cut the string.',
      bag: () => 'Pack a bag for each person, with name and ring.',
      pins: () => 'Count the pins, and write the number down.',
    },
  },
};

/** A step in the words of its sequence. */
export function orderStepWords(of: Sequence, step: string, values: Values): string {
  const steps: Readonly<Record<string, Say>> = ORDER_WORDS[of].steps;
  return steps[step]?.(values) ?? figure(undefined);
}
