import type { Knot } from '../../piece.ts';
import type { FieldResult } from '../contract.ts';
import type { OutlineFigures } from '../outline.ts';
import type { RowOptions, RowProblem } from '../row/problem.ts';
import type { SumField, SumProblem } from '../sum/problem.ts';

/** Where the fault is: in a row as it is drawn, in the rows of a written plan, or in a written fitting sum. */
export const SPOT_SHEETS = ['row', 'plan', 'sum'] as const;
export type SpotSheet = (typeof SPOT_SHEETS)[number];

/**
 * - `leans-wrong`: one ordinary knot leans against the row
 * - `ordinary-on-bundle`: an ordinary knot where the knot has to turn
 * - `turns-wrong`: the turning knot of the other side
 * - `lead-wrong-side`: at the end the leading string is on the wrong side of the edge
 * - `out-on-wrong-side`: the string let out hangs outside its bundle
 * - `two-let-out`: two strings of one side came out in one row
 */
export const ROW_SPOTS = [
  'leans-wrong',
  'ordinary-on-bundle',
  'turns-wrong',
  'lead-wrong-side',
  'out-on-wrong-side',
  'two-let-out',
] as const;
/**
 * - `strings-counted`: a knot for every string of a bundle
 * - `bundles-left-out`: no knot for the bundles
 * - `row-after`, `row-before`: what belongs to the next row, or to the one before
 * - `one-side-only`: one side moved, the other did not
 */
export const PLAN_SPOTS = ['strings-counted', 'bundles-left-out', 'row-after', 'row-before', 'one-side-only'] as const;
/**
 * - `not-halved`: each side has all the spare strings
 * - `none-borrowed`, `one-borrowed`: an odd half, with nothing or too little borrowed
 * - `borrowed-from-even`: an even half that borrowed
 * - `bar-kept`: what was borrowed is still on the bar
 * - `bundles-left-out`: row 1 without its bundles
 */
export const SUM_SPOTS = [
  'not-halved',
  'none-borrowed',
  'one-borrowed',
  'borrowed-from-even',
  'bar-kept',
  'bundles-left-out',
] as const;
export type SpotFault = (typeof ROW_SPOTS)[number] | (typeof PLAN_SPOTS)[number] | (typeof SUM_SPOTS)[number];

/** What faults there are to choose from, by where they are looked for. */
export const SPOT_FAULTS: { readonly [S in SpotSheet]: readonly SpotFault[] } = {
  row: ROW_SPOTS,
  plan: PLAN_SPOTS,
  sum: SUM_SPOTS,
};

/** One edge of a row as it is drawn. */
export interface ShownEdge {
  /** Strings tied as one; 1 is a single edge string. */
  readonly strings: number;
  readonly knot: Knot;
  /** Strings let out in this row, each with its knot. */
  readonly freed: readonly Knot[];
  /** Where they hang: beside the bundle towards the middle, or outside it. */
  readonly side: 'inner' | 'outer';
}

/** A row as it is drawn, in tying order. */
export interface ShownRow {
  readonly start: ShownEdge;
  /** The strings that hung singly before, from the starting edge. */
  readonly between: readonly Knot[];
  readonly end: ShownEdge;
  /** Whether the leading string lies inside or outside the ending edge when the row is done. */
  readonly rests: 'inside' | 'outside';
}

/** One row of a written plan. */
export interface ShownLine {
  readonly row: number;
  readonly left: number;
  readonly right: number;
  readonly knots: number;
}

export interface SpotRow extends Omit<RowProblem, 'kind'> {
  readonly kind: 'spot';
  readonly in: 'row';
  readonly shown: ShownRow;
}
export interface SpotPlan extends OutlineFigures {
  readonly kind: 'spot';
  readonly in: 'plan';
  readonly shown: readonly ShownLine[];
}
export interface SpotSum extends Omit<SumProblem, 'kind'> {
  readonly kind: 'spot';
  readonly in: 'sum';
  /** A figure for each of the fields, as it is written down. */
  readonly shown: readonly (number | 'even' | 'odd')[];
}
/** A sheet with one fault in it; it says what stands there, and never which part of it is at fault. */
export type SpotProblem = SpotRow | SpotPlan | SpotSum;

/** A part of the sheet: an edge, a string between, where the leading string rests, a row, or a figure of the sum. */
export type SpotPlace = 'start' | 'end' | 'lead' | `between-${number}` | `row-${number}` | SumField;
export type SpotAnswer = Readonly<{ place?: unknown; fault?: unknown }>;
export type SpotSolution = { readonly place: SpotPlace; readonly fault: SpotFault };
export const SPOT_FIELDS = ['place', 'fault'] as const;
export type SpotField = (typeof SPOT_FIELDS)[number];

export interface SpotResult extends FieldResult {
  /** What was picked, as far as it is on the sheet. */
  readonly picked?: string;
}

export interface SpotOptions extends RowOptions {
  /** Where the fault is; drawn where left out. */
  readonly in?: SpotSheet | undefined;
  /** Which fault; drawn where left out. */
  readonly fault?: SpotFault | undefined;
}
