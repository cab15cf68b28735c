import { type Plan, type PlanInput, planPiece } from '../solver/plan.ts';
import { loadOwnFigures } from '../store/own-figures.ts';
import { readOwnChart } from './own-chart.ts';

/** The learner's plan with their own chart, where it can be had and is of the size they entered; else without. */
export async function ownPlan(input: PlanInput): Promise<Plan | null> {
  const wanted = loadOwnFigures().value.chart;
  const read = wanted && (await readOwnChart(wanted).catch(() => null));
  const drawn =
    read?.ok && read.chart.width === input.width && read.chart.height === input.height ? read.chart : undefined;
  const planned = planPiece({ ...input, chart: drawn });
  return planned.ok ? planned : null;
}
