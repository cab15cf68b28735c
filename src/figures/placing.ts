import { advisePlan } from '../solver/advise.ts';
import { placedPlan } from '../solver/place-chart.ts';
import type { Plan } from '../solver/plan.ts';
import { type Drawing, type Figure, step } from './drawing.ts';
import { type OutlineKey, type OutlineOptions, outline } from './outline.ts';

export interface PlacingOptions {
  /** With the plain rows that save most of the picture; as the chart stands when left out. */
  readonly advised?: boolean | undefined;
  readonly across?: number | undefined;
}

export type PlacingKey = OutlineKey | 'placing-nothing' | 'placing-no-picture';

/** The plan as it stands or with plain rows added, and how its outline is drawn. */
function placed(plan: Plan, { advised = false, across }: PlacingOptions): { plan: Plan; options: OutlineOptions } {
  const advice = advised ? advisePlan(plan) : null;
  const moved = advice && plan.chart ? placedPlan(plan, plan.chart, advice) : null;
  return moved?.ok
    ? { plan: moved, options: { lost: true, added: advice ?? undefined, across } }
    : { plan, options: { lost: true, across } };
}

/** The chart with its outline and what of the picture falls into the corners; or the same with plain rows added. */
export const placing: Figure<'placing', PlacingOptions, PlacingKey, Plan> = {
  name: 'placing',
  draw(plan, asked = {}): Drawing<PlacingKey> {
    const shown = placed(plan, asked);
    return outline.draw(shown.plan, shown.options);
  },
  describe(plan, asked = {}) {
    const shown = placed(plan, asked);
    const steps = outline.describe(shown.plan, shown.options);
    if (!plan.chart) return [...steps, step<PlacingKey>('placing-no-picture')];
    const nothing = asked.advised && shown.plan.rows.length === plan.rows.length;
    return nothing ? [...steps, step<PlacingKey>('placing-nothing')] : steps;
  },
};
