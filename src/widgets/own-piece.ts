import type { Chart } from '../solver/chart.ts';
import { blankOf } from '../solver/chart-ground.ts';
import type { Fit } from '../solver/piece.ts';
import { type Plan, type PlanInput, planFit, type planPiece } from '../solver/plan.ts';
import type { Problem } from '../solver/problem.ts';
import { type OwnFigures, splitName } from '../store/own-figures.ts';

type Made = ReturnType<typeof planPiece>;

/** A chart with blank cells has a shape of its own, which the outline can follow instead of the learner's steps. */
export const hasShape = (chart: Chart | null): boolean => chart !== null && blankOf(chart) !== null;

/** What a learner's chart brings to the plan of their piece. */
export const drawnBy = (
  chart: Chart | null,
  { follows }: Pick<OwnFigures, 'follows'>,
): Pick<PlanInput, 'chart' | 'followChart'> => ({
  chart: chart ?? undefined,
  followChart: hasShape(chart) && follows === 'chart',
});

/** Other splits than the answer's, where there is one and where there is none. */
export const splitsOf = (answer: Made): readonly Fit[] =>
  answer.ok ? answer.alternatives : ((answer.problem as { alternatives?: readonly Fit[] }).alternatives ?? []);

/** The split that a learner chose, as long as their figures allow it; null for the answer's. */
export const splitOf = (splits: readonly Fit[], { split }: Pick<OwnFigures, 'split'>): Fit | null =>
  splits.find((fit) => splitName(fit) === split) ?? null;

/** The answer's plan hung another way. */
export function planSplit(answer: Made, input: PlanInput, split: Fit): Made {
  const { working = [] } = answer.ok ? answer : (answer.problem as Problem & Partial<Pick<Plan, 'working'>>);
  const { startSide = 'left' } = input;
  return planFit({ ...input, fit: split, alternatives: splitsOf(answer), working, startSide });
}
