import type { Chart } from '../solver/chart.ts';
import type { Fit, SideName } from '../solver/piece.ts';
import { type Plan, planPiece } from '../solver/plan.ts';

/** What a small piece takes over from the one that is looked at. */
export interface SmallPlan {
  readonly fit: Fit;
  readonly startSide: SideName;
}

/**
 * A straight piece of few columns on the same bar, for what happens on every bar and is best seen on a few strings.
 *
 * @param most columns, an even number from 2; fewer where the bar doesn't take so many
 * @param height rows, from 1
 */
export function smallPiece({ fit, startSide }: SmallPlan, most: number, height: number, chart?: Chart): Plan {
  const width = chart ? chart.width : Math.max(2, Math.min(most, fit.capacity - (fit.capacity % 2)));
  const plan = planPiece({ width, height, capacity: width, startSide, ...(chart ? { chart } : {}) });
  if (!plan.ok) throw new Error(`a straight piece of ${width} columns can't be planned: ${plan.problem.code}`);
  return plan;
}
