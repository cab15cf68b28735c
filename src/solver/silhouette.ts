import type { Chart } from './chart.ts';
import { blankOf } from './chart-ground.ts';
import { fitProblem } from './fit-check.ts';
import { HEIGHTS, mostInLastRow } from './outline.ts';
import type { Bundles, Fit } from './piece.ts';
import { type Problem, type Refusal, refuse, wholeNumberProblem } from './problem.ts';
import { MAX_BUNDLES } from './ranges.ts';
import { mounted } from './row-bundles.ts';

/** A shape as it is wished for: the first and the last column inside it in each row, from 1; index 0 = row 1. */
export interface WantedShape {
  readonly first: readonly number[];
  readonly last: readonly number[];
}

export interface SilhouetteInput {
  readonly wanted: WantedShape;
  readonly fit: Fit;
  /** The most strings of a bundle, 2 to 40, default 8; what was mounted may be more. */
  readonly maxBundle?: number | undefined;
}

export interface Silhouette extends Bundles {
  readonly ok: true;
  /** Cells by which the two edges miss the wanted ones, all rows together; no workable outline has fewer. */
  readonly differing: number;
}

/**
 * The shape that a chart's blank cells leave. A row that is blank from edge to edge gives a first column after the last
 * one, which `silhouette` calls a hole. Blank cells between two others are no edge and are passed over.
 */
export function wantedShape(chart: Chart): WantedShape {
  const { width, height, cells } = chart;
  const blank = blankOf(chart);
  const first: number[] = [];
  const last: number[] = [];
  for (let row = 0; row < height; row += 1) {
    let [from, to] = [1, width];
    while (from <= width && cells[row * width + from - 1] === blank) from += 1;
    while (to > 0 && cells[row * width + to - 1] === blank) to -= 1;
    first.push(from);
    last.push(to);
  }
  return { first, last };
}

/**
 * A wish to try the sum on: full width at both ends, and in the middle third a waist that steps in at once, by three
 * strings a side or as many as leave a third of the width.
 *
 * @param maxBundle the most strings of a bundle
 */
export function waistShape(width: number, height: number, maxBundle: number): WantedShape {
  const step = Math.max(0, Math.min(3, maxBundle - 1, Math.floor(width / 3)));
  const [from, to] = [Math.floor(height / 3), Math.ceil((2 * height) / 3)];
  const rows = Array.from({ length: height }, (_, index) => (index >= from && index < to ? step : 0));
  return { first: rows.map((by) => 1 + by), last: rows.map((by) => width - by) };
}

function wantedProblem({ first, last }: WantedShape, width: number): Problem | null {
  if (!Array.isArray(first) || !Array.isArray(last) || first.length === 0)
    return { code: 'no-rows', field: 'wanted', values: { ...HEIGHTS } };
  if (first.length !== last.length)
    return { code: 'sides-differ-in-length', field: 'wanted', values: { left: first.length, right: last.length } };
  if (first.length > HEIGHTS.high)
    return { code: 'out-of-range', field: 'height', entered: first.length, values: { ...HEIGHTS } };
  for (let index = 0; index < first.length; index += 1) {
    const [from, to]: unknown[] = [first[index], last[index]];
    if (typeof from === 'number' && typeof to === 'number' && from > to)
      return { code: 'hole', field: 'wanted', row: index + 1, values: { cells: width } };
    const problem =
      wholeNumberProblem('wanted', from, { low: 1, high: width }) ??
      wholeNumberProblem('wanted', to, { low: 1, high: width });
    if (problem) return { ...problem, row: index + 1 };
  }
  return null;
}

/** Bundles of a row change by one string at the most. */
const CHANGES = [-1, 0, 1] as const;

