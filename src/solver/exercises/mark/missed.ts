import type { Judged } from '../contract.ts';
import { hasSides, type MarkField, type MarkProblem, type MarkResult, sideOf } from './problem.ts';

/**
 * What was missed first, for the half-worked form that comes later: a row, or only one side of it where the other is
 * as it should be; null where nothing was missed.
 */
export function missed(problem: MarkProblem, { first, fields }: Judged<MarkField, MarkResult>): MarkField | null {
  const result = first && fields[first];
  if (!result || !hasSides(problem)) return first;
  const [side, ...others] = new Set([...result.missing, ...result.extra].map((column) => sideOf(problem, column)));
  return side && others.length === 0 ? (`${first}-${side}` as MarkField) : first;
}
