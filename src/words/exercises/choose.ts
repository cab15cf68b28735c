import type { Choices, ChooseAsk } from '../../solver/exercises/choose/problem.ts';
import { count, figure, type Value, type Values } from '../numbers.ts';

type Say = (values: Values) => string;

/** What is known, what is asked, and what can be chosen. */
interface Asked<A extends ChooseAsk> {
  readonly given: Say;
  readonly ask: Say;
  readonly choices: { readonly [C in Choices[A]]: Say };
}

const pace = (step: Value): string => (step === 1 ? 'a row' : `every ${figure(step)} rows`);

const piece: Say = (values) => {
  const { width, height, mountedLeft, mountedRight, closingLeft, closingRight, startSide } = values;
  const closes =
    closingLeft === 1 && closingRight === 1
      ? 'It keeps its full width to the end.'
      : `It closes in the same way, one string ${pace(values['closingStep'])}, to bundles of ${both(closingLeft, closingRight)} in the last row.`;
  return `The chart is ${count(width, 'column')} wide and ${count(height, 'row')} high. Row 1 begins on the ${startSide}. Its bundles hold ${both(mountedLeft, mountedRight)}, and then each side lets out one string ${pace(values['openingStep'])}. ${closes}`;
};

const both = (left: Value, right: Value): string =>
  left === right ? `${figure(left)} on each side` : `${figure(left)} on the left and ${figure(right)} on the right`;

const bundles: Say = ({ row, left, right }) => `In row ${figure(row)} the bundles hold ${both(left, right)}.`;

const onBar: Say = ({ width, capacity }) =>
  `The chart is ${count(width, 'column')} wide. The bar takes ${count(capacity, 'string')}.`;

const ends: Say = ({ height, closingLeft, closingRight, single }) =>
  `Row ${figure(height)} is the last row, and it is tied. At the edges hang ${both(closingLeft, closingRight)}, with ${count(single, 'single string')} between.`;

/** 'column 1', 'columns 1 to 5', counted from the edge. */
const columns = (from: number, to: Value): string =>
  from === to ? `column ${figure(from)}` : `columns ${figure(from)} to ${figure(to)}`;

