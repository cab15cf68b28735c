import type { WorkedStep } from '../steps.ts';
import { orderFacts } from './facts.ts';
import type { OrderField, OrderProblem, OrderStepId, Sequence } from './problem.ts';
import { orderedFor } from './sequence.ts';

export type OrderStepKey = `order:${Sequence}`;
export type OrderHintKey = `look-${Sequence}` | `do-${Sequence}`;
export type OrderStep = WorkedStep<OrderStepKey, OrderField>;

/** The steps in order, and for each what it waits for: `step` and `after` name them, `after` empty for a first step. */
export function solution(problem: OrderProblem): OrderStep[] {
  const { steps, before } = orderedFor(problem.of, problem);
  const facts = orderFacts(problem);
  return steps.map((step): OrderStep => {
    const after: OrderStepId | '' = before.find(([, then]) => then === step)?.[0] ?? '';
    return { key: `order:${problem.of}`, values: { ...facts, step, after }, gives: `step-${step}` };
  });
}
