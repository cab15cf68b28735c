import type { Faded } from '../contract.ts';
import type { OrderField, OrderProblem, OrderSolution } from './problem.ts';
import { solve } from './solve.ts';

/** The half-worked form: all steps stand in order but the one that was missed, or the last, which has to be put in. */
export function fade(
  problem: OrderProblem,
  lastMissed: OrderField | null = null,
): Faded<Partial<OrderSolution>, OrderField> {
  const { order } = solve(problem);
  const open = order.find((step) => `step-${step}` === lastMissed) ?? order.at(-1);
  return { given: { order: order.filter((step) => step !== open) }, open: open === undefined ? [] : [`step-${open}`] };
}
