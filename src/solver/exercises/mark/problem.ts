import type { SideName } from '../../piece.ts';
import type { FieldResult } from '../contract.ts';
import type { OutlineFigures, OutlineOptions } from '../outline.ts';

/** What chance draws from where nothing is asked for; a seed gives the same for ever, so this list stays as it is. */
export const DRAWN_TARGETS = ['corner-cells', 'bundle-knot', 'first-closing-row'] as const;
export const MARK_TARGETS = [...DRAWN_TARGETS, 'first-knot', 'colour-in-row', 'picture-cut'] as const;
/**
 * - `corner-cells`: the cells outside the outline in rows `from` to `to`
 * - `bundle-knot`: the cell of each bundle's knot in row `from` (`to` is the same row)
 * - `first-closing-row`: the row in which closing begins; any cell of it marks it
 * - `first-knot`: the cell in which row `from` begins
 * - `colour-in-row`: the cells of one colour of the picture in row `from`
 * - `picture-cut`: the picture's cells among the corner cells of rows `from` to `to`
 */
export type MarkTarget = (typeof MARK_TARGETS)[number];

/** A picture on the chart, row by row from the ring: one digit a cell, its palette index. */
export interface Picture {
  readonly palette: readonly { readonly name: string; readonly colour: string }[];
  /** Palette index of the background. */
  readonly ground: number;
  readonly rows: readonly string[];
}

/** Cells to be marked on a chart; it holds the question, never the cells. */
export interface MarkProblem extends OutlineFigures {
  readonly kind: 'mark';
  readonly target: MarkTarget;
  /** First and last row that is asked about, from 1. */
  readonly from: number;
  readonly to: number;
  /** Where row 1 begins, where the question is about that. */
  readonly startSide?: SideName;
  /** Where the question is about a picture. */
  readonly picture?: Picture;
  /** Palette index of the colour to mark. */
  readonly colour?: number;
}

/** Row and column, both from 1. */
export type Cell = readonly [row: number, column: number];

/** The cells marked, as a list or by name; order and repeats do not matter. */
export type MarkAnswer = readonly Cell[] | Readonly<{ cells?: readonly Cell[] | null | undefined }>;
export type MarkSolution = { readonly cells: readonly Cell[] };

/** One field a row; where only one side of it was missed, or is left open, that side. */
export type MarkField = `row-${number}` | `row-${number}-${SideName}`;

/** Whether a row has cells of a left and of a right side to mark. */
export const hasSides = ({ target }: Pick<MarkProblem, 'target'>): boolean =>
  target === 'corner-cells' || target === 'bundle-knot' || target === 'picture-cut';

/** The side of the chart a column belongs to; the middle one of an odd width counts as left. */
export const sideOf = ({ width }: Pick<MarkProblem, 'width'>, column: number): SideName =>
  2 * column <= width + 1 ? 'left' : 'right';

/** The columns of one row, left to right. */
export interface MarkResult extends FieldResult {
  /** Marked, and rightly. */
  readonly right: readonly number[];
  /** Not marked. */
  readonly missing: readonly number[];
  /** Marked, and should not be. */
  readonly extra: readonly number[];
}

export interface MarkOptions extends OutlineOptions {
  /** What to mark; drawn where left out. */
  readonly target?: MarkTarget | undefined;
  /** First and last row asked about; left out, the whole opening, or a row drawn for `bundle-knot`. */
  readonly from?: number | undefined;
  readonly to?: number | undefined;
}

/** Whether it is about how the chart is read, and not about the outline alone. */
export const readsChart = ({ target }: MarkProblem): boolean => !DRAWN_TARGETS.some((drawn) => drawn === target);
