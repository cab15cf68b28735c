import { conclude } from '../conclude.ts';
import type { Judged } from '../contract.ts';
import type { Reading } from '../read.ts';
import type { OrderAnswer, OrderField, OrderProblem, OrderResult, OrderStepId } from './problem.ts';
import { broken, orderedFor } from './sequence.ts';

/** Reads an order: all the steps of the problem, each once. */
export function readOrder(
  problem: OrderProblem,
  answer: OrderAnswer | null | undefined,
): Reading<readonly OrderStepId[]> {
  const listed: unknown = typeof answer === 'object' && answer !== null ? answer.order : null;
  if (listed === null || listed === undefined) return { verdict: 'missing' };
  if (!Array.isArray(listed)) return { verdict: 'unreadable', reason: 'not-on-the-list' };
  const order = listed.flatMap((step) => problem.steps.filter((known) => known === step));
  const whole = order.length === problem.steps.length && listed.length === order.length;
  return whole && new Set(order).size === order.length
    ? { verdict: 'read', value: order }
    : { verdict: 'unreadable', reason: 'not-on-the-list' };
}

/**
 * Judges an order step by step, as it stands: a step is wrong that has to wait for one which stands after it. Any
 * order that keeps the rules of the craft is right.
 */
export function judge(problem: OrderProblem, answer: OrderAnswer): Judged<OrderField, OrderResult> {
  const reading = readOrder(problem, answer);
  if (reading.verdict !== 'read') {
    const field: OrderField = `step-${problem.steps[0] ?? 'cut'}`;
    return conclude<OrderField, OrderResult>([field], { [field]: reading }, {});
  }
  const order = reading.value;
  const breaks = broken(order, orderedFor(problem.of, problem).before);
  const results = order.map((step): [OrderField, OrderResult] => {
    const waits = breaks.find(([, then]) => then === step);
    return [`step-${step}`, waits ? { verdict: 'wrong', first: waits[0] } : { verdict: 'right' }];
  });
  return conclude<OrderField, OrderResult>(
    results.map(([field]) => field),
    Object.fromEntries(results),
    {},
  );
}
