import type { Fit, OddMethod, Side, SideName } from './piece.ts';
import { opposite } from './piece.ts';
import { choiceProblem, type Problem, type Refusal, refuse, type Step, wholeNumberProblem } from './problem.ts';
import { CAPACITIES, MAX_BUNDLES, ODD_METHODS, SIDES, WIDTHS } from './ranges.ts';

export interface FitInput {
  /** Columns of the chart, 2 to 400. */
  readonly width: number;
  /** Knotted columns that lie flat along the bar, 2 to 400. */
  readonly capacity: number;
  /** The most strands of a side bundle, 2 to 40; bundles are even, so an odd figure acts as one less. */
  readonly maxBundle?: number | undefined;
  /** What is done about the odd string of an odd width. */
  readonly oddMethod?: OddMethod | undefined;
  /** The side on which row 1 begins. */
  readonly startSide?: SideName | undefined;
}

export type FitStepKey =
  | 'all-on-bar'
  | 'carried-end'
  | 'idle-place'
  | 'spare'
  | 'halved'
  | 'half-even'
  | 'half-odd'
  | 'borrow-two'
  | 'nothing-left-on-bar'
  | 'bundle-over-most'
  | 'on-bar'
  | 'folds-on-bar'
  | 'lone-string'
  | 'carry-side'
  | 'folds-each-side'
  | 'first-row'
  | 'full-width';
export type FitStep = Step<FitStepKey>;

export interface FitProblem extends Problem {
  readonly code: 'bundle-too-big' | 'too-narrow';
  /** Splits that could be made all the same: lopsided ones, or the other way of placing an odd string. */
  readonly alternatives: readonly Fit[];
  readonly working: readonly FitStep[];
}

export type FitResult =
  | {
      readonly ok: true;
      readonly fit: Fit;
      readonly alternatives: readonly Fit[];
      readonly working: readonly FitStep[];
    }
  | Refusal<FitProblem | (Problem & { readonly code: 'not-a-whole-number' | 'out-of-range' | 'unknown-choice' })>;

interface Asked {
  readonly width: number;
  readonly capacity: number;
  readonly maxBundle: number;
  readonly oddMethod: OddMethod | null;
  readonly startSide: SideName;
}

/** A split before it is known to be makeable: strands left and right of the strings on the bar. */
interface Split {
  readonly onBar: number;
  readonly left: number;
  readonly right: number;
}

const NO_SIDE: Side = { columns: 0, strands: 0, folds: 0 };

/** Strands there are in all: a carried end is one more than there are columns. */
const strandsOf = (asked: Asked): number => asked.width + (asked.oddMethod === 'carried-end' ? 1 : 0);

/**
 * The method that is really used: none for an even width, and the lone string where every string
 * finds room on the bar, since a carried end has no bundle to ride in (craft, section 3).
 */
const usedMethod = (width: number, capacity: number, wanted: OddMethod): OddMethod | null =>
  width % 2 === 0 ? null : width <= capacity ? 'lone-string' : wanted;

/** 1 where width and capacity (with a carried end: the strands and the capacity) are not both even or both odd. */
const idlePlaces = (asked: Asked): number =>
  asked.width <= asked.capacity ? 0 : (strandsOf(asked) - asked.capacity) % 2 === 0 ? 0 : 1;

const side = (strands: number, carries: boolean): Side =>
  strands === 0 ? NO_SIDE : { columns: strands - (carries ? 1 : 0), strands, folds: strands / 2 };

function fitOf(asked: Asked, split: Split): Fit {
  const carrySide = asked.oddMethod === 'carried-end' ? opposite(asked.startSide) : null;
  const left = side(split.left, carrySide === 'left');
  const right = side(split.right, carrySide === 'right');
  const loneStrings = split.onBar % 2;
  const idle = idlePlaces(asked);
  return {
    width: asked.width,
    capacity: asked.capacity,
    onBar: split.onBar,
    folds: (split.onBar - loneStrings) / 2,
    loneStrings,
    left,
    right,
    borrowed: Math.min(asked.capacity, asked.width) - split.onBar - idle,
    idle,
    firstRowKnots: split.onBar + (left.columns > 0 ? 1 : 0) + (right.columns > 0 ? 1 : 0),
    rowsToFullWidth: Math.max(1, left.columns, right.columns),
    maxBundle: asked.maxBundle,
    oddMethod: asked.oddMethod,
    carrySide,
    level: split.left === split.right,
  };
}

