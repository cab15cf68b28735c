import type { Faded } from '../contract.ts';
import { actsBy, HABITS } from './habits.ts';
import type { RowField, RowProblem, RowSolution } from './problem.ts';

/**
 * The half-worked form: the row is tied as far as the part that the learner missed last, or as far as its last edge. That
 * part is open, and what comes after it is tied along with it.
 */
export function fade(problem: RowProblem, lastMissed: RowField | null = null): Faded<RowSolution, RowField> {
  const acts = actsBy(HABITS, problem);
  const open = acts.find(({ part }) => part === lastMissed)?.part ?? 'end-edge';
  const from = acts.findIndex(({ part }) => part === open);
  return { given: { acts: acts.slice(0, from).map(({ act }) => act) }, open: [open] };
}
