import type { Faded } from '../contract.ts';
import type { MarkField, MarkProblem, MarkSolution } from './problem.ts';
import { solve } from './solve.ts';

/**
 * The half-worked form: the cells of every row are marked but of the one the learner missed last; of the last
 * row that has any where none of these was missed.
 */
export function fade(problem: MarkProblem, lastMissed: MarkField | null = null): Faded<MarkSolution, MarkField> {
  const { cells } = solve(problem);
  const rows = cells.map(([row]) => row);
  const open = rows.find((row) => `row-${row}` === lastMissed) ?? rows.at(-1);
  return { given: { cells: cells.filter(([row]) => row !== open) }, open: open === undefined ? [] : [`row-${open}`] };
}
