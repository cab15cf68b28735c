import type { Chart } from './chart.ts';
import { checkChart } from './chart-check.ts';
import { isPicture } from './chart-ground.ts';
import { fitPiece } from './fit.ts';
import { bundleSizes, largestClosing } from './outline.ts';
import type { Fit } from './piece.ts';
import type { Plan } from './plan.ts';
import { choiceProblem, type Problem, type Refusal, refuse, wholeNumberProblem } from './problem.ts';
import { CAPACITIES, MAX_BUNDLES, WIDTHS } from './ranges.ts';
import { mounted } from './row-bundles.ts';

/** Plain columns that are tried on each side, at the most. */
const MOST_COLUMNS = 4;
/** Rows of a chart, at the most. */
const MOST_ROWS = 1000;
const LIMITS = { low: 1, high: 1000 } as const;
const SPLITS = ['all', 'answer'] as const;

export interface AdviseInput {
  readonly chart: Chart;
  /** Strings the bar takes, 2 to 400. */
  readonly capacity: number;
  /** The most strands of a side bundle, 2 to 40, default 8; also the greatest closing bundle that is tried. */
  readonly maxBundle?: number | undefined;
  /** How many ways to give, 1 to 1000, default 12. */
  readonly limit?: number | undefined;
  /** Every split that can be made (default), or the fitting sum's own answer for each width alone. */
  readonly splits?: 'all' | 'answer' | undefined;
  /** The most plain columns that are tried on each side, 0 to 4, default 4. */
  readonly mostColumns?: number | undefined;
  /** The only closing bundle that is tried; left out, every one up to `maxBundle`. */
  readonly closingBundle?: number | undefined;
}

/** How much plain ground is laid round a chart. */
export interface Margins {
  /** Plain rows at the ring. */
  readonly rowsAbove: number;
  readonly rowsBelow: number;
  readonly columnsLeft: number;
  readonly columnsRight: number;
}

/** One way to place a chart on a ring, opening and closing by one string a row and side. */
export interface Placement extends Margins {
  readonly fit: Fit;
  /** Columns of both bundles in the last row. */
  readonly closingBundle: number;
  /** Picture cells that fall among the corner cells. */
  readonly lost: number;
  /** Knots of the whole piece. */
  readonly knots: number;
  /** Rows of the whole piece. */
  readonly rows: number;
}

/** For each row, how many picture cells stand in its outermost columns: `at(row, count)`, both from 0. */
interface EdgeSums {
  readonly left: Int32Array;
  readonly right: Int32Array;
  /** Sums a row has. */
  readonly stride: number;
}

function edgeSums(chart: Chart, deepest: number): EdgeSums {
  const { width, height, cells } = chart;
  const picture = Uint8Array.from(chart.palette, (_, index) => Number(isPicture(chart)(index)));
  const stride = deepest + 1;
  const left = new Int32Array(height * stride);
  const right = new Int32Array(height * stride);
  for (let row = 0; row < height; row += 1) {
    for (let count = 1; count <= deepest; count += 1) {
      const at = row * stride + count;
      const [fromLeft, fromRight] = [row * width + count - 1, (row + 1) * width - count];
      const inside = count <= width;
      left[at] = (left[at - 1] ?? 0) + (inside ? (picture[cells[fromLeft] ?? 0] ?? 0) : 0);
      right[at] = (right[at - 1] ?? 0) + (inside ? (picture[cells[fromRight] ?? 0] ?? 0) : 0);
    }
  }
  return { left, right, stride };
}

/** Less picture lost, then fewer knots, fewer rows, more on the bar, further left; the earlier one where all are alike. */
const before = (a: Placement, b: Placement): boolean =>
  (a.lost - b.lost ||
    a.knots - b.knots ||
    a.rows - b.rows ||
    b.fit.onBar - a.fit.onBar ||
    a.columnsLeft - b.columnsLeft) < 0;

