import { another } from '../like.ts';
import type { Hints } from '../steps.ts';
import { clues } from './clues.ts';
import { make } from './make.ts';
import type { SpotField, SpotProblem } from './problem.ts';
import { type SpotHintKey, type SpotStep, solution } from './solution.ts';
import { solve } from './solve.ts';

/** A sheet of the same sort with another fault: the same one would tell the answer. */
function workedLike(problem: SpotProblem): SpotProblem | null {
  const { fault } = solve(problem);
  return another(
    problem,
    (seed) => make(seed, 'mixed', { in: problem.in }),
    (other) => solve(other).fault !== fault && other.width !== problem.width,
  );
}

/** Hints for the place or for the name of the fault. */
export function hints(problem: SpotProblem, field: SpotField | null = null): Hints<SpotProblem, SpotStep, SpotHintKey> {
  const worked = workedLike(problem);
  return { ...clues(problem, field), worked: worked && { problem: worked, steps: solution(worked) } };
}