/**
 * The workable outline that comes nearest to a wanted one: it begins with what was mounted, changes each bundle by at
 * most one string a row, holds no more strings than there are, and leaves two single ones to finish with (craft,
 * section 4).
 *
 * Every pair of bundle sizes of a row is looked at, from the last row up, with the best that can follow it; so the least
 * is found and not guessed. The time grows with rows × (largest bundle)². Of outlines that miss equally many cells the
 * one with fewer knots is taken, then the one with the smaller bundle in the first row that differs, left before right.
 *
 * @returns a problem for a row with no cell (`hole`), for figures out of range, and for a piece with too few rows to let
 *   out what was mounted (`too-short`)
 * @example
 * // A waist that steps in at once is met half way.
 * silhouette({ fit, wanted: { first: [3, 1, 3, 1], last: [10, 12, 10, 12] } })
 */
export function silhouette(input: SilhouetteInput): Silhouette | Refusal<Problem> {
  const { wanted, fit, maxBundle = 8 } = input ?? {};
  const bad =
    fitProblem(fit) ??
    wholeNumberProblem('maxBundle', maxBundle, MAX_BUNDLES) ??
    wantedProblem(wanted ?? {}, fit.width);
  if (bad) return refuse(bad);
  const { width } = fit;
  const { first, last } = wanted;
  const rows = first.length;
  const start = [mounted(fit.left.columns), mounted(fit.right.columns)] as const;
  const most = Math.min(width, Math.max(maxBundle, ...start));
  const mostAtEnd = mostInLastRow(width);
  const finished = (row: number): number => (row === rows ? mostAtEnd : width);

  const excess = start[0] + start[1] - mostAtEnd;
  // Each row after the first can let out one string on each side that has one.
  const shortestHeight = 1 + Math.max(0, Math.ceil(excess / 2));
  if (rows < shortestHeight)
    return refuse({
      code: 'too-short',
      field: 'height',
      entered: rows,
      values: { height: rows, closingBundle: Math.max(...start), shortestHeight },
    });

  /** A cell that is missed outweighs all the knots there are. */
  const weight = width * rows + 1;
  const costOf = (row: number, left: number, right: number): number =>
    (Math.abs(left - (first[row - 1] ?? 0)) + Math.abs(width - right + 1 - (last[row - 1] ?? 0))) * weight +
    (width - left - right + 2);

  const sizes = most * most;
  /** The least cost from a row to the end, by the sizes of its bundles; infinite where the rules forbid them. */
  const toEnd = new Float64Array(rows * sizes).fill(Number.POSITIVE_INFINITY);
  const place = (row: number, left: number, right: number): number => (row - 1) * sizes + (left - 1) * most + right - 1;
  const bestAfter = (row: number, left: number, right: number): number => {
    if (row === rows) return 0;
    let best = Number.POSITIVE_INFINITY;
    for (let toLeft = Math.max(1, left - 1); toLeft <= Math.min(most, left + 1); toLeft += 1)
      for (let toRight = Math.max(1, right - 1); toRight <= Math.min(most, right + 1); toRight += 1)
        best = Math.min(best, toEnd[place(row + 1, toLeft, toRight)] ?? best);
    return best;
  };
  for (let row = rows; row >= 1; row -= 1)
    for (let left = 1; left <= most; left += 1)
      for (let right = 1; right <= most && left + right <= finished(row); right += 1)
        toEnd[place(row, left, right)] = costOf(row, left, right) + bestAfter(row, left, right);

  let [left, right] = start;
  const sides: { left: number[]; right: number[] } = { left: [left], right: [right] };
  for (let row = 2; row <= rows; row += 1) {
    const wantedCost = bestAfter(row - 1, left, right);
    // Smaller bundles come first, left before right, so the first that will do is the one to take.
    const next = CHANGES.flatMap((byLeft) => CHANGES.map((byRight) => [left + byLeft, right + byRight] as const)).find(
      ([toLeft, toRight]) =>
        Math.min(toLeft, toRight) >= 1 &&
        Math.max(toLeft, toRight) <= most &&
        toEnd[place(row, toLeft, toRight)] === wantedCost,
    );
    if (!next) break;
    [left, right] = next;
    sides.left.push(left);
    sides.right.push(right);
  }
  const total = toEnd[place(1, start[0], start[1])] ?? Number.POSITIVE_INFINITY;
  return { ok: true, ...sides, differing: Math.floor(total / weight) };
}