/** Every fit of this width, the answer first: level splits, lopsided ones, and the other way with an odd string. */
function fitsOf(width: number, capacity: number, maxBundle: number, splits: 'all' | 'answer'): readonly Fit[] {
  const made = fitPiece({ width, capacity, maxBundle });
  if (splits === 'answer') return made.ok ? [made.fit] : [];
  if (made.ok) return [made.fit, ...made.alternatives];
  return 'alternatives' in made.problem ? made.problem.alternatives : [];
}

/**
 * Ways to place a chart on a ring so that its corners cut off as little of the picture as can be (craft, section 4):
 * every split of every width, with plain rows above (fewer than the larger bundle has columns) and below (fewer than
 * the closing bundle), none to four plain columns on each side, and every closing bundle up to `maxBundle` that the
 * piece can have. All of them are looked at, so nothing better is missed.
 *
 * @returns at most `limit` placements: least picture lost first, then fewest knots, fewest rows, most strings on the
 *   bar, further left. A problem for what is no chart, for figures out of range, and `no-fit` where no placement can
 *   be made.
 * @example
 * adviseOutline({ chart: lantern, capacity: 16 }) // the first option loses 0 cells and adds nothing
 */
export function adviseOutline(
  input: AdviseInput,
): { readonly ok: true; readonly options: readonly Placement[] } | Refusal<Problem> {
  const {
    chart,
    capacity,
    maxBundle = 8,
    limit = 12,
    splits = 'all',
    mostColumns = MOST_COLUMNS,
    closingBundle,
  } = input ?? {};
  const bad =
    checkChart(chart) ??
    wholeNumberProblem('capacity', capacity, CAPACITIES) ??
    wholeNumberProblem('maxBundle', maxBundle, MAX_BUNDLES) ??
    wholeNumberProblem('limit', limit, LIMITS) ??
    choiceProblem('splits', splits, SPLITS) ??
    wholeNumberProblem('mostColumns', mostColumns, { low: 0, high: MOST_COLUMNS }) ??
    (closingBundle === undefined ? null : wholeNumberProblem('closingBundle', closingBundle, { low: 1, high: 40 }));
  if (bad) return refuse(bad);

  const closings = { least: closingBundle ?? 1, most: closingBundle ?? maxBundle };
  const sums = edgeSums(chart, Math.max(maxBundle, closingBundle ?? 1));
  const best: Placement[] = [];
  const keep = (found: Placement): void => {
    const last = best[best.length - 1];
    if (best.length >= limit && last && !before(found, last)) return;
    let at = best.length;
    for (let other = best[at - 1]; other && before(found, other); other = best[at - 1]) at -= 1;
    best.splice(at, 0, found);
    if (best.length > limit) best.pop();
  };

  const fits = new Map<number, readonly Fit[]>();
  for (let columnsLeft = 0; columnsLeft <= mostColumns; columnsLeft += 1) {
    for (let columnsRight = 0; columnsRight <= mostColumns; columnsRight += 1) {
      const width = chart.width + columnsLeft + columnsRight;
      if (width > WIDTHS.high) continue;
      const those = fits.get(width) ?? fitsOf(width, capacity, maxBundle, splits);
      fits.set(width, those);
      for (const fit of those) placeWith(fit, { chart, sums, columnsLeft, columnsRight, closings, keep });
    }
  }
  return best.length > 0
    ? { ok: true, options: best }
    : refuse({ code: 'no-fit', values: { width: chart.width, capacity, maxBundle } });
}

interface Placing {
  readonly chart: Chart;
  readonly sums: EdgeSums;
  readonly columnsLeft: number;
  readonly columnsRight: number;
  readonly closings: { readonly least: number; readonly most: number };
  readonly keep: (found: Placement) => void;
}

