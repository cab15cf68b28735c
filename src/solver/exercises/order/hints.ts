import { another } from '../like.ts';
import type { Hints } from '../steps.ts';
import { clues } from './clues.ts';
import { make } from './make.ts';
import type { OrderProblem } from './problem.ts';
import { type OrderHintKey, type OrderStep, solution } from './solution.ts';

/** The same sequence for another piece. */
const workedLike = (problem: OrderProblem): OrderProblem | null =>
  another(
    problem,
    (seed) => make(seed, 'mixed', { of: problem.of }),
    (other) => other.width !== problem.width && (other.row !== problem.row || problem.row === 1),
  );

/** Hints for the sequence. */
export function hints(problem: OrderProblem): Hints<OrderProblem, OrderStep, OrderHintKey> {
  const worked = workedLike(problem);
  return { ...clues(problem), worked: worked && { problem: worked, steps: solution(worked) } };
}
