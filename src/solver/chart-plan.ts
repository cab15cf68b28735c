import type { Chart } from './chart.ts';
import { blankOf } from './chart-ground.ts';
import { finishSteps } from './finish.ts';
import { fitPiece } from './fit.ts';
import { bundleSizes, type Outline, outlineProblem } from './outline.ts';
import type { Bundles, Fit, SideName } from './piece.ts';
import type { Plan } from './plan.ts';
import { type Problem, type Refusal, refuse } from './problem.ts';
import { planRows } from './rows.ts';

export interface ChartPlanInput {
  readonly chart: Chart;
  /** Knotted columns that the bar takes. */
  readonly capacity: number;
  readonly startSide?: SideName | undefined;
}

/** The bundles that the blank cells of a chart ask for: all columns outside a row's first and last cell are held in. */
function bundlesOfBlanks({ width, height, cells }: Chart, blank: number): Bundles {
  const rows = Array.from({ length: height }, (_, above) => cells.subarray(above * width, (above + 1) * width));
  return {
    left: rows.map((row) => row.findIndex((colour) => colour !== blank) + 1),
    right: rows.map((row) => width - row.findLastIndex((colour) => colour !== blank)),
  };
}

/** The outline of a chart: as its blank cells draw it, or the ordinary one where it has none. */
function outlineOf(chart: Chart, fit: Fit): Outline {
  const blank = blankOf(chart);
  if (blank === null) return bundleSizes({ fit, height: chart.height });
  const bundles = bundlesOfBlanks(chart, blank);
  const full = bundles.left.map((left, i) => left === 1 && bundles.right[i] === 1);
  const first = full.indexOf(true);
  return {
    ok: true,
    ...bundles,
    fullWidthRows: full.filter(Boolean).length,
    firstFullRow: first < 0 ? null : first + 1,
    firstClosingRow: null,
  };
}

/**
 * A whole piece from a chart alone and the bar it was drawn for, in the shape that the chart gives it.
 *
 * @param input a chart of 2 columns or more; a capacity as `fitPiece` takes it
 * @returns the plan; or the first problem met, among them that blank cells draw an outline which can't be tied
 * @example
 * planChart({ chart: lantern, capacity: 16 }) // as planPiece for 26 × 32 on 16
 */
export function planChart({ chart, capacity, startSide = 'left' }: ChartPlanInput): Plan | Refusal<Problem> {
  const fitted = fitPiece({ width: chart.width, capacity });
  if (!fitted.ok) return fitted;
  const { fit, alternatives, working } = fitted;
  const outline = outlineOf(chart, fit);
  if (!outline.ok) return refuse(outline.problem ?? { code: 'no-rows', values: {} });
  const bad = outlineProblem(fit, outline);
  if (bad) return refuse(bad);
  const rows = planRows({ fit, bundles: outline, startSide, chart });
  if (!Array.isArray(rows)) return rows as Refusal;
  const finish = finishSteps({ fit, bundles: outline, startSide });
  if (!finish.ok) return finish;
  return { ok: true, fit, alternatives, working, outline, rows, finish, startSide, chart };
}
