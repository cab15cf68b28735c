import { count, figure } from '../numbers.ts';
import { edges, side, type Words } from './shared.ts';

/** The chart with its outline. */
export const outlineFigureWords = {
  outline: ({ width, height }) =>
    `The outline of a piece ${count(width, 'column')} wide and ${count(height, 'row')} high.`,
  'outline-rows': ({ from, to }) =>
    from === to ? `Row ${figure(from)} is drawn.` : `Rows ${figure(from)} to ${figure(to)} are drawn.`,
  'outline-first-row': ({ knots, ...values }) => `Row 1 has ${count(knots, 'knot')}, with ${edges(values)}.`,
  'outline-full': ({ row, rows, width }) =>
    row === 1
      ? `The piece has its full width of ${count(width, 'column')} from row 1, for ${count(rows, 'row')}.`
      : `It widens until it has its full width of ${count(width, 'column')} in row ${figure(row)}, and keeps it for ${count(rows, 'row')}.`,
  'outline-never-full': ({ width }) => `No row has the full width of ${count(width, 'column')}.`,
  'outline-closing': ({ row }) => `From row ${figure(row)} on it takes strings in and narrows.`,
  'outline-last-row': ({ row, knots, ...values }) =>
    `Row ${figure(row)}, the last, has ${count(knots, 'knot')}, with ${edges(values)}.`,
  'outline-corners': ({ corners }) =>
    corners === 0
      ? 'There are no corner cells.'
      : `${count(corners, 'corner cell')} ${corners === 1 ? 'lies' : 'lie'} outside the outline: no knot is tied there.`,
  'outline-lost': ({ lost }) =>
    lost === 0
      ? 'All of the picture lies inside the outline.'
      : `${count(lost, 'cell')} of the picture ${lost === 1 ? 'lies' : 'lie'} outside the outline and would be lost.`,
  'outline-added': ({ rowsAbove, rowsBelow, columns }) =>
    `Plain ground was added: ${[
      Number(rowsAbove) > 0 && `${count(rowsAbove, 'row')} above`,
      Number(rowsBelow) > 0 && `${count(rowsBelow, 'row')} below`,
      Number(columns) > 0 && `${count(columns, 'column')} at the sides`,
    ]
      .filter((part) => part !== false)
      .join(', ')}.`,
  'outline-row': ({ row, knots, side: name, ...values }) =>
    `Row ${figure(row)} is marked: ${count(knots, 'knot')}, with ${edges(values)}. It begins on the ${side({ side: name ?? '' })}.`,
} satisfies Words;
