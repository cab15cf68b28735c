import { type Facts, factsOf } from '../whole-piece.ts';
import type { OrderProblem } from './problem.ts';

/** The figures that the steps are told in, and how many singles there are to gather. */
export function orderFacts(problem: Omit<OrderProblem, 'steps'>): Facts {
  const singles = problem.width - problem.closing[0] - problem.closing[1];
  const middle = singles % 2 === 0 ? 2 : 3;
  return {
    ...factsOf(problem),
    core: problem.width - 2,
    singles,
    middle,
    perSide: Math.max(0, (singles - middle) / 2),
  };
}
