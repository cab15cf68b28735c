import type { OddMethod, SideName } from '../../piece.ts';
import type { GivenFigures } from '../figures.ts';

/** The figures of the fitting sum, in the order in which a maker works them out. */
export const SUM_FIELDS = [
  /** Places of the bar that can be used: the capacity less an idle place, or the width where all fits. */
  'places',
  /** Strands that find no place: strands less places. */
  'spare',
  /** Half of the spare ones, before anything is borrowed. */
  'eachSide',
  /** Whether that half is even or odd. */
  'parity',
  /** 0 or 2, the places given up so that each side is even. */
  'borrowed',
  /** Strings on the bar. */
  'onBar',
  /** Strands in each side bundle, 0 where there is none. */
  'bundle',
  'foldsOnBar',
  /** 0 or 1; asked of an odd width with a lone string alone. */
  'loneStrings',
  'foldsEachSide',
  /** Knots in row 1, a bundle counted as one. */
  'firstRowKnots',
  /** Row of first full width, one string let out per row and side. */
  'fullWidthRow',
] as const;
export type SumField = (typeof SUM_FIELDS)[number];

/** A fitting sum to be worked out; it holds the question, never a result. */
export interface SumProblem {
  readonly kind: 'sum';
  /** Columns of the chart. */
  readonly width: number;
  readonly capacity: number;
  /** null for an even width. */
  readonly oddMethod: OddMethod | null;
  readonly startSide: SideName;
  /** The figures asked for, in the order of `SUM_FIELDS`. */
  readonly fields: readonly SumField[];
}

/** What a learner enters, by field: text as typed, or a number; `parity` is 'even' or 'odd'. */
export type SumAnswer = Readonly<Partial<Record<SumField, number | string | null | undefined>>>;

/** Every figure of a sum as a number; `parity` is 0 for even, 1 for odd. */
export type SumFigures = Record<SumField, number>;

/** The figures asked for, worked out. */
export type SumSolution = Partial<Record<SumField, number | 'even' | 'odd'>>;

/** The learner's own figures, as far as they are given, and the figures to ask for (default: all). */
export interface SumOptions extends GivenFigures {
  readonly fields?: readonly SumField[] | undefined;
}
