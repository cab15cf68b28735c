import type { Direction, Knot } from '../../piece.ts';
import type { FieldResult } from '../contract.ts';
import type { OutlineOptions, Pair } from '../outline.ts';

export const ROW_MOVES = ['let-out', 'take-in', 'carry-behind'] as const;
export const ROW_KNOTS = ['forward', 'backward', 'forward-backward', 'backward-forward'] as const satisfies Knot[];
/** All that hands do in a row, in the order in which it is offered. */
export const ROW_ACTS = [...ROW_MOVES, ...ROW_KNOTS] as const;
/** Moves that a row may need beside one knot for each base string at most: one at either edge. */
export const MOST_MOVES = 2;
export type RowMove = (typeof ROW_MOVES)[number];
export type RowAct = (typeof ROW_ACTS)[number];

/** What happens at the two edges in this row: on each side one string, where there is one to move. */
export type RowChange = 'none' | 'let-out' | 'take-in';

export const ROW_PHASES = ['first', 'opening', 'straight', 'closing'] as const;
/** Which part of a piece the row is from; `first` is row 1, which ties the bundles as they were mounted. */
export type RowPhase = (typeof ROW_PHASES)[number];

/** One row to be tied, as it lies before its first move; it holds the question, never the knots. */
export interface RowProblem {
  readonly kind: 'row';
  /** Columns of the piece, which is as many base strings. */
  readonly width: number;
  /** From 1, at the ring. */
  readonly row: number;
  readonly direction: Direction;
  /** Strings of each edge in the row before, or as mounted for row 1; 1 is a single edge string. */
  readonly before: Pair;
  readonly change: RowChange;
}

/** Moves and knots in the order in which they are done. */
export type RowAnswer = Readonly<{ acts?: readonly unknown[] | null | undefined }>;
export type RowSolution = { readonly acts: readonly RowAct[] };

export const ROW_FIELDS = ['start-move', 'start-edge', 'between', 'end-move', 'end-edge'] as const;
/** The parts of a row, in order: what moves first, the starting edge, the strings between, and the ending edge. */
export type RowField = (typeof ROW_FIELDS)[number];

/**
 * - `move-missing`: a string or the leading string has to move before this knot
 * - `move-not-due`: this row does not ask for this move here
 * - `nothing-to-move`: the move can't be made at all
 * - `plain-on-bundle`: an ordinary knot round a bundle, which needs one that turns
 * - `lead-elsewhere`: the knot begins on the side of its string where the leading string is not
 * - `leads-astray`: the knot leaves the leading string on the wrong side for what comes next
 * - `nothing-left`: every base string has its knot already
 */
export type RowFault =
  | 'move-missing'
  | 'move-not-due'
  | 'nothing-to-move'
  | 'plain-on-bundle'
  | 'lead-elsewhere'
  | 'leads-astray'
  | 'nothing-left';

export interface RowResult extends FieldResult {
  /** The first act that does not follow, from 1 in the answer, and what is the matter with it. */
  readonly at?: number;
  readonly act?: RowAct;
  readonly fault?: RowFault;
}

export interface RowOptions extends OutlineOptions {
  /** Left out, any. */
  readonly phase?: RowPhase | undefined;
  /** Left out, the one that the row drawn has. */
  readonly direction?: Direction | undefined;
  /** Which row of the piece; drawn where left out. */
  readonly row?: number | undefined;
}
