import type { SumFigures, SumProblem } from '../exercises/sum/problem.ts';
import { carriedEnds, hasLoneString, type Overrides, workOut } from '../exercises/sum/solve.ts';

export const FITTING_SLIPS = [
  'spare-not-halved',
  'odd-side-left-odd',
  'odd-side-rounded-down',
  'sides-raised-bar-kept',
  'borrowed-not-given',
  'one-borrowed',
  'borrowed-from-one-side',
  'four-borrowed',
  'borrowed-though-even',
  'folds-counted-as-strings',
  'strings-counted-as-folds',
  'capacity-not-matched',
  'added',
  'subtracted-wrong-way',
  'all-spare-on-one-side',
  'capacity-halved-too',
  'lone-string-forgotten',
] as const;
export type FittingSlip = (typeof FITTING_SLIPS)[number];

/** An odd bundle makes no whole folds: one learner cuts one too many, another one too few. */
const foldsRoundedDown: Overrides = { foldsEachSide: (_, b) => Math.floor(b.bundle / 2) };
const eitherRounding = (slip: Overrides): readonly [Overrides, ...Overrides[]] => [
  slip,
  { ...slip, ...foldsRoundedDown },
];

/**
 * Each slip as what a learner does in the place of a maker's rule. All later figures follow from it. Where
 * learners who think alike still write one of two things, both stand here, the likelier first. Where the slip
 * makes no difference (nothing to halve, no odd side), the usual figure comes out.
 */
export const FITTING: { readonly [Id in FittingSlip]: readonly [Overrides, ...Overrides[]] } = {
  // Each side gets all the spare strings.
  'spare-not-halved': [{ eachSide: (_, b) => b.spare }],
  // Five a side stay five a side.
  'odd-side-left-odd': eitherRounding({ borrowed: () => 0 }),
  // Five a side become four, and two strings are lost.
  'odd-side-rounded-down': [{ borrowed: () => 0, bundle: (_, b) => b.eachSide - b.parity }],
  // Five a side become six, and the bar keeps its sixteen: two strings too many.
  'sides-raised-bar-kept': [
    { onBar: (_, b) => b.places },
    { borrowed: () => 0, bundle: (_, b) => b.eachSide + b.parity },
  ],
  // Two strings off the bar, and the sides keep their five: two strings are lost.
  'borrowed-not-given': eitherRounding({ bundle: (_, b) => b.eachSide }),
  // One string off the bar, and both sides are called six.
  'one-borrowed': [{ borrowed: (_, __, usual) => (usual > 0 ? 1 : usual) }],
  // Two strings off one end of the bar, both into the bundle at that end.
  'borrowed-from-one-side': eitherRounding({ bundle: (_, b) => b.eachSide + b.borrowed }),
  // Two for each side: still odd.
  'four-borrowed': eitherRounding({ borrowed: (_, __, usual) => (usual > 0 ? 4 : usual) }),
  // Two off the bar where the half was even: the sides become odd.
  'borrowed-though-even': eitherRounding({ borrowed: (_, b, usual) => (b.spare !== 0 && b.parity === 0 ? 2 : usual) }),
  // Seven folds on the bar are written down as seven strings.
  'folds-counted-as-strings': [
    {
      onBar: (_, __, usual) => Math.ceil(usual / 2),
      bundle: (_, __, usual) => Math.ceil(usual / 2),
      foldsOnBar: (p, b) => b.onBar - hasLoneString(p),
      loneStrings: (p) => hasLoneString(p),
      foldsEachSide: (_, b) => b.bundle,
    },
  ],
  // Fourteen strings are thought to need fourteen folds.
  'strings-counted-as-folds': [{ foldsOnBar: (_, b) => b.onBar, foldsEachSide: (_, b) => b.bundle }],
  // No idle place, so the spare strings do not halve: one half or the other is written down.
  'capacity-not-matched': [
    { places: (p, _, usual) => (p.width > p.capacity ? p.capacity : usual) },
    {
      places: (p, _, usual) => (p.width > p.capacity ? p.capacity : usual),
      eachSide: (_, b) => Math.ceil(b.spare / 2),
    },
  ],
  added: [{ spare: (p, b) => p.width + carriedEnds(p) + b.places }],
  // Bar less chart; the minus sign is carried along, or dropped at the next step.
  'subtracted-wrong-way': [
    { spare: (_, __, usual) => -usual },
    { spare: (_, __, usual) => -usual, eachSide: (_, b) => Math.floor(Math.abs(b.spare) / 2) },
  ],
  // One bundle, so one knot for it in row 1.
  'all-spare-on-one-side': [{ eachSide: (_, b) => b.spare, firstRowKnots: (_, b) => b.onBar + (b.bundle ? 1 : 0) }],
  // The bar's places are halved along with the spare strings.
  'capacity-halved-too': [{ onBar: (_, b) => Math.floor(b.places / 2) - b.borrowed }],
  // The bar is thought to hold folds alone.
  'lone-string-forgotten': [
    {
      loneStrings: (p, _, usual) => (hasLoneString(p) ? 0 : usual),
      firstRowKnots: (p, b, usual) => (hasLoneString(p) ? 2 * b.foldsOnBar + (b.bundle ? 2 : 0) : usual),
    },
  ],
};

/** Two slips in one sum, or null where both change the same figure and only one of them can be made. */
export function together(one: Overrides, other: Overrides): Overrides | null {
  return Object.keys(one).some((field) => field in other) ? null : { ...one, ...other };
}

/**
 * The whole sum as a learner works it who makes this slip.
 *
 * @returns the figures by the likeliest way of making it first; the right figures where it makes no difference
 * @example slippedSums('sides-raised-bar-kept', sum of 26 on 16)[0].onBar // 16, with bundles of 6: two too many
 */
export const slippedSums = (slip: FittingSlip, problem: SumProblem): SumFigures[] =>
  FITTING[slip].map((overrides) => workOut(problem, overrides));
