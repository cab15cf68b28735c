import { count, figure, list } from '../numbers.ts';
import type { Words } from './shared.ts';

/** Moments of the work, as they stand under a picture. */
const MOMENT_NAMES: Readonly<Record<string, (row: string) => string>> = {
  mounted: () => 'Mounted',
  'first-row': () => 'After row 1',
  'full-width': (row) => `At its full width, after row ${row}`,
  'before-closing': (row) => `Before the closing, after row ${row}`,
  'last-row': (row) => `After the last row, row ${row}`,
  gathered: () => 'Gathered',
  finished: () => 'Finished',
};

/** The whole piece as it hangs. */
export const pieceFigureWords = {
  piece: ({ title, width, height }) =>
    `${title || 'The piece'} as it hangs: ${count(width, 'column')} wide and ${count(height, 'row')} high.`,
  'piece-back': ({ title, width, height }) =>
    `${title || 'The piece'} from the back: ${count(width, 'column')} wide and ${count(height, 'row')} high.`,
  'piece-so-far': ({ row, rows, knot, of }) =>
    row === 0
      ? 'The strings are mounted.'
      : `It is tied to row ${figure(row)} of ${figure(rows)}${knot === of ? '' : `, with ${figure(knot)} of ${count(of, 'knot')} in that row`}.`,
  'piece-moment': ({ moment, row }) => MOMENT_NAMES[String(moment)]?.(figure(row)) ?? '',
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
  'piece-knots': ({ knots }) =>
    knots === 0 ? 'No knot is tied yet.' : `${count(knots, 'knot')} ${knots === 1 ? 'is' : 'are'} tied.`,
  'piece-colours': ({ colours }) => `Its colours: ${list(String(colours).split(', '))}.`,
  'piece-floats': ({ floats, tails }) => `At the back lie ${count(floats, 'float')} and ${count(tails, 'tail')}.`,
  'piece-finished': () => 'The strings are gathered, tied off and trimmed.',
  'piece-gathered': () => 'The single strings are gathered into two bundles, and two strings are left to tie with.',
  'piece-hanging': () => 'The strings hang below, not yet tied off.',
} satisfies Words;

/** How far a piece is worked, in a few words: `Mounted`, `Row 5`, `Row 5, knot 3 of 18`, `Gathered`, `Finished`. */
export function standingName({
  row,
  knot,
  of,
  ending,
}: {
  readonly row: number;
  readonly knot: number;
  readonly of: number;
  readonly ending: 'hanging' | 'gathered' | 'finished';
}): string {
  const moment = ending === 'hanging' ? row === 0 && 'mounted' : ending;
  if (moment) return MOMENT_NAMES[moment]?.('') ?? '';
  return `Row ${figure(row)}${knot === of ? '' : `, knot ${figure(knot)} of ${figure(of)}`}`;
}
