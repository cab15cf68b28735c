/**
 * Each knot's stopping points in words, as the maker sees them over their own shoulder: the ring above, the piece
 * below. Written for the right hand; the other hand hears the mirror image, made from the same sentence.
 */

import { capital } from './numbers.ts';

export type KnotStop =
  | 'at-rest'
  | 'laid-over'
  | 'passed-behind'
  | 'brought-through'
  | 'laid-over-again'
  | 'passed-behind-again'
  | 'brought-through-again'
  | 'drawn-up';

/** What a stopping point is called, in small letters. */
export const STOP_NAMES: Readonly<Record<KnotStop, string>> = {
  'at-rest': 'at rest',
  'laid-over': 'laid over',
  'passed-behind': 'passed behind',
  'brought-through': 'brought through',
  'laid-over-again': 'laid over again',
  'passed-behind-again': 'passed behind again',
  'brought-through-again': 'brought through again',
  'drawn-up': 'drawn up',
};

type Stages = Readonly<Partial<Record<KnotStop, string>>>;

interface KnotText {
  readonly title: string;
  /** What a plate looks for in it: where the strings are a bundle, what the bundle is called. */
  readonly bundle?: string;
  readonly stages: Stages;
}

// {base} is what the knot is tied round: one string, or all the strings of a bundle.
const firstHitch = {
  'at-rest': 'The leading string comes from the left and hangs beside {base}.',
  'laid-over': 'Lay the leading string over {base}, to the right.',
  'passed-behind': 'Pass its end behind {base}, back to the left, on the ring’s side of the stroke.',
  'brought-through': 'Bring it out between {base} and the stroke, and down over the stroke.',
} satisfies Stages;

const forward = {
  ...firstHitch,
  'laid-over-again': 'Lay it over {base} again, to the right, farther down.',
  'passed-behind-again': 'Pass it behind, back to the left, on the ring’s side of the new stroke.',
  'brought-through-again': 'Bring it out and down over that stroke, and then on to the right.',
  'drawn-up': 'Draw the knot tight. The leading string came from the left and is on the right now.',
} satisfies Stages;

const forwardBackward = {
  ...firstHitch,
  'laid-over-again': 'Lay it over {base} to the right, turn, and lay it back over to the left.',
  'passed-behind-again': 'Pass it behind to the right, on the ring’s side of the last stroke.',
  'brought-through-again': 'Bring it out on the right, down over that stroke, and over {base} to the left.',
  'drawn-up': 'Draw the knot tight. The leading string is back on the left, where it came from.',
} satisfies Stages;

const gathering = {
  ...forward,
  'at-rest': 'The next single string hangs to the left of {base}.',
  'laid-over': 'Lay the single string over {base}, to the right.',
  'brought-through-again': 'Bring it out and down over that stroke, and let it hang down with the bundle.',
  'drawn-up': 'Draw the knot tight. The string that tied it is part of the bundle now.',
} satisfies Stages;

const squareHalf = {
  'at-rest': 'The left string and the right string hang on the two sides of {base}.',
  'laid-over': 'Lay the left string over {base} and under the right string.',
  'passed-behind': 'Take the right string down over the left string, and then behind {base} to the left.',
  'brought-through': 'Bring the right string up through the loop on the left, over the left string.',
} satisfies Stages;

