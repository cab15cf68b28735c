import type { Margins } from './advise.ts';
import type { Chart } from './chart.ts';
import { groundOf } from './chart-ground.ts';
import { type Plan, planPiece } from './plan.ts';
import type { Refusal } from './problem.ts';
import { mounted } from './row-bundles.ts';

/**
 * A chart with plain ground laid round it, row 1 still at the ring.
 *
 * @param margins rows and columns to add, whole numbers from 0; the colour is the chart's own ground
 * @example placeChart(lantern, { rowsAbove: 2, rowsBelow: 0, columnsLeft: 0, columnsRight: 0 }).height // 34
 */
export function placeChart(chart: Chart, margins: Margins): Chart {
  const { rowsAbove, rowsBelow, columnsLeft, columnsRight } = margins;
  const width = chart.width + columnsLeft + columnsRight;
  const height = chart.height + rowsAbove + rowsBelow;
  const cells = new Uint8Array(width * height).fill(groundOf(chart));
  for (let row = 0; row < chart.height; row += 1)
    cells.set(
      chart.cells.subarray(row * chart.width, (row + 1) * chart.width),
      (row + rowsAbove) * width + columnsLeft,
    );
  const ground = groundOf(chart);
  // The ground of a wider rim could be another colour, so it is named.
  const palette = chart.palette.map((entry, index) => (index === ground ? { ...entry, ground: true as const } : entry));
  return { ...chart, width, height, palette, cells };
}

/**
 * The plan of a chart with plain ground laid round it, on the same ring and in the same ways of working.
 *
 * @returns the plan; or the problem, where so wide a piece can't be hung from this bar. Steps of more than one row are
 *   not kept.
 */
export function placedPlan(plan: Plan, chart: Chart, margins: Margins): Plan | Refusal {
  const placed = placeChart(chart, margins);
  const { fit, rows, startSide } = plan;
  const last = rows.at(-1);
  const asMounted = last?.leftBundle === mounted(fit.left.columns) && last.rightBundle === mounted(fit.right.columns);
  return planPiece({
    width: placed.width,
    height: placed.height,
    capacity: fit.capacity,
    maxBundle: fit.maxBundle,
    oddMethod: fit.oddMethod ?? undefined,
    startSide,
    closingBundle: asMounted ? undefined : last?.leftBundle,
    chart: placed,
  });
}
