import type { Clues } from '../steps.ts';
import type { SumField, SumProblem } from './problem.ts';
import type { SumHintKey } from './solution.ts';
import { carriedEnds } from './solve.ts';

/** Where to look and what to do, for one figure or for the sum as a whole. */
export function clues(problem: SumProblem, field: SumField | null = null): Clues<SumHintKey> {
  const { width, capacity } = problem;
  const values = { width, capacity, strands: width + carriedEnds(problem) };
  const about = field ?? 'sum';
  return { look: { key: `look-${about}`, values }, do: { key: `do-${about}`, values } };
}