const KNOTS = {
  'larks-head': {
    title: 'lark’s head',
    stages: {
      'at-rest': 'Hold the fold above the bar, with its loop at the bottom.',
      'passed-behind': 'Let the loop down behind the bar until it hangs below. Both ends stand up above the bar.',
      'laid-over': 'Bend both ends over to the front, between the two sides of the loop, and down towards the bar.',
      'brought-through': 'Bring both ends down in front of the bar and through the loop, from the front to the back.',
      'drawn-up': 'Pull both ends evenly until the loop lies across the front, just below the bar.',
    },
  },
  'lone-string': {
    title: 'lone string',
    stages: {
      'at-rest': 'The long end hangs down below the bar. The short end lies to the right.',
      'laid-over': 'Lead the short end up over the front of the bar.',
      'passed-behind': 'Take it down behind the bar, on the left of its own stroke.',
      'brought-through': 'Bring it out to the front below the bar, and over its own stroke to the right.',
      'laid-over-again': 'Lead it up over the front of the bar again, on the right of the first turn.',
      'passed-behind-again': 'Take it down behind the bar once more, on the left of the new stroke.',
      'brought-through-again': 'Bring it out over the new stroke, and let this short tail hang at the back.',
      'drawn-up': 'Draw both turns tight. The long end hangs on the left, and the tail on the right goes to the back.',
    },
  },
  'side-fold': {
    title: 'side fold through the ring',
    stages: {
      'at-rest': 'Hold the string upright in front of the ring, with its middle at the wire.',
      'laid-over': 'Push its upper end through the ring, from the front to the back.',
      'passed-behind': 'Let that end down behind the wire, and pull until both ends hang level. There is no knot.',
    },
  },
  'forward-half-hitch': {
    title: 'forward half hitch',
    stages: { ...firstHitch, 'drawn-up': 'Draw it tight. This is half a forward knot, and it ends on the left.' },
  },
  'backward-half-hitch': { mirrorOf: 'forward-half-hitch' },
  forward: { title: 'forward knot', stages: forward },
  backward: { mirrorOf: 'forward' },
  'forward-backward': { title: 'forward-backward knot', stages: forwardBackward },
  'backward-forward': { mirrorOf: 'forward-backward' },
  'row-end-right': {
    title: 'end of a row going right',
    stages: {
      ...forwardBackward,
      'at-rest': 'The knot beside the edge is tied. The leading string hangs between it and {base}.',
      'drawn-up': 'Draw the knot tight. The leading string is back on the left, on the inner side of the edge.',
    },
  },
  'row-end-left': { mirrorOf: 'row-end-right' },
  'let-out': {
    title: 'letting a string out at the left edge',
    stages: {
      'at-rest': 'The innermost string hangs in the bundle still, and the leading string hangs on the inner side.',
      'passed-behind': 'Pass the innermost string behind the leading string to the right, its inner side. It is free.',
    },
  },
  'take-in': {
    title: 'taking a string in at the left edge',
    stages: {
      'at-rest': 'The leading string hangs between the bundle, on the left, and the next string.',
      'passed-behind':
        'Pass the next string behind the leading string to the left, its outer side. It has joined the bundle.',
    },
  },
  'carry-behind': {
    title: 'carrying the leading string behind at the left edge',
    bundle: 'edge',
    stages: {
      'at-rest': 'The leading string hangs on the left, outside both edge strings.',
      'passed-behind': 'Carry the leading string behind both edge strings to the right, their inner side.',
    },
  },
  'let-out-right': { mirrorOf: 'let-out' },
  'take-in-right': { mirrorOf: 'take-in' },
  'carry-behind-right': { mirrorOf: 'carry-behind' },
  float: {
    title: 'float',
    bundle: 'base',
    stages: {
      'at-rest': 'The resting string hangs on the left of the base strings.',
      'passed-behind': 'Lead it along the back to the right, behind the base strings, to where its colour is needed.',
    },
  },
  'caught-float': {
    title: 'float caught under a knot',
    stages: {
      ...forward,
      'at-rest':
        'The resting string runs behind {base}. The leading string comes from the left and hangs beside {base}.',
      'passed-behind': 'Pass its end behind {base} and behind the resting string, back to the left.',
      'drawn-up': 'Draw the knot tight. It holds the resting string against the back.',
    },
  },
  join: {
    title: 'joining a new leading string',
    stages: {
      ...forward,
      'at-rest': 'The tail of the old leading string and the tail of the new one lie behind {base}.',
      'laid-over': 'Lay the new leading string over {base}, to the right.',
      'passed-behind': 'Pass its end behind {base} and behind both tails, back to the left.',
      'drawn-up': 'Draw the knot tight. It is tied over both tails and holds them.',
    },
  },
  'gathering-right': { title: 'gathering with a forward knot', stages: gathering },
  'gathering-left': { mirrorOf: 'gathering-right' },
  'square-first-half': {
    title: 'square knot, first half',
    bundle: 'core',
    stages: { ...squareHalf, 'drawn-up': 'Draw both strings tight. That is one half: the left string lies in front.' },
  },
  'square-second-half': { mirrorOf: 'square-first-half', title: 'square knot, second half' },
  'square-knot': {
    title: 'square knot',
    bundle: 'core',
    stages: {
      ...squareHalf,
      'laid-over-again':
        'Now the mirror image. Lay the string on the right over {base} to the left, under the other one.',
      'passed-behind-again': 'Take the other string down over it, and then behind {base} to the right.',
      'brought-through-again': 'Bring that string up through the loop on the right.',
      'drawn-up':
        'Draw both tight. The strings in front came over from the left and then from the right: it lies flat.',
    },
  },
  'square-spiral': {
    title: 'square knot gone wrong: a spiral',
    bundle: 'core',
    stages: {
      ...squareHalf,
      'laid-over-again': 'Here is the slip. Once more the string on the left goes over {base} and under the other one.',
      'passed-behind-again': 'The other string goes down over it, and behind {base} to the left, as before.',
      'brought-through-again': 'It comes up through the loop on the left again.',
      'drawn-up': 'Drawn tight, both halves came over from the left. More of them wind round {base} like a staircase.',
    },
  },
} as const satisfies Record<string, KnotText | { readonly mirrorOf: string; readonly title?: string }>;

