import { another } from '../like.ts';
import type { Hints } from '../steps.ts';
import { clues } from './clues.ts';
import { make } from './make.ts';
import type { ChooseProblem } from './problem.ts';
import { type ChooseHintKey, type ChooseStep, solution } from './solution.ts';

/** The same question of another piece and, where there is one, of another row. */
const workedLike = (problem: ChooseProblem): ChooseProblem | null =>
  another(
    problem,
    (seed) => make(seed, 'mixed', { ask: problem.ask }),
    (other) => other.width !== problem.width && (other.row !== problem.row || problem.row === 1),
  );

/** Hints for the choice. */
export function hints(problem: ChooseProblem): Hints<ChooseProblem, ChooseStep, ChooseHintKey> {
  const worked = workedLike(problem);
  return { ...clues(problem), worked: worked && { problem: worked, steps: solution(worked) } };
}