/**
 * The level split with the most strings on the bar, whatever its bundles, or null where fewer than two
 * strings would be left on the bar. Spare strings must be a multiple of four: each side bundle is made
 * of folds, so it is even, and the two sides match (craft, section 3).
 */
function levelSplit(asked: Asked): Split | null {
  const strands = strandsOf(asked);
  const most = Math.min(asked.capacity, asked.width);
  // The largest m ≤ most with (strands − m) divisible by four.
  const onBar = most - ((((most - strands) % 4) + 4) % 4);
  if (onBar < 2) return null;
  const each = (strands - onBar) / 2;
  return { onBar, left: each, right: each };
}

const withinMost = (asked: Asked, split: Split): boolean =>
  split.left <= asked.maxBundle && split.right <= asked.maxBundle;

/** Every split within maxBundle whose sides are even and differ by 0 or 2, best first. */
function splitsWithin(asked: Asked): Split[] {
  const strands = strandsOf(asked);
  const level: Split[] = [];
  const lopsided: Split[] = [];
  for (let onBar = Math.min(asked.capacity, asked.width); onBar >= 2; onBar -= 1) {
    const spare = strands - onBar;
    if (spare > 2 * asked.maxBundle) break;
    if (spare % 2 !== 0) continue;
    const even = spare % 4 === 0;
    const split: Split = even
      ? { onBar, left: spare / 2, right: spare / 2 }
      : { onBar, left: spare / 2 + 1, right: spare / 2 - 1 };
    if (!withinMost(asked, split)) continue;
    // A carried end rides inside a bundle, on the side where row 1 ends; no bundle there, no such split.
    if (asked.oddMethod === 'carried-end' && split[opposite(asked.startSide)] === 0) continue;
    (even ? level : lopsided).push(split);
  }
  return [...level, ...lopsided];
}

/** Level before lopsided, then most on the bar. */
const better = (a: Fit, b: Fit): number => Number(b.level) - Number(a.level) || b.onBar - a.onBar;

function alternativesTo(asked: Asked, chosen: Split | null): Fit[] {
  const fits = splitsWithin(asked)
    .filter((split) => chosen === null || split.onBar !== chosen.onBar)
    .map((split) => fitOf(asked, split));
  if (asked.oddMethod !== null && asked.width > asked.capacity) {
    const other: Asked = { ...asked, oddMethod: asked.oddMethod === 'lone-string' ? 'carried-end' : 'lone-string' };
    const best = splitsWithin(other)[0];
    if (best) fits.push(fitOf(other, best));
  }
  return fits.sort(better);
}

function makeable(width: number, capacity: number, maxBundle: number, wanted: OddMethod, startSide: SideName): boolean {
  const asked: Asked = { width, capacity, maxBundle, oddMethod: usedMethod(width, capacity, wanted), startSide };
  const split = levelSplit(asked);
  return split !== null && withinMost(asked, split);
}

