import { count, figure, list } from '../numbers.ts';
import type { Words } from './shared.ts';

/** The whole piece as it hangs. */
export const pieceFigureWords = {
  piece: ({ title, width, height }) =>
    `${title || 'The piece'} as it hangs: ${count(width, 'column')} wide and ${count(height, 'row')} high.`,
  'piece-back': ({ title, width, height }) =>
    `${title || 'The piece'} from the back: ${count(width, 'column')} wide and ${count(height, 'row')} high.`,
  'piece-so-far': ({ row, rows, knot, of }) =>
    row === 0
      ? 'The strings are mounted; no row is tied yet.'
      : `It is tied to row ${figure(row)} of ${figure(rows)}${knot === of ? '' : `, with ${figure(knot)} of ${count(of, 'knot')} in that row`}.`,
  'piece-mounted': ({ folds, lone, left, right }) =>
    `On the bar: ${count(folds, 'lark’s head')}${lone === 1 ? ' and a lone string' : ''}.${
      left === 0 && right === 0
        ? ''
        : ` Through the ring: ${count(left, 'side fold')} on the left and ${figure(right)} on the right.`
    }`,
  'piece-opens': ({ knots, row, width }) =>
    `Row 1 has ${count(knots, 'knot')}${row === 0 ? '' : `; the full width of ${figure(width)} is reached in row ${figure(row)}`}.`,
  'piece-full': ({ width }) => `It has its full width of ${count(width, 'column')} from row 1.`,
  'piece-closes': ({ row, knots }) =>
    `From row ${figure(row)} on it narrows, to ${count(knots, 'knot')} in the last row.`,
  'piece-knots': ({ knots }) => `${count(knots, 'knot')} ${knots === 1 ? 'is' : 'are'} tied.`,
  'piece-colours': ({ colours }) => `Its colours: ${list(String(colours).split(', '))}.`,
  'piece-floats': ({ floats, tails }) => `At the back lie ${count(floats, 'float')} and ${count(tails, 'tail')}.`,
  'piece-finished': () => 'The strings are gathered, tied off and trimmed.',
  'piece-hangs': () => 'The strings hang below, not yet tied off.',
} satisfies Words;
