import type { Chart } from './chart.ts';
import { checkChart } from './chart-check.ts';
import { fitProblem } from './fit-check.ts';
import { outlineProblem } from './outline.ts';
import type { Bundles, Fit, Knot, RowPlan, Run, SideName } from './piece.ts';
import { choiceProblem, type Refusal, refuse } from './problem.ts';
import { SIDES } from './ranges.ts';
import { directionOf, moveAtStart } from './row-start.ts';

export interface RowsInput {
  readonly fit: Fit;
  /** Any outline that obeys the craft, section 4. */
  readonly bundles: Bundles;
  /** The side on which row 1 begins; it never mirrors the chart. */
  readonly startSide?: SideName | undefined;
  /** With a chart the runs carry colours; it must be as wide as the fit and as high as the outline. */
  readonly chart?: Chart | undefined;
}

/** Runs longer than this are too rare to be worth a place in the table. */
const LONGEST_SHARED = 16;

/**
 * The `columns` of runs, one pair for all runs of a piece that lie alike. Two small objects for each run are most of
 * what a big plan keeps; past a few hundred thousand cells moving them about costs more time than the planning.
 */
class ColumnPairs {
  readonly #pairs: (readonly [from: number, to: number] | undefined)[];
  readonly #step: 1 | -1;

  constructor(width: number, step: 1 | -1) {
    this.#pairs = new Array(width * LONGEST_SHARED);
    this.#step = step;
  }

  /** The pair of a run of `count` knots from a column on, both from 1. */
  of(from: number, count: number): readonly [from: number, to: number] {
    const to = from + (count - 1) * this.#step;
    if (count > LONGEST_SHARED) return [from, to];
    const at = (from - 1) * LONGEST_SHARED + count - 1;
    const known = this.#pairs[at];
    if (known) return known;
    const made = [from, to] as const;
    this.#pairs[at] = made;
    return made;
  }
}

/**
 * One row, from its bundles (craft, section 5). The edges are tied by a turning knot while they are bundles;
 * a last string left at the starting edge gets one too, since the leading string still lies on its inner side.
 */
function runsOf(
  width: number,
  leftBundle: number,
  rightBundle: number,
  rightward: boolean,
  turnAtStart: boolean,
  cells: Uint8Array | null,
  offset: number,
  pairs: ColumnPairs,
): Run[] {
  const runs: Run[] = [];
  const step = rightward ? 1 : -1;
  const plain: Knot = rightward ? 'forward' : 'backward';
  const startTurn: Knot = rightward ? 'backward-forward' : 'forward-backward';
  const endTurn: Knot = rightward ? 'forward-backward' : 'backward-forward';
  const leftColumn = leftBundle;
  const rightColumn = width - rightBundle + 1;
  let column = rightward ? leftColumn : rightColumn;
  let last = rightward ? rightColumn : leftColumn;
  const endBundle = rightward ? rightBundle : leftBundle;
  const startBundle = rightward ? leftBundle : rightBundle;

  if (turnAtStart) {
    const strands = startBundle;
    if (cells)
      runs.push({
        knot: startTurn,
        columns: pairs.of(column, 1),
        count: 1,
        strands,
        colour: cells[offset + column - 1] ?? 0,
      });
    else runs.push({ knot: startTurn, columns: pairs.of(column, 1), count: 1, strands });
    column += step;
  }
  const turnAtEnd = endBundle >= 2;
  if (turnAtEnd) last -= step;
  const plainKnots = (last - column) * step + 1;
  if (plainKnots > 0) {
    if (cells) {
      let from = column;
      let colour = cells[offset + column - 1] ?? 0;
      for (let at = column + step, left = plainKnots - 1; left > 0; at += step, left -= 1) {
        const next = cells[offset + at - 1] ?? 0;
        if (next === colour) continue;
        const count = (at - from) * step;
        runs.push({ knot: plain, columns: pairs.of(from, count), count, strands: 1, colour });
        from = at;
        colour = next;
      }
      const count = (last - from) * step + 1;
      runs.push({ knot: plain, columns: pairs.of(from, count), count, strands: 1, colour });
    } else runs.push({ knot: plain, columns: pairs.of(column, plainKnots), count: plainKnots, strands: 1 });
  }
  if (turnAtEnd) {
    const at = last + step;
    if (cells)
      runs.push({
        knot: endTurn,
        columns: pairs.of(at, 1),
        count: 1,
        strands: endBundle,
        colour: cells[offset + at - 1] ?? 0,
      });
    else runs.push({ knot: endTurn, columns: pairs.of(at, 1), count: 1, strands: endBundle });
  }
  return runs;
}

/**
 * The whole piece row by row: direction, bundles, the move before the first knot, and the knots in tying order.
 *
 * @returns one plan per row; or a problem, when the outline breaks a rule of the craft, section 4, or the chart
 *   is not of the piece's size.
 */
export function planRows(input: RowsInput): RowPlan[] | Refusal {
  const { fit, bundles, startSide = 'left', chart } = input ?? {};
  const bad =
    fitProblem(fit) ??
    choiceProblem('startSide', startSide, SIDES) ??
    outlineProblem(fit, bundles) ??
    (chart === undefined || chart === null ? null : checkChart(chart));
  if (bad) return refuse(bad);
  const { left, right } = bundles;
  const { width } = fit;
  if (chart && (chart.width !== width || chart.height !== left.length))
    return refuse({
      code: 'chart-size-differs',
      field: 'chart',
      values: { chartWidth: chart.width, chartHeight: chart.height, width, height: left.length },
    });

  const rows: RowPlan[] = [];
  const pairsRightward = new ColumnPairs(width, 1);
  const pairsLeftward = new ColumnPairs(width, -1);
  let leftBefore = left[0] ?? 1;
  let rightBefore = right[0] ?? 1;
  for (let index = 0; index < left.length; index += 1) {
    const leftBundle = left[index] ?? 1;
    const rightBundle = right[index] ?? 1;
    const direction = directionOf(index + 1, startSide);
    const rightward = direction === 'rightward';
    const before = rightward ? leftBefore : rightBefore;
    const now = rightward ? leftBundle : rightBundle;
    const startMove = moveAtStart(before, now);
    rows.push({
      row: index + 1,
      direction,
      leftBundle,
      rightBundle,
      firstColumn: leftBundle,
      lastColumn: width - rightBundle + 1,
      knots: width - rightBundle + 1 - leftBundle + 1,
      startMove,
      // A bundle, or the one string left of it: the leading string lies on its inner side.
      runs: runsOf(
        width,
        leftBundle,
        rightBundle,
        rightward,
        now >= 2 || startMove === 'let-out',
        chart ? chart.cells : null,
        index * width,
        rightward ? pairsRightward : pairsLeftward,
      ),
    });
    leftBefore = leftBundle;
    rightBefore = rightBundle;
  }
  return rows;
}
