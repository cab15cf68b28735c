import { figure, type Value } from '../numbers.ts';
import { rowEdges, type Words } from './shared.ts';

/** What is seen of each fault, and what is seen when it is mended. */
const SEEN: Readonly<Record<string, readonly [fault: string, mended: string]>> = {
  'sides-unequal': [
    'a string came out on the left and none on the right, and the right edge has stayed behind since',
    'one string comes out on each side, and both edges widen alike',
  ],
  'one-short': [
    'the last knot is missing: the bundle at the end of the row was not tied',
    'the bundle at the end of the row has its knot',
  ],
  'two-let-out': [
    'two strings came out of the left bundle at once, and the edge has a step',
    'one string comes out of each bundle, and the edges run evenly',
  ],
  'closing-skipped': [
    'nothing was taken in, so the edges run straight for a row in the middle of the closing',
    'one string is taken in on each side, and the edges narrow evenly',
  ],
  leaning: ['the ordinary knots lean the other way than their row asks for', 'the knots lean the way their row runs'],
  'edge-loose': [
    'the knot at the right edge was not drawn up, and its loops stand out beside the row',
    'the knot at the right edge is drawn up as the others are',
  ],
  'ran-out': [
    'the leading string has come to its end in the middle of the row, and the strings after that hang without a knot',
    'the leading string goes on to the end of the row',
  ],
  'colour-off': [
    'every colour begins one knot too late, and the picture has a jag',
    'every colour begins in its own column',
  ],
};
const seen = (fault: Value, mended: 0 | 1): string => SEEN[String(fault)]?.[mended] ?? '';

/** A fault in a few rows, and the mended work. */
export const faultFigureWords = {
  fault: ({ fault, row }) => `A fault in row ${figure(row)}: ${seen(fault, 0)}.`,
  'fault-mended': ({ fault, row }) => `Row ${figure(row)} as it should be: ${seen(fault, 1)}.`,
  'fault-row': rowEdges,
  'fault-nowhere': () => 'A few rows of a piece in which this fault can’t happen.',
} satisfies Words;