function placeWith(fit: Fit, { chart, sums, columnsLeft, columnsRight, closings, keep }: Placing): void {
  const [left, right] = [mounted(fit.left.columns), mounted(fit.right.columns)];
  const opening = Math.max(left, right);
  const greatest = Math.min(closings.most, largestClosing(fit));
  const cellsOf = (sum: Int32Array, row: number, count: number): number =>
    count <= 0 || row < 0 || row >= chart.height ? 0 : (sum[row * sums.stride + Math.min(count, sums.stride - 1)] ?? 0);
  for (let closing = closings.least; closing <= greatest; closing += 1) {
    for (let rowsAbove = 0; rowsAbove < opening; rowsAbove += 1) {
      for (let rowsBelow = 0; rowsBelow < closing; rowsBelow += 1) {
        const rows = chart.height + rowsAbove + rowsBelow;
        if (rows > MOST_ROWS) continue;
        // Whether so few rows can hold the opening and this closing is a rule of the outline; long ones always can.
        const short = rows < opening + closing;
        if (short && !bundleSizes({ fit, height: rows, closingBundle: closing }).ok) continue;
        let [lost, corners] = [0, 0];
        for (let row = 1; row <= rows; row += 1) {
          // Between opening and closing no row has a corner.
          if (row >= opening && row <= rows - closing) row = rows - closing + 1;
          const taken = closing - (rows - row);
          const leftCorner = Math.max(1, left - row + 1, taken) - 1;
          const rightCorner = Math.max(1, right - row + 1, taken) - 1;
          corners += leftCorner + rightCorner;
          const at = row - 1 - rowsAbove;
          lost +=
            cellsOf(sums.left, at, leftCorner - columnsLeft) + cellsOf(sums.right, at, rightCorner - columnsRight);
        }
        const knots = rows * fit.width - corners;
        keep({ fit, rowsAbove, rowsBelow, columnsLeft, columnsRight, closingBundle: closing, lost, knots, rows });
      }
    }
  }
}

/**
 * The best way to save the picture of a plan by plain rows alone: same ring, same width, same closing. Least picture
 * lost first, then fewest knots.
 *
 * @returns null where the plan has no chart, or doesn't open and close by one string in every row
 */
export function advisePlan({
  fit,
  rows,
  outline,
  chart,
}: Pick<Plan, 'fit' | 'rows' | 'outline' | 'chart'>): Placement | null {
  if (!chart || fit.oddMethod === 'carried-end') return null;
  const closingBundle = rows.at(-1)?.leftBundle ?? 1;
  const usual = bundleSizes({ fit, height: rows.length, closingBundle });
  const same = (side: 'left' | 'right'): boolean => usual[side].join() === outline[side].join();
  if (!usual.ok || !same('left') || !same('right')) return null;
  const { capacity, maxBundle } = fit;
  const advised = adviseOutline({
    chart,
    capacity,
    maxBundle,
    closingBundle,
    splits: 'answer',
    mostColumns: 0,
    limit: 1,
  });
  return advised.ok ? (advised.options[0] ?? null) : null;
}

/** The picture cells of a plan that fall among its corner cells, as row and column from 1; none where it has no chart. */
export function lostCells({
  fit,
  rows,
  chart,
}: Pick<Plan, 'fit' | 'rows' | 'chart'>): (readonly [row: number, column: number])[] {
  if (!chart) return [];
  const inPicture = isPicture(chart);
  return rows.flatMap(({ row, firstColumn, lastColumn }) =>
    Array.from({ length: fit.width }, (_, index) => index + 1)
      .filter((column) => column < firstColumn || column > lastColumn)
      .filter((column) => inPicture(chart.cells[(row - 1) * fit.width + column - 1] ?? -1))
      .map((column) => [row, column] as const),
  );
}

/** How many picture cells of a plan fall among its corner cells; null where it has no chart. */
export const pictureLost = (plan: Pick<Plan, 'fit' | 'rows' | 'chart'>): number | null =>
  plan.chart ? lostCells(plan).length : null;
