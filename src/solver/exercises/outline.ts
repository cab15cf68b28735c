import { closingBundleAt, openingBundle } from '../outline.ts';
import { type Problem, type Refusal, refuse, wholeNumberProblem } from '../problem.ts';
import { drawFigures, type FitFigures, type GivenFigures, sumOf } from './figures.ts';
import type { Level } from './level.ts';
import type { Draw } from './seed.ts';
import { carriedEnds, workOut } from './sum/solve.ts';

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
}

export const OUTLINE_RULES: OutlineRules = {
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

/** Columns of the two bundles, left and right; a carried end rides on the side where row 1 ends. */
function mountedBundles(figures: FitFigures): Pair {
  const problem = sumOf(figures);
  const { bundle } = workOut(problem);
  const carried = carriedEnds(problem);
  const columns: [number, number] = [bundle, bundle];
  columns[figures.startSide === 'left' ? 1 : 0] -= carried;
  return [Math.max(1, columns[0]), Math.max(1, columns[1])];
}

const ROWS = { low: 12, high: 60 };

export interface DrawnPiece {
  readonly fit: FitFigures;
  readonly piece: OutlineFigures;
}

/**
 * A shaped piece that reaches its full width and closes again, drawn to suit the level (12 to 60 rows), with
 * what is given held. It is wider than its bar, so that it has a bundle on each side.
 *
 * @param straightToo whether a piece no wider than its bar will do
 * @param wanted narrows the draw to these bundles
 * @param mostClosing the greatest closing bundle that is drawn, 2 or more
 * @returns a refusal where the figures given do not go together
 */
export function drawPiece(
  next: Draw,
  level: Level,
  given: OutlineOptions,
  straightToo = false,
  wanted: (bundles: Pair) => boolean = () => true,
  mostClosing = 8,
): DrawnPiece | Refusal<Problem> {
  const { openingStep = 1, closingStep = 1 } = given;
  const steps = { low: 1, high: 100 };
  const bad =
    wholeNumberProblem('openingStep', openingStep, steps) ??
    wholeNumberProblem('closingStep', closingStep, steps) ??
    (given.height === undefined ? null : wholeNumberProblem('height', given.height, { low: 1, high: 1000 })) ??
    (given.closingBundle === undefined
      ? null
      : wholeNumberProblem('closingBundle', given.closingBundle, { low: 1, high: 400 }));
  if (bad) return refuse(bad);

  const fit = drawFigures(next, level, given, (figures) => {
    if (!straightToo && figures.width <= figures.capacity) return false;
    return wanted(mountedBundles(figures));
  });
  if ('ok' in fit) return fit;
  const { width } = fit;
  const bundles = mountedBundles(fit);
  const largest = Math.min(Math.max(8, given.maxBundle ?? 8, ...bundles), Math.floor((width - 2) / 2));
  const drawnClosing =
    level === 'mixed' && largest >= 2 && next(0, 2) === 0 ? next(2, Math.min(mostClosing, largest)) : undefined;
  const closingBundle = given.closingBundle ?? drawnClosing;
  if (closingBundle !== undefined && closingBundle > largest)
    return refuse({
      code: 'closing-too-big',
      field: 'closingBundle',
      entered: closingBundle,
      values: { closingBundle, largest },
    });
  const closing: Pair = closingBundle === undefined ? bundles : [closingBundle, closingBundle];

  // One row at full width at the least; two where chance decides.
  const shortestHeight = 1 + openingStep * (Math.max(...bundles) - 1) + closingStep * (Math.max(...closing) - 1);
  const height = given.height ?? next(Math.max(ROWS.low, shortestHeight + 1), Math.max(ROWS.high, shortestHeight + 1));
  if (height < shortestHeight)
    return refuse({ code: 'never-full-width', field: 'height', entered: height, values: { height, shortestHeight } });
  return { fit, piece: { width, height, bundles, closing, openingStep, closingStep } };
}
