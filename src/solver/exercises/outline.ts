import type { SideName } from '../piece.ts';
import { closingBundleAt, openingBundle } from '../row-bundles.ts';
import type { GivenFigures } from './figures.ts';

/** Left, then right. */
export type Pair = readonly [left: number, right: number];
export type SideIndex = 0 | 1;

/** A shaped piece as a question states it: all that decides its outline. */
export interface OutlineFigures {
  readonly width: number;
  readonly height: number;
  /** Columns of each side bundle as mounted; 1 where there is none. */
  readonly bundles: Pair;
  /** Columns of each bundle in the last row; 1 keeps that side at full width. */
  readonly closing: Pair;
  /** Rows from one string let out to the next. */
  readonly openingStep: number;
  /** Rows from one string taken in to the next. */
  readonly closingStep: number;
}

export interface OutlineOptions extends GivenFigures {
  /** Rows, drawn from 12 to 60 where left out. */
  readonly height?: number | undefined;
  /** Both closing bundles; left out, each side closes to what it was mounted with (level `mixed` draws it now and then). */
  readonly closingBundle?: number | undefined;
  /** Default 1. */
  readonly openingStep?: number | undefined;
  /** Default 1. */
  readonly closingStep?: number | undefined;
}

/**
 * How a maker reads an outline off its figures (craft, section 4). A slip puts a rule of its own in the
 * place of one of these.
 */
export interface OutlineRules {
  /** Strings in a side's bundle in a row, by letting out alone. */
  readonly opening: (piece: OutlineFigures, row: number, side: SideIndex) => number;
  /** Strings in a side's bundle in a row, by taking in alone. */
  readonly closing: (piece: OutlineFigures, row: number, side: SideIndex) => number;
  /** Knots in a row with these bundles. */
  readonly knots: (piece: OutlineFigures, bundles: Pair) => number;
  /** Corner cells outside a bundle's knot. */
  readonly corners: (bundle: number) => number;
  /** Columns from the edge to the bundle's knot, that one included. */
  readonly knotColumn: (bundle: number) => number;
  /** The sides on which corner cells are looked for. */
  readonly sides: readonly SideIndex[];
  readonly fullWidthRow: (piece: OutlineFigures) => number;
  /** 0 where nothing is taken in. */
  readonly firstClosingRow: (piece: OutlineFigures) => number;
  /** Whether a row begins on the left. */
  readonly beginsLeft: (row: number, startSide: SideName) => boolean;
  /** Columns from the first knot of a row to this one, counted from 1. */
  readonly stepsTo: (knot: number) => number;
  /** What is counted or marked of each stretch of one colour, from its first cell on. */
  readonly ofStretches: (lengths: readonly number[]) => readonly number[];
  /** Whether a corner cell counts only where the picture has colour. */
  readonly pictureAlone: boolean;
}

export const OUTLINE_RULES: OutlineRules = {
  beginsLeft: (row, startSide) => (row % 2 === 1) === (startSide === 'left'),
  stepsTo: (knot) => knot - 1,
  ofStretches: (lengths) => lengths,
  pictureAlone: true,
  opening: ({ bundles, openingStep }, row, side) => openingBundle(bundles[side], row, openingStep),
  closing: ({ closing, height, closingStep }, row, side) => closingBundleAt(closing[side], row, height, closingStep),
  knots: ({ width }, [left, right]) => width - (left - 1) - (right - 1),
  corners: (bundle) => bundle - 1,
  knotColumn: (bundle) => bundle,
  sides: [0, 1],
  fullWidthRow: ({ bundles, openingStep }) => 1 + openingStep * (Math.max(...bundles) - 1),
  firstClosingRow: ({ closing, height, closingStep }) =>
    Math.max(...closing) < 2 ? 0 : height - closingStep * (Math.max(...closing) - 1) + 1,
};

/** Bundle sizes in a row; where letting out and taking in meet, the larger counts. */
export const bundlesIn = (rules: OutlineRules, piece: OutlineFigures, row: number): Pair => {
  const size = (side: SideIndex): number => Math.max(rules.opening(piece, row, side), rules.closing(piece, row, side));
  return [size(0), size(1)];
};

/** Corner cells of one row, on the sides that are looked at. */
export const cornersIn = (rules: OutlineRules, bundles: Pair): number =>
  rules.sides.reduce((sum: number, side) => sum + rules.corners(bundles[side]), 0);

/** Corner cells at the ring, from row 1 to full width. */
export function openingCorners(rules: OutlineRules, piece: OutlineFigures): number {
  let cells = 0;
  for (let row = 1; row <= piece.height; row += 1) {
    const bundles: Pair = [rules.opening(piece, row, 0), rules.opening(piece, row, 1)];
    if (Math.max(...bundles) === 1) break;
    cells += cornersIn(rules, bundles);
  }
  return cells;
}

/** The column of a row's first knot. */
export function firstKnotColumn(
  rules: OutlineRules,
  { width }: OutlineFigures,
  row: number,
  bundles: Pair,
  startSide: SideName,
): number {
  const [left, right] = bundles;
  return rules.beginsLeft(row, startSide) ? rules.knotColumn(left) : width + 1 - rules.knotColumn(right);
}
