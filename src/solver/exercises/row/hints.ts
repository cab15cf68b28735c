import { another } from '../like.ts';
import type { Hints } from '../steps.ts';
import { clues } from './clues.ts';
import { make } from './make.ts';
import type { RowField, RowProblem } from './problem.ts';
import { type RowHintKey, type RowStep, solution } from './solution.ts';
import { asWorked } from './tie.ts';

/** Which edges are bundles, and what happens to them: what makes two rows alike. */
const shapeOf = ({ before, direction, change, row }: RowProblem): string =>
  [row === 1, change, ...asWorked(before, direction).map((strings) => Math.min(strings, 3))].join();

/** A row of the same shape from another piece, in the other direction where there is one. */
function workedLike(problem: RowProblem): RowProblem | null {
  const shape = shapeOf(problem);
  const phase =
    problem.row === 1
      ? 'first'
      : ({ 'let-out': 'opening', 'take-in': 'closing', none: 'straight' } as const)[problem.change];
  return another(
    problem,
    (seed) => make(seed, 'mixed', { phase }),
    (other) => shapeOf(other) === shape && other.width !== problem.width,
  );
}

/** Hints for one part of the row, or for all of it. */
export function hints(problem: RowProblem, field: RowField | null = null): Hints<RowProblem, RowStep, RowHintKey> {
  const worked = workedLike(problem);
  return { ...clues(problem, field), worked: worked && { problem: worked, steps: solution(worked) } };
}
