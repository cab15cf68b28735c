import type { FinishStep, FinishStepKey } from '../solver/finish.ts';
import { count, figure, noun, numberWord, times, type Values } from './numbers.ts';

type Say = (values: Values) => string;

const held = (size: Values[string] | undefined, side: Values[string] | undefined): string =>
  size === 1 ? `the ${side} edge string` : `the ${side} bundle`;

const HALVES: Readonly<Record<string, string>> = {
  first:
    'Tie the first half of a square knot round both bundles. The left string goes over the core and under the right one. The right string goes under the core and up through the left loop.',
  second:
    'Tie the second half as the mirror image. The right string goes over the core and under the left one. The left string goes under the core and up through the right loop.',
};

const SAYS: Readonly<Record<FinishStepKey, Say>> = {
  'lay-leading-strings': ({ left, right }) =>
    left === 1 && right === 1
      ? 'Don’t trim anything yet. Lay each leading string along the edge string nearest to it.'
      : 'Don’t trim anything yet. Lay each leading string into the bundle nearest to it. The last turning knot is held by nothing else.',
  gather: ({ side, count: strings, bundle, becomes }) => {
    const knot = side === 'left' ? 'backward' : 'forward';
    const again = strings === 1 ? '' : ` Do that ${times(Number(strings))} in all.`;
    return `Begin on the ${side}. Take the next single string and tie a ${knot} knot with it round ${held(bundle, side)}, which takes the string in.${again} Then ${count(becomes, 'string')} ${noun(becomes, 'is', 'are')} together on the ${side}.`;
  },
  'lay-middle': ({ column, side }) =>
    `Three single strings are left. Lay the middle one, column ${figure(column)}, against the ${side} bundle. It gets no knot.`,
  'pass-behind': ({ side }) =>
    `Pass the ${side} one of the last two strings behind the strings on the ${side}, to their outer side.`,
  'square-knot': ({ half }) => HALVES[String(half)] ?? figure(undefined),
  'repeat-square-knot': ({ least, most }) =>
    `Tie the whole square knot ${numberWord(Number(least))} or ${times(Number(most))}. Draw each one tight.`,
  'tie-together': ({ strings }) =>
    `There are too few strings to gather. Tie the ${figure(strings)} strings together in one knot, and draw it tight.`,
  trim: () => 'Only now trim the ends.',
  patch: () => 'If you like, sew or glue a patch of fabric or felt to the back.',
};

/** One step of gathering and finishing, in short sentences. */
export const finishStepWords = ({ key, values }: FinishStep): string => SAYS[key](values);
