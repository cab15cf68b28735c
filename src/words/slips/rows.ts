import type { OutlineFigures } from '../../solver/exercises/outline.ts';
import type { RowSlip } from '../../solver/missteps/rows.ts';
import type { SideName } from '../../solver/piece.ts';
import { count, figure, noun } from '../numbers.ts';
import type { ReadingSlip } from './reading.ts';
import type { SlipText } from './slip-text.ts';

/** A shaped piece, what is asked of it, and what the learner entered. */
export interface SlippedRow {
  readonly piece: OutlineFigures;
  /** null where more than one row is meant. */
  readonly row: number | null;
  /** Strings tied as one at each edge of that row, or of row 1. */
  readonly left: number;
  readonly right: number;
  /** Which end of the piece is asked about. */
  readonly phase: 'opening' | 'closing';
  /** The figure entered, or the row marked; null where cells of several rows were marked. */
  readonly mine: number | null;
  /** What is counted or marked. */
  readonly wanted: 'figure' | 'cells' | 'bundle-knots';
  /** Where row 1 begins, where the question says so. */
  readonly startSide?: SideName | undefined;
  /** The name of the colour asked for. */
  readonly colour: string | null;
}

const inRow = (row: number | null): string => (row === null ? '' : ` in row ${figure(row)}`);

/** 'one in every row', 'one every 3 rows'. */
const pace = (step: number): string => (step === 1 ? 'one in every row' : `one every ${figure(step)} rows`);

const larger = ([left, right]: OutlineFigures['bundles']): number => Math.max(left, right);

const did = ({ wanted }: SlippedRow): string => (wanted === 'figure' ? 'counted' : 'marked');

/** How far the bundles are in this row, counted from the end that decides it. */
function howFar({ piece, row, phase }: SlippedRow): string {
  const { height, openingStep, closingStep } = piece;
  if (phase === 'closing') {
    const last = `Row ${figure(height)} is the last and ties the whole closing bundles.`;
    if (row === null) return `${last} The bundles before it have taken in fewer.`;
    const after = height - row;
    if (after === 0) return last;
    const out = Math.floor(after / closingStep);
    return `${last} Row ${figure(row)} comes ${count(after, 'row')} before it, so ${out === 0 ? 'all strings are in' : `${count(out, 'string')} on each side ${noun(out, 'is', 'are')} not in yet`}.`;
  }
  const first = 'Row 1 ties the whole bundles and lets nothing out.';
  if (row === null) return `${first} The first strings come out in row ${figure(1 + openingStep)}.`;
  if (row === 1) return first;
  const out = Math.floor((row - 1) / openingStep);
  return `${first} From there to row ${figure(row)}, ${out === 0 ? 'none comes' : `${count(out, 'string')} ${noun(out, 'comes', 'come')}`} out on each side.`;
}

const rowByRow = ({ phase, piece }: SlippedRow): string =>
  phase === 'closing'
    ? `Begin in row ${figure(piece.height)} and go back row by row. Say at each one what the bundles hold.`
    : 'Begin in row 1 and go on row by row. Say at each one what the bundles hold.';

