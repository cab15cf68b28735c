import type { Chart } from './chart.ts';

/** The words of the craft as types; its terms are used everywhere. */
export type SideName = 'left' | 'right';
export type OddMethod = 'lone-string' | 'carried-end';
export type Direction = 'rightward' | 'leftward';
export type Knot = 'forward' | 'backward' | 'forward-backward' | 'backward-forward';
export type StartMove = 'none' | 'let-out' | 'take-in' | 'carry-behind';

/** One side bundle. A side without a bundle has 0 columns, 0 strands, 0 folds. */
export interface Side {
  /** Strings of this side that are columns of the chart. */
  readonly columns: number;
  /** Strands in the bundle: the columns, and the carried end where it rides here. Always even. */
  readonly strands: number;
  /** Cut strings, each folded in half: strands / 2. */
  readonly folds: number;
}

/** How the strings of a chart are shared between the bar and the two sides. */
export interface Fit {
  readonly width: number;
  readonly capacity: number;
  /** Strings on the bar. */
  readonly onBar: number;
  /** Folds on the bar; folds · 2 + loneStrings = onBar. */
  readonly folds: number;
  /** 0 or 1. */
  readonly loneStrings: number;
  readonly left: Side;
  readonly right: Side;
  /** Places of the bar given up so that each side is even: 0 or 2; in an alternative, whatever is left. */
  readonly borrowed: number;
  /** 0 or 1: the place given up because width and capacity are not both even or both odd. */
  readonly idle: number;
  /** Knots in row 1, a bundle counted as one. */
  readonly firstRowKnots: number;
  /** Row of first full width with one string let out per row and side; 1 where there is no bundle. */
  readonly rowsToFullWidth: number;
  readonly maxBundle: number;
  /** null for an even width. */
  readonly oddMethod: OddMethod | null;
  /** The side the carried end rides on: where row 1 ends. */
  readonly carrySide: SideName | null;
  /** Whether both sides have the same number of strands. */
  readonly level: boolean;
}

/** Bundle sizes in columns, index 0 = row 1. 1 is a single edge string. */
export interface Bundles {
  readonly left: readonly number[];
  readonly right: readonly number[];
}

/** Neighbouring knots of one kind and one colour. */
export interface Run {
  readonly knot: Knot;
  /**
   * Chart columns (from 1) in tying order; from > to in a leftward row. A bundle gives its innermost column twice.
   * Runs that lie alike may share one pair.
   */
  readonly columns: readonly [from: number, to: number];
  /** Knots in the run. */
  readonly count: number;
  /** Strings under each knot: 1, or the size of the bundle in columns. */
  readonly strands: number;
  /** Palette index; absent when the plan was made without a chart. */
  readonly colour?: number;
}

export interface RowPlan {
  /** From 1, at the ring. */
  readonly row: number;
  readonly direction: Direction;
  readonly leftBundle: number;
  readonly rightBundle: number;
  /** Innermost column of the left bundle. */
  readonly firstColumn: number;
  /** Innermost column of the right bundle. */
  readonly lastColumn: number;
  /** lastColumn − firstColumn + 1. */
  readonly knots: number;
  readonly startMove: StartMove;
  readonly runs: readonly Run[];
}

/** A piece as far as it is known; what is there is mirrored by `mirrorPiece`. */
export interface Piece {
  readonly fit: Fit;
  readonly bundles: Bundles;
  readonly startSide: SideName;
  readonly chart?: Chart;
  readonly rows?: readonly RowPlan[];
}

export const opposite = (side: SideName): SideName => (side === 'left' ? 'right' : 'left');