/** The sum as a maker would do it, as far as it comes out. */
function workTheSum(asked: Asked, split: Split | null): FitStep[] {
  const { width, capacity, maxBundle } = asked;
  const steps: FitStep[] = [];
  const step = (key: FitStepKey, values: FitStep['values']) => steps.push({ key, values });
  if (width <= capacity) {
    step('all-on-bar', { width, capacity });
  } else {
    const strands = strandsOf(asked);
    const idle = idlePlaces(asked);
    const places = capacity - idle;
    const spare = strands - places;
    const half = spare / 2;
    if (asked.oddMethod === 'carried-end') step('carried-end', { width, strands });
    if (idle > 0) step('idle-place', { width, capacity, places });
    step('spare', { width: strands, places, spare });
    step('halved', { spare, half });
    if (half % 2 === 0) step('half-even', { half });
    else {
      step('half-odd', { half });
      if (places - 2 < 2) step('nothing-left-on-bar', { places, left: places - 2 });
      else step('borrow-two', { places, onBar: places - 2, half, bundle: half + 1 });
    }
    if (split === null) {
      if (half % 2 === 0) step('nothing-left-on-bar', { places, left: places });
      return steps;
    }
    if (!withinMost(asked, split)) {
      step('bundle-over-most', { bundle: split.left, most: maxBundle });
      return steps;
    }
  }
  if (split === null) return steps;
  const fit = fitOf(asked, split);
  step('on-bar', { onBar: fit.onBar });
  step('folds-on-bar', { onBar: fit.onBar, folds: fit.folds, loneStrings: fit.loneStrings });
  if (fit.loneStrings > 0) step('lone-string', { folds: fit.folds, onBar: fit.onBar });
  if (fit.carrySide !== null)
    step('carry-side', {
      side: fit.carrySide,
      columns: fit[fit.carrySide].columns,
      strands: fit[fit.carrySide].strands,
    });
  if (fit.left.columns > 0) step('folds-each-side', { bundle: fit.left.strands, folds: fit.left.folds });
  step('first-row', { onBar: fit.onBar, bundles: fit.firstRowKnots - fit.onBar, knots: fit.firstRowKnots });
  step('full-width', { row: fit.rowsToFullWidth, width });
  return steps;
}

/**
 * The fitting sum: how many strings the bar takes and how the spare ones are shared (craft, section 3).
 *
 * The strings on the bar are the largest number that is at most the capacity and the width, at least two,
 * and leaves spare strings that divide by four.
 *
 * @returns the fit, every other split that could be made (best first) and the sum step by step; or a problem.
 *   `bundle-too-big` and `too-narrow` carry `smallestCapacity` and `greatestWidth` among their values
 *   (all else as entered) and the alternatives. Figures that are no whole numbers, or out of range, are
 *   refused with the range that would do.
 * @example
 * fitPiece({ width: 26, capacity: 16 }) // 14 on the bar, 6 each side, 2 borrowed
 */
export function fitPiece(input: FitInput): FitResult {
  const { width, capacity, maxBundle = 8, oddMethod = 'lone-string', startSide = 'left' } = input ?? {};
  const bad =
    wholeNumberProblem('width', width, WIDTHS) ??
    wholeNumberProblem('capacity', capacity, CAPACITIES) ??
    wholeNumberProblem('maxBundle', maxBundle, MAX_BUNDLES) ??
    choiceProblem('oddMethod', oddMethod, ODD_METHODS) ??
    choiceProblem('startSide', startSide, SIDES);
  if (bad) return refuse(bad as Problem & { code: 'not-a-whole-number' | 'out-of-range' | 'unknown-choice' });

  const asked: Asked = { width, capacity, maxBundle, oddMethod: usedMethod(width, capacity, oddMethod), startSide };
  const split = levelSplit(asked);
  const working = workTheSum(asked, split);
  if (split !== null && withinMost(asked, split))
    return { ok: true, fit: fitOf(asked, split), alternatives: alternativesTo(asked, split), working };

  // A ring as wide as the chart always works, so both searches end with an answer.
  let smallestCapacity = CAPACITIES.low;
  while (!makeable(width, smallestCapacity, maxBundle, oddMethod, startSide)) smallestCapacity += 1;
  let greatestWidth: number = WIDTHS.high;
  while (!makeable(greatestWidth, capacity, maxBundle, oddMethod, startSide)) greatestWidth -= 1;
  return refuse({
    code: split === null ? 'too-narrow' : 'bundle-too-big',
    values: { width, capacity, maxBundle, bundle: split === null ? 0 : split.left, smallestCapacity, greatestWidth },
    alternatives: alternativesTo(asked, null),
    working,
  });
}