/** The questions of the kind, each with its choices. */
export const CHOOSE_WORDS: { readonly [A in ChooseAsk]: Asked<A> } = {
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
  'corner-cells': {
    given: (values) => `${bundles(values)} Count the columns of a bundle from the edge.`,
    ask: ({ side }) => `Which cells are corner cells on the ${side}?`,
    choices: {
      'outside-the-knot': ({ outside }) => `Those in ${columns(1, outside)}`,
      'all-of-the-bundle': ({ bundle }) => `Those in ${columns(1, bundle)}`,
      'inside-the-edge': ({ bundle }) => `Those in ${columns(2, bundle)}`,
    },
  },
  'closing-end': {
    given: ({ height, closingLeft, closingRight, fullWidthRow }) =>
      `The piece has ${count(height, 'row')}. It has its full width from row ${figure(fullWidthRow)} on, and ends with bundles of ${both(closingLeft, closingRight)}.`,
    ask: () => 'From where do you count to find the row in which closing begins?',
    choices: {
      'last-row': ({ height }) => `From row ${figure(height)}, the last, back towards the ring`,
      ring: () => 'From row 1, the row at the ring',
      'full-width': ({ fullWidthRow }) => `From row ${figure(fullWidthRow)}: as soon as the width is full`,
    },
  },
  'bundle-knot': {
    given: (values) => `${bundles(values)} Between them hang ${count(values['single'], 'single string')}.`,
    ask: () => 'What do you count for one bundle when you count the knots of this row?',
    choices: {
      one: () => 'One knot',
      strings: ({ left }) => `As many knots as it has strings, ${figure(left)} on the left`,
      nothing: () => 'No knot: only single strings count',
    },
  },
  borrow: {
    given: onBar,
    ask: () => 'How many strings do you borrow from the bar, and why?',
    choices: {
      none: () => 'None, since each side gets half of the spare strings as it is',
      one: () => 'One, since one string makes an odd number even',
      two: () => 'Two, one for each side',
      four: () => 'Four, two for each side',
    },
  },
  'odd-half': {
    given: (values) =>
      `${onBar(values)}${values['places'] === values['capacity'] ? '' : ' One place stays idle.'} ${count(values['spare'], 'string')} are spare, so each side gets ${figure(values['eachSide'])}. That is odd.`,
    ask: () => 'What do you do about it?',
    choices: {
      'one-from-the-bar': ({ onBar: left }) =>
        `Give each side one string more, from the bar. The bar keeps ${figure(left)}.`,
      'left-odd': ({ eachSide }) => `Leave each side at ${figure(eachSide)}.`,
      'one-less': () => 'Give each side one string less, and forget about those two.',
      'bar-kept': ({ places }) => `Give each side one string more. The bar keeps its ${figure(places)}.`,
    },
  },
  'fold-or-string': {
    given: ({ strands }) => `Each side bundle holds ${count(strands, 'string')}. They hang in folds through the ring.`,
    ask: () => 'What do you cut for one side?',
    choices: {
      'half-as-many-folds': ({ folds }) => `${count(folds, 'piece')}, each as long as two ends`,
      'as-many-folds': ({ strands }) => `${count(strands, 'piece')}, each as long as two ends`,
      'single-strings': ({ strands }) => `${count(strands, 'piece')}, each as long as one end`,
      'short-folds': ({ folds }) => `${count(folds, 'piece')}, each as long as one end`,
    },
  },
  'safe-sheet': {
    given: ({ width, capacity, low, high }) =>
      `The chart is ${count(width, 'column')} wide. The bar most likely takes ${count(capacity, 'string')}. Until a row is tried it may be ${figure(low)}, and it may be ${figure(high)}.`,
    ask: () => 'Which sheet of numbers can be tied on every ring of this range?',
    choices: {
      low: ({ low, onBarLow }) => `The one for ${figure(low)}, with ${figure(onBarLow)} on the bar`,
      likely: ({ capacity, onBarLikely }) => `The one for ${figure(capacity)}, with ${figure(onBarLikely)} on the bar`,
      high: ({ high, onBarHigh }) => `The one for ${figure(high)}, with ${figure(onBarHigh)} on the bar`,
    },
  },
  'rows-length': {
    given: ({ height }) => `A piece has ${count(height, 'row')}. You have measured in your swatch how high one row is.`,
    ask: () => 'How much of a base string do the rows take?',
    choices: {
      'pitch-and-more': ({ height }) => `${figure(height)} times the height of a row, and a little more`,
      centimetres: ({ height }) => `${figure(height)} centimetres`,
      'pitch-alone': ({ height }) => `${figure(height)} times the height of a row, exactly`,
    },
  },
  float: {
    given: ({ span }) => `A colour is not needed for ${count(span, 'column')}. Then the same row needs it again.`,
    ask: () => 'What do you do with its string?',
    choices: {
      leave: () => 'Let it run along the back, lying flat',
      catch: () => 'Let it run along the back, and catch it under a knot on the way',
      'pull-tight': () => 'Pull it tight along the back, so that nothing hangs out',
      end: () => 'End it, and join a new one when it is needed',
    },
  },
  'colour-change': {
    given: (values) =>
      `${bundles(values)} Row ${figure(values['row'])} begins on the ${figure(values['start'])}, and a new colour is to begin at that edge.`,
    ask: () => 'Where does the new colour join?',
    choices: {
      'next-ordinary': () => 'On the first ordinary knot after the turning knot',
      'turning-knot': () => 'On the turning knot, since a thick bundle holds it best',
      'next-row': () => 'In the row after this one, without a change here',
    },
  },
  trim: {
    given: ends,
    ask: () => 'When do you trim the ends?',
    choices: {
      'after-square-knots': () => 'When the square knots round both bundles are drawn tight',
      'after-last-row': () => 'Now, so that nothing is in the way',
      'after-gathering': () => 'When the single strings are gathered into the bundles',
    },
  },
  spiral: {
    given: ({ core }) =>
      `Two square knots hold a core of ${count(core, 'string')}. They do not lie flat: they wind round it like a stair.`,
    ask: () => 'What made them wind?',
    choices: {
      'same-half': () => 'The same half was tied each time, and not its mirror image',
      loose: () => 'They were not drawn tight enough',
      uneven: ({ core }) => `The ${count(core, 'string')} of the core were not equally long`,
    },
  },
};

/** A choice in the words of its question. */
export function choiceWords(ask: ChooseAsk, choice: string, values: Values): string {
  const choices: Readonly<Record<string, Say>> = CHOOSE_WORDS[ask].choices;
  return choices[choice]?.(values) ?? figure(undefined);
}
