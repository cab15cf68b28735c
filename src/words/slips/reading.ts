import type { RowSlip } from '../../solver/missteps/rows.ts';
import { figure } from '../numbers.ts';
import type { SlippedRow } from './rows.ts';
import type { SlipText } from './slip-text.ts';

/** Slips that are only made in reading a chart. */
export type ReadingSlip = Extract<
  RowSlip,
  'begun-at-wrong-side' | 'knot-one-off' | 'stretches-counted' | 'first-stretch-only' | 'plain-corners-marked'
>;

export const READING_WORDS: Readonly<Record<ReadingSlip, (slipped: SlippedRow) => SlipText>> = {
  'begun-at-wrong-side': ({ row, startSide = 'left' }) => ({
    did: `began row ${figure(row)} at the other edge`,
    why: `Row 1 begins on the ${startSide}. Every row begins where the one before it ended, so the sides change from row to row.`,
    next: `All odd rows begin on the ${startSide}, like row 1. All even rows begin on the other side.`,
  }),
  'knot-one-off': ({ row }) => ({
    did: 'went one column too far, or stopped one too soon',
    why: `The first knot of row ${figure(row)} is knot 1 already. From there it is one step fewer than you count knots.`,
    next: 'Put a finger on the first knot and say “one”. Then count on aloud.',
  }),
  'stretches-counted': ({ colour, wanted }) => ({
    did: `${wanted === 'figure' ? 'counted' : 'marked'} one for each stretch of ${colour}`,
    why: 'A stretch is as many knots as it has cells. One cell is one knot.',
    next: `${wanted === 'figure' ? 'Count' : 'Mark'} all cells of each stretch.`,
  }),
  'first-stretch-only': ({ colour, wanted }) => ({
    did: `stopped after the first stretch of ${colour}`,
    why: `The row has ${colour} again farther on. The string floats along the back and ties there too.`,
    next: `Read on to the end of the row, and ${wanted === 'figure' ? 'count' : 'mark'} every cell of this colour.`,
  }),
  'plain-corners-marked': () => ({
    did: 'marked every corner cell, plain ones too',
    why: 'A corner cell of plain ground loses nothing, for no part of the picture stands there.',
    next: 'Of the corner cells mark only those that have a colour of the picture.',
  }),
};
