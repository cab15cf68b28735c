import { count, figure, noun, type Values } from '../numbers.ts';
import { side, type Words } from './shared.ts';

const turning = (knot: Values[string] | undefined): boolean => String(knot).includes('-');

/** A place of work, by the strings to its left and right. */
const between = (at: Values[string] | undefined, width: Values[string] | undefined): string =>
  at === 0
    ? 'left of all strings'
    : at === width
      ? 'right of all strings'
      : `between strings ${figure(at)} and ${figure(Number(at) + 1)}`;

const MOVES: Words = {
  'let-out': (values) =>
    `First, the innermost string of the ${side(values)} bundle passes behind the leading string to its inner side.`,
  'take-in': (values) =>
    `First, the next string passes behind the leading string to its outer side and joins the ${side(values)} bundle.`,
  'carry-behind': (values) =>
    `First, the leading string is carried behind the two edge strings on the ${side(values)}, to their inner side.`,
};

/** One row, knot by knot. */
export const rowFigureWords = {
  row: ({ row, knots, begins }) =>
    `Row ${figure(row)}: ${count(knots, 'knot')}, beginning on the ${side({ side: begins ?? '' })}.`,
  'row-above': ({ above }) =>
    above === 0
      ? 'Above it, the strings come from the bar and the ring.'
      : `Row ${figure(above)} hangs above it, so that each string can be followed.`,
  'row-so-far': ({ tied, knots }) =>
    tied === 0 ? 'No knot of it is tied yet.' : `${figure(tied)} of ${figure(knots)} knots are tied so far.`,
  'row-moves': ({ move, ...values }) => MOVES[String(move)]?.(values) ?? '',
  'row-freed': ({ column, ...values }) => `String ${figure(column)} leaves the ${side(values)} bundle.`,
  'row-taken-in': ({ bundle, ...values }) =>
    `The ${side(values)} bundle takes a string in and has ${figure(bundle)} now.`,
  'row-run': ({ knot, count: number, strands, from, to, colour }) =>
    `${from === to ? `Column ${figure(from)}` : `Columns ${figure(from)} to ${figure(to)}`}: ${count(number, `${knot} knot`)}${
      strands === 1 ? '' : ` round the bundle of ${count(strands, 'string')}`
    }${colour ? ` in ${colour}` : ''}.`,
  'row-leading': ({ start, at, width }) =>
    `The leading string starts ${between(start, width)} and is now ${between(at, width)}.`,
  'label-knots': ({ knot, count: number }) => (turning(knot) ? String(knot) : `${figure(number)} ${knot}`),
  'label-on-strings': ({ strands, count: number }) =>
    strands === 1 ? noun(number, 'knot') : `knot on ${count(strands, 'string')}`,
} satisfies Words;
