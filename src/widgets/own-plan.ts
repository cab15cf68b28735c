import { type Plan, type PlanInput, planPiece } from '../solver/plan.ts';
import { loadOwnFigures } from '../store/own-figures.ts';
import { readOwnChart } from './own-chart.ts';
import { drawnBy, planSplit, splitOf, splitsOf } from './own-piece.ts';

/**
 * The learner's plan, the same wherever they meet it: with their own chart, where it can be had and is of the size they
 * entered, in its shape if they did not choose steps, and with their own split.
 */
export async function ownPlan(input: PlanInput): Promise<Plan | null> {
  const own = loadOwnFigures().value;
  const read = own.chart && (await readOwnChart(own.chart).catch(() => null));
  const chart = read?.ok && read.chart.width === input.width && read.chart.height === input.height ? read.chart : null;
  const wanted = { ...input, ...drawnBy(chart, own) };
  const answer = planPiece(wanted);
  const split = splitOf(splitsOf(answer), own);
  const planned = split ? planSplit(answer, wanted, split) : answer;
  return planned.ok ? planned : null;
}
