import type { OrderProblem, OrderSolution } from './problem.ts';
import { orderedFor } from './sequence.ts';

/**
 * One right order; others may be right as well, where steps do not depend on each other.
 *
 * @example solve(letting out at the start of row 2) // { order: ['free', 'turn', 'freed-knot', 'go-on'] }
 */
export const solve = (problem: OrderProblem): OrderSolution => ({ order: orderedFor(problem.of, problem).steps });
