import { another } from '../like.ts';
import type { Hints } from '../steps.ts';
import { clues } from './clues.ts';
import { make } from './make.ts';
import type { SumField, SumProblem } from './problem.ts';
import { type SumHintKey, type SumStep, solution } from './solution.ts';
import { workOut } from './solve.ts';

/** What makes two sums alike for a learner: whether all fits, a place stays idle, two are borrowed, and the odd string. */
const shapeOf = (problem: SumProblem): string => {
  const f = workOut(problem);
  const fits = problem.width <= problem.capacity;
  return [fits, f.places < problem.capacity && !fits, f.borrowed, problem.oddMethod].join();
};

/** A sum of the same shape with other figures. */
function workedLike(problem: SumProblem): SumProblem | null {
  const { fields, startSide } = problem;
  const oddMethod = problem.oddMethod ?? undefined;
  const shape = shapeOf(problem);
  return another(
    problem,
    (seed) => make(seed, 'mixed', { fields, startSide, oddMethod }),
    (other) => shapeOf(other) === shape && other.width !== problem.width && other.capacity !== problem.capacity,
  );
}

/** Hints for one figure, or for the sum as a whole. */
export function hints(problem: SumProblem, field: SumField | null = null): Hints<SumProblem, SumStep, SumHintKey> {
  const worked = workedLike(problem);
  return { ...clues(problem, field), worked: worked && { problem: worked, steps: solution(worked) } };
}