export const ROW_WORDS: Readonly<Record<Exclude<RowSlip, ReadingSlip>, (slipped: SlippedRow) => SlipText>> = {
  'bundle-counted-as-strings': ({ row, left, right, piece }) => ({
    did: `counted a knot for each of the ${count(piece.width, 'string')}`,
    why: `The bundles${inRow(row)} hold ${left === right ? `${count(left, 'string')} each` : `${count(left, 'string')} on the left and ${figure(right)} on the right`}. One knot goes round a whole bundle, and it counts as one.`,
    next: 'Count one knot for each bundle, and one for each single string between them.',
  }),
  'bundle-not-counted': ({ row }) => ({
    did: 'counted only the single strings between the bundles',
    why: `The bundles${inRow(row)} are tied too. One knot holds all strings of a bundle, and it stands in the innermost column.`,
    next: 'Add one knot for each bundle.',
  }),
  'row-late': (slipped) => ({
    did: `${did(slipped)} what belongs to the row after${slipped.row === null ? '' : `, row ${figure(slipped.row + 1)}`}`,
    why: howFar(slipped),
    next:
      slipped.phase === 'closing'
        ? rowByRow(slipped)
        : 'Count the steps from row to row, not the rows. There is one step fewer.',
  }),
  'row-early': (slipped) => ({
    did: `${did(slipped)} what belongs to the row before${slipped.row === null || slipped.row < 2 ? '' : `, row ${figure(slipped.row - 1)}`}`,
    why: howFar(slipped),
    next: rowByRow(slipped),
  }),
  'one-string-a-row': ({ phase, piece: { openingStep, closingStep } }) => {
    const closes = phase === 'closing';
    return {
      did: `${closes ? 'took in' : 'let out'} one string at a time, on the left and on the right in turn`,
      why: `Each side ${closes ? 'takes in' : 'lets out'} ${pace(closes ? closingStep : openingStep)}, and both sides do it in the same rows. So two strings ${closes ? 'go in' : 'come out'} each time.`,
      next: 'Count for one side alone. The other side is like it.',
    };
  },
  'full-width-misplaced': ({ piece, mine }) => {
    const bundle = larger(piece.bundles);
    const out = bundle - 1;
    return {
      did: `put the first row of full width at row ${figure(mine)}`,
      why: `A bundle of ${figure(bundle)} lets out ${count(out, 'string')}, and then one is left at the edge. ${noun(out, 'It comes', 'They come')} out after row 1, ${pace(piece.openingStep)}.`,
      next: 'Begin with row 1, which lets nothing out. Then add the rows that these strings take.',
    };
  },
  'corner-cells-s-a-side': (slipped) =>
    slipped.wanted === 'bundle-knots'
      ? {
          did: 'marked the column beside the bundle',
          why: 'The knot of a bundle stands in the bundle’s own innermost column, not next to it.',
          next: 'Mark one column nearer to the edge, on each side.',
        }
      : {
          did: `${did(slipped)} as many corner cells as the bundle has strings${inRow(slipped.row)}`,
          why: 'One of these columns is no corner cell. The bundle’s own knot stands there, in its innermost column.',
          next: 'Leave one out on each side.',
        },
  'corner-cells-one-side': (slipped) => ({
    did: `${did(slipped)} one side only`,
    why: `There is a bundle on each side${inRow(slipped.row)}, so the piece is narrower on the left and on the right.`,
    next: 'Do the same for the other side.',
  }),
  'closing-from-wrong-end': ({ piece }) => ({
    did: 'counted the rows of closing from the end near the ring',
    why: `The largest bundles, ${figure(larger(piece.closing))}, come last: in row ${figure(piece.height)}. Going up from there, they get smaller.`,
    next: `Begin in row ${figure(piece.height)} and count back towards the ring.`,
  }),
  'closing-misplaced': ({ piece: { height, closing, closingStep }, mine, row }) => {
    const taken = larger(closing) - 1;
    return {
      did: `began closing ${mine === null || row !== null ? 'one row off' : `in row ${figure(mine)}`}`,
      why: `To end with ${figure(larger(closing))}, ${count(taken, 'string')} ${noun(taken, 'is', 'are')} taken in on each side, ${pace(closingStep)}. Row ${figure(height)} is the last of these rows, and belongs to them.`,
      next: `Count these rows back from row ${figure(height)}, with that row as the first.`,
    };
  },
  'closing-counted-as-freed': ({ piece: { closing } }) => ({
    did: 'counted the strings that are taken in as single strings',
    why: 'A string that is let out gets a knot of its own. A string that is taken in joins the bundle, and one knot holds them all.',
    next: `Think of the closing bundles, up to ${count(larger(closing), 'string')}. Each is tied as one.`,
  }),
  'bundle-knot-outermost': ({ row, wanted }) => ({
    did: wanted === 'figure' ? 'began to count at the edge of the chart' : 'marked the outermost column',
    why: `The knot of a bundle stands in its innermost column${inRow(row)}. The columns outside it are corner cells.`,
    next: 'Count in from the edge, one column for each string of the bundle. The knot stands in the last of these.',
  }),
};
