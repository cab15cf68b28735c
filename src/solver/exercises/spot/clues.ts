import type { Clues } from '../steps.ts';
import type { SpotField, SpotProblem } from './problem.ts';
import type { SpotHintKey } from './solution.ts';

/** Where to look and what to do: for the place first, then for the name of the fault. */
export function clues(problem: SpotProblem, field: SpotField | null = null): Clues<SpotHintKey> {
  const about = field === 'fault' ? (`fault-${problem.in}` as const) : problem.in;
  const values = problem.in === 'row' ? { row: problem.row, direction: problem.direction } : { width: problem.width };
  return { look: { key: `look-${about}`, values }, do: { key: `do-${about}`, values } };
}
