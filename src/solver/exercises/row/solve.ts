import { actsBy, HABITS } from './habits.ts';
import type { RowProblem, RowSolution } from './problem.ts';

/**
 * The row as a maker ties it; other orders are right as well, and `judge` takes them.
 *
 * @example solve({ kind: 'row', width: 8, row: 2, direction: 'leftward', before: [2, 2], change: 'let-out' }).acts
 * // ['let-out', 'forward-backward', 'backward', 'backward', …]
 */
export const solve = (problem: RowProblem): RowSolution => ({ acts: actsBy(HABITS, problem).map(({ act }) => act) });
