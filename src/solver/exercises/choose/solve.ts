import { picksOf } from './picks.ts';
import type { ChooseProblem, ChooseSolution } from './problem.ts';

/**
 * The right choice.
 *
 * @example solve(the knots of row 2, which begins on the right) // { choice: 'backward' }
 */
export const solve = (problem: ChooseProblem): ChooseSolution => ({ choice: picksOf(problem)[0] });
