import type { OutlineFigures } from '../../solver/exercises/outline.ts';
import type { RowSlip } from '../../solver/missteps/rows.ts';
import { count, figure, noun } from '../numbers.ts';
import type { SlipText } from './slip-text.ts';

/** A shaped piece, the row that is asked about, and what the learner entered. */
export interface SlippedRow {
  readonly piece: OutlineFigures;
  /** null where the whole piece is meant. */
  readonly row: number | null;
  /** Strings tied as one at each edge of that row. */
  readonly left: number;
  readonly right: number;
  /** What the bundles do in that row. */
  readonly phase: 'opening' | 'closing' | 'straight';
  /** The figure entered; null where cells were marked. */
  readonly mine: number | null;
  /** Whether cells are marked, not counted. */
  readonly marks: boolean;
}

const inRow = (row: number | null): string => (row === null ? 'in a row' : `in row ${figure(row)}`);

/** 'one in every row', 'one every 3 rows'. */
const pace = (step: number): string => (step === 1 ? 'one in every row' : `one every ${figure(step)} rows`);

/** How far the bundles are in this row, counted from the end that decides it. */
function howFar({ piece, row, phase }: SlippedRow): string {
  const { height, openingStep, closingStep } = piece;
  if (row !== null && phase === 'closing') {
    const after = height - row;
    const out = Math.floor(after / closingStep);
    return `Row ${figure(height)} is the last and holds the whole closing bundles. Row ${figure(row)} comes ${count(after, 'row')} before it, so ${count(out, 'string')} on each side ${noun(out, 'is', 'are')} not in yet.`;
  }
  if (row !== null && phase === 'opening') {
    const out = Math.floor((row - 1) / openingStep);
    return `Row 1 ties the whole bundles and lets nothing out. From there to row ${figure(row)}, ${count(out, 'string')} ${noun(out, 'comes', 'come')} out on each side.`;
  }
  return `Row 1 ties the whole bundles and lets nothing out. The last row, row ${figure(height)}, ties the whole closing bundles.`;
}

const larger = ([left, right]: OutlineFigures['bundles']): number => Math.max(left, right);

const counted = ({ marks }: SlippedRow): string => (marks ? 'marked' : 'counted');

export const ROW_WORDS: Readonly<Record<RowSlip, (slipped: SlippedRow) => SlipText>> = {
  'bundle-counted-as-strings': ({ row, left, right, piece }) => ({
    did: `counted a knot for each of the ${figure(piece.width)} strings`,
    why: `The bundles ${inRow(row)} hold ${left === right ? `${figure(left)} strings each` : `${figure(left)} strings on the left and ${figure(right)} on the right`}. One knot goes round a whole bundle, and it counts as one.`,
    next: 'Count one knot for each bundle, and one for each single string between them.',
  }),
  'bundle-not-counted': ({ row }) => ({
    did: 'counted only the single strings between the bundles',
    why: `Each bundle ${inRow(row)} is tied too. One knot holds all its strings, and it stands in the bundle’s innermost column.`,
    next: 'Add one knot for each bundle.',
  }),
  'row-late': (slipped) => ({
    did: `${counted(slipped)} what belongs to the row after${slipped.row === null ? '' : `, row ${figure(slipped.row + 1)}`}`,
    why: howFar(slipped),
    next: 'Count the steps between the rows, not the rows. There is one step fewer.',
  }),
  'row-early': (slipped) => ({
    did: `${counted(slipped)} what belongs to the row before${slipped.row === null || slipped.row < 2 ? '' : `, row ${figure(slipped.row - 1)}`}`,
    why: howFar(slipped),
    next: 'Begin in row 1 and go on row by row. Say at each one what the bundles hold.',
  }),
  'one-string-a-row': ({ phase, piece: { openingStep, closingStep } }) => {
    const [moved, step] = phase === 'closing' ? ['taken in', closingStep] : ['let out', openingStep];
    return {
      did: `${phase === 'closing' ? 'took in' : 'let out'} one string at a time, on the left and on the right in turn`,
      why: `Each side has ${pace(step)} ${moved}, and both sides do it in the same rows. So two strings are ${moved} each time.`,
      next: 'Count for one side alone. The other side is like it.',
    };
  },
  'full-width-misplaced': ({ piece, mine }) => {
    const bundle = larger(piece.bundles);
    const out = bundle - 1;
    return {
      did: `put the first row of full width at row ${figure(mine)}`,
      why: `A bundle of ${figure(bundle)} lets out ${count(out, 'string')}, and then one is left at the edge. They come out after row 1, ${pace(piece.openingStep)}.`,
      next: 'Begin with row 1, which lets nothing out. Then add the rows that these strings take.',
    };
  },
  'corner-cells-s-a-side': (slipped) => ({
    did: `${counted(slipped)} as many corner cells as the bundle has strings${slipped.row === null ? '' : ` in row ${figure(slipped.row)}`}`,
    why: 'One of these columns is no corner cell. The bundle’s own knot stands there, in its innermost column.',
    next: 'Leave one out on each side.',
  }),
  'corner-cells-one-side': (slipped) => ({
    did: `${counted(slipped)} one side only`,
    why: `There is a bundle on each side ${inRow(slipped.row)}, so the piece is narrower on the left and on the right.`,
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
  'closing-counted-as-freed': ({ row, piece: { closing } }) => ({
    did: 'counted the strings that are taken in as single strings',
    why: `A string that is let out gets a knot of its own. A string that is taken in joins the bundle, and ${inRow(row)} of closing one knot holds them all.`,
    next: `Think of the closing bundles, up to ${figure(larger(closing))} strings. Each is tied as one.`,
  }),
  'bundle-knot-outermost': ({ row }) => ({
    did: 'marked the outermost columns',
    why: `The knot of a bundle stands in its innermost column ${inRow(row)}. The columns outside it are corner cells.`,
    next: 'Count in from the edge, one column for each string of the bundle. Mark the last of these.',
  }),
};
