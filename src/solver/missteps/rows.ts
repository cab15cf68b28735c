import { OUTLINE_RULES, type OutlineRules } from '../exercises/outline.ts';

export const ROW_SLIPS = [
  'bundle-counted-as-strings',
  'bundle-not-counted',
  'row-late',
  'row-early',
  'one-string-a-row',
  'full-width-misplaced',
  'corner-cells-s-a-side',
  'corner-cells-one-side',
  'closing-from-wrong-end',
  'closing-misplaced',
  'closing-counted-as-freed',
  'bundle-knot-outermost',
  'begun-at-wrong-side',
  'knot-one-off',
  'stretches-counted',
  'first-stretch-only',
  'plain-corners-marked',
] as const;
export type RowSlip = (typeof ROW_SLIPS)[number];

type Slip = readonly [Partial<OutlineRules>, ...Partial<OutlineRules>[]];
const usual = OUTLINE_RULES;

/** Strings let out on a side after this many in all, when each row lets out one, left and right in turn. */
const shareOf = (inAll: number, side: 0 | 1): number => (side === 0 ? Math.ceil(inAll / 2) : Math.floor(inAll / 2));

/**
 * Each slip as the rules a learner goes by who makes it (all else as a maker does). Where it can go two ways
 * (a row late or early, the left side or the right), both stand here, the likelier first.
 */
const ROWS: { readonly [Id in RowSlip]: Slip } = {
  // Every string of a bundle is given a knot of its own.
  'bundle-counted-as-strings': [{ knots: ({ width }) => width }],
  // Only the strings beside the bundles are counted.
  'bundle-not-counted': [
    { knots: ({ width }, bundles) => bundles.reduce((left, bundle) => left - (bundle > 1 ? bundle : 0), width) },
  ],
  // r for r − 1: what belongs to the next row.
  'row-late': [
    {
      opening: (piece, row, side) => usual.opening(piece, row + 1, side),
      closing: (piece, row, side) => usual.closing(piece, Math.min(piece.height, row + 1), side),
    },
  ],
  // r − 2 for r − 1: what belonged to the row before.
  'row-early': [
    {
      opening: (piece, row, side) => usual.opening(piece, Math.max(1, row - 1), side),
      closing: (piece, row, side) => usual.closing(piece, row - 1, side),
    },
  ],
  // One string a row in all instead of one on each side.
  'one-string-a-row': [
    {
      opening: ({ bundles, openingStep }, row, side) =>
        Math.max(1, bundles[side] - shareOf(Math.floor((row - 1) / openingStep), side)),
      closing: ({ closing, height, closingStep }, row, side) =>
        Math.max(1, closing[side] - shareOf(Math.floor((height - row) / closingStep), side)),
      fullWidthRow: ({ bundles, openingStep }) => 1 + openingStep * (bundles[0] + bundles[1] - 2),
      firstClosingRow: ({ closing, height, closingStep }) =>
        Math.max(1, height - closingStep * (closing[0] + closing[1] - 2) + 1),
    },
  ],
  'full-width-misplaced': [
    { fullWidthRow: (piece) => usual.fullWidthRow(piece) + 1 },
    { fullWidthRow: (piece) => Math.max(1, usual.fullWidthRow(piece) - 1) },
  ],
  // As many corner cells as the bundle has strings; its own knot is forgotten.
  'corner-cells-s-a-side': [
    { corners: (bundle) => (bundle > 1 ? bundle : 0), knotColumn: (bundle) => (bundle > 1 ? bundle + 1 : 1) },
  ],
  'corner-cells-one-side': [{ sides: [0] }, { sides: [1] }],
  // The rows of closing are told from the other end.
  'closing-from-wrong-end': [
    {
      closing: (piece, row, side) => {
        const mirrored = usual.firstClosingRow(piece) + piece.height - row;
        return row < usual.firstClosingRow(piece) ? 1 : usual.closing(piece, mirrored, side);
      },
      firstClosingRow: (piece) => piece.height - usual.firstClosingRow(piece) + 1,
    },
  ],
  'closing-misplaced': [
    {
      closing: (piece, row, side) => usual.closing(piece, row - 1, side),
      firstClosingRow: (piece) => usual.firstClosingRow(piece) + 1,
    },
    {
      closing: (piece, row, side) => usual.closing(piece, Math.min(piece.height, row + 1), side),
      firstClosingRow: (piece) => usual.firstClosingRow(piece) - 1,
    },
  ],
  // Strings taken in are given knots of their own, as strings let out are.
  'closing-counted-as-freed': [{ closing: () => 1 }],
  // The bundle's knot is looked for at the edge of the chart.
  'bundle-knot-outermost': [{ knotColumn: () => 1 }],
  // Every row is read in one direction, or in the other one's.
  'begun-at-wrong-side': [{ beginsLeft: (row, startSide) => !usual.beginsLeft(row, startSide) }],
  // The first knot is taken for a step, or counted twice.
  'knot-one-off': [{ stepsTo: (knot) => knot }, { stepsTo: (knot) => knot - 2 }],
  // One for each stretch of the colour.
  'stretches-counted': [{ ofStretches: (lengths) => lengths.map(() => 1) }],
  // The colour is not looked for again after its first stretch.
  'first-stretch-only': [{ ofStretches: (lengths) => lengths.slice(0, 1) }],
  // Corner cells of plain ground are taken for a loss.
  'plain-corners-marked': [{ pictureAlone: false }],
};

/** The rules a learner goes by who makes this slip, the likeliest way first. */
export const slippedRules = (slip: RowSlip): OutlineRules[] => ROWS[slip].map((rules) => ({ ...usual, ...rules }));
