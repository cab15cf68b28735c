import { another } from '../like.ts';
import { OUTLINE_RULES } from '../outline.ts';
import type { Hints } from '../steps.ts';
import { clues } from './clues.ts';
import { make } from './make.ts';
import type { MarkProblem } from './problem.ts';
import { type MarkHintKey, type MarkStep, solution } from './solution.ts';

const isOpening = (problem: MarkProblem): boolean => problem.from <= OUTLINE_RULES.fullWidthRow(problem);

/** The same target on another piece, at the same end of it. */
function workedLike(problem: MarkProblem): MarkProblem | null {
  const { target, openingStep, closingStep } = problem;
  return another(
    problem,
    (seed) => make(seed, 'mixed', { target, openingStep, closingStep }),
    (other) =>
      other.width !== problem.width && other.height !== problem.height && isOpening(other) === isOpening(problem),
  );
}

/** Hints for the cells to be marked. */
export function hints(problem: MarkProblem): Hints<MarkProblem, MarkStep, MarkHintKey> {
  const worked = workedLike(problem);
  return { ...clues(problem), worked: worked && { problem: worked, steps: solution(worked) } };
}
