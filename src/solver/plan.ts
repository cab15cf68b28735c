import type { Chart } from './chart.ts';
import { type Finish, finishSteps } from './finish.ts';
import { type FitInput, type FitResult, fitPiece } from './fit.ts';
import { bundleSizes, type Outline, type OutlineInput, outlineOf } from './outline.ts';
import type { Fit, RowPlan, SideName } from './piece.ts';
import type { Problem, Refusal } from './problem.ts';
import { planRows } from './rows.ts';
import { silhouette, wantedShape } from './silhouette.ts';

export interface PlanInput extends FitInput, Omit<OutlineInput, 'fit'> {
  /** With a chart, its size must be `width` × `height`. */
  readonly chart?: Chart | undefined;
  /**
   * Whether the outline follows the blank cells of the chart, as near as it can; steps and closing bundle are then
   * passed over. Without a chart it changes nothing.
   */
  readonly followChart?: boolean | undefined;
}

/** Everything about a piece that follows from ring and chart. */
export interface Plan {
  readonly ok: true;
  readonly fit: Fit;
  readonly alternatives: readonly Fit[];
  readonly working: Extract<FitResult, { ok: true }>['working'];
  readonly outline: Outline;
  readonly rows: readonly RowPlan[];
  readonly finish: Finish;
  readonly startSide: SideName;
  readonly chart: Chart | null;
}

/**
 * A whole piece in one call: fit, outline, rows and finish, each from its own function.
 *
 * @returns the plan, or the first problem met. A piece that never reaches its full width is planned all the
 *   same; `outline.problem` says so.
 * @example
 * planPiece({ width: 12, height: 14, capacity: 8 }) // 14 rows, 164 knots
 */
export function planPiece(input: PlanInput): Plan | Refusal<Problem> {
  const { startSide = 'left', chart } = input ?? {};
  const fitted = fitPiece(input);
  if (!fitted.ok) return fitted;
  const { fit, alternatives, working } = fitted;
  return planFit({ ...input, fit, alternatives, working, startSide, chart });
}

/** As `planPiece`, for a fit that was chosen already: one of the alternatives, say. */
export function planFit(
  input: OutlineInput &
    Pick<PlanInput, 'chart' | 'followChart'> &
    Pick<Plan, 'fit' | 'alternatives' | 'working' | 'startSide'>,
): Plan | Refusal<Problem> {
  const { fit, alternatives, working, startSide, chart, followChart = false } = input;
  const followed =
    followChart && chart ? silhouette({ fit, wanted: wantedShape(chart), maxBundle: fit.maxBundle }) : null;
  if (followed && !followed.ok) return followed;
  const outline = followed ? outlineOf(followed) : bundleSizes(input);
  if (!outline.ok) return { ok: false, problem: outline.problem ?? { code: 'no-rows', values: {} } };
  const rows = planRows({ fit, bundles: outline, startSide, chart });
  if (!Array.isArray(rows)) return rows as Refusal;
  const finish = finishSteps({ fit, bundles: outline, startSide });
  if (!finish.ok) return finish;
  return { ok: true, fit, alternatives, working, outline, rows, finish, startSide, chart: chart ?? null };
}
