import { orderFacts } from '../../solver/exercises/order/facts.ts';
import type { OrderProblem, OrderResult, OrderStepId } from '../../solver/exercises/order/problem.ts';
import { orderStepWords } from './order.ts';
import { ORDER_REASONS } from './order-reasons.ts';

/** What is said beside a step of an order: which step it waits for, and why; empty where it stands well. */
export function orderVerdictWords(problem: OrderProblem, step: OrderStepId, { verdict, first }: OrderResult): string {
  if (verdict !== 'wrong' || first === undefined) return '';
  const before = orderStepWords(problem.of, first, orderFacts(problem)).replace(/\.$/, '');
  return `Too early: “${before}” comes first. ${ORDER_REASONS[problem.of][`${first} ${step}`] ?? ''}`.trim();
}
