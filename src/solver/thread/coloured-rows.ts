import type { Chart } from '../chart.ts';
import type { Bundles, Fit, RowPlan } from '../piece.ts';
import type { Refusal } from '../problem.ts';
import { planRows } from '../rows.ts';

export interface TiedChart {
  readonly fit: Fit;
  readonly bundles: Bundles;
  readonly rows: readonly RowPlan[];
  readonly chart: Chart;
}

/**
 * The rows with colours on their runs: as they are, or planned again where they were planned without a chart.
 *
 * @returns the rows; or `planRows`' problem, when chart or bundles are none.
 */
export function withColours({ fit, bundles, rows, chart }: TiedChart): readonly RowPlan[] | Refusal {
  const first = rows[0];
  if (first?.runs[0]?.colour !== undefined) return rows;
  return planRows({ fit, bundles, chart, startSide: first?.direction === 'leftward' ? 'right' : 'left' });
}
