import type { SLIP_FAMILIES } from '../missteps/index.ts';
import type { ExerciseProblem, ProblemOf } from './contract.ts';
import { isFitQuestion, isThreadQuestion } from './number/problem.ts';

/** The part of the craft a problem is about; its slips and the steps of its working are all of one. */
export type Family = keyof typeof SLIP_FAMILIES;

/** The part of the craft a single figure is about. */
export const numberFamilyOf = (problem: ProblemOf<'number'>): Exclude<Family, 'knots'> =>
  isFitQuestion(problem) ? 'fitting' : isThreadQuestion(problem) ? 'thread' : 'rows';

export function familyOf(problem: ExerciseProblem): Family {
  if (problem.kind === 'sum') return 'fitting';
  if (problem.kind === 'mark') return 'rows';
  if (problem.kind === 'row' || problem.kind === 'spot') return 'knots';
  return numberFamilyOf(problem);
}