/** Every knot that there are words for. */
export type ToldKnot = keyof typeof KNOTS;

export interface StageWish {
  /** Strings of the base, from 1. Default 1. */
  readonly strands?: number;
  /** `left` gives the mirror image. Default `right`. */
  readonly handedness?: 'left' | 'right';
}

const OTHER: Readonly<Record<string, string>> = {
  left: 'right',
  right: 'left',
  forward: 'backward',
  backward: 'forward',
};

/** The same words as seen in a mirror: left and right, forward and backward change places, capitals stay. */
export const mirroredWords = (text: string): string =>
  text.replace(/\b(?:left|right|forward|backward)\b/gi, (word) => {
    const other = OTHER[word.toLowerCase()] ?? word;
    return word === word.toLowerCase() ? other : capital(other);
  });

const asIs = (text: string): string => text;

function textOf(knot: ToldKnot): KnotText & { readonly turned: boolean } {
  const text: KnotText | { readonly mirrorOf: string; readonly title?: string } = KNOTS[knot];
  if (!('mirrorOf' in text)) return { ...text, turned: false };
  const original: KnotText = KNOTS[text.mirrorOf as ToldKnot] as KnotText;
  return { ...original, title: text.title ?? mirroredWords(original.title), turned: true };
}

/** The knot's name, in small letters: 'forward-backward knot'. */
export const knotTitle = (knot: ToldKnot, { handedness = 'right' }: StageWish = {}): string =>
  handedness === 'left' && !knot.startsWith('square-') ? mirroredWords(textOf(knot).title) : textOf(knot).title;

/** What the strings of this knot's base are called as one: 'bundle', 'core' … */
export const bundleName = (knot: ToldKnot): string => textOf(knot).bundle ?? 'bundle';

/** What the knot is tied round: 'the base string', 'all strings of the bundle', 'the core'. */
function baseWords(knot: ToldKnot, strands: number): string {
  const bundle = bundleName(knot);
  if (bundle === 'core') return 'the core';
  return strands > 1 || knot.startsWith('gathering') ? `the ${bundle}` : 'the base string';
}

/**
 * What the maker does up to this stopping point, in one or two short sentences; empty where the knot has no such point.
 *
 * @example
 * stopSentence('backward', 'laid-over') // 'Lay the leading string over the base string, to the left.'
 */
export function stopSentence(knot: ToldKnot, stop: KnotStop, wish: StageWish = {}): string {
  const { stages, turned } = textOf(knot);
  const turn = turned === (wish.handedness === 'left') ? asIs : mirroredWords;
  return turn(stages[stop] ?? '').replaceAll('{base}', baseWords(knot, wish.strands ?? 1));
}
