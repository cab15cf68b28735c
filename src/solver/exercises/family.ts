import type { SLIP_FAMILIES } from '../missteps/index.ts';
import type { ExerciseProblem } from './contract.ts';
import { isFitQuestion, isMeasureQuestion, isThreadQuestion } from './number/problem.ts';

/** The part of the craft a problem is about; its slips and the steps of its working are all of one. */
export type Family = keyof typeof SLIP_FAMILIES;

export function familyOf(problem: ExerciseProblem): Family {
  if (problem.kind === 'sum') return 'fitting';
  if (problem.kind === 'mark') return 'rows';
  if (isMeasureQuestion(problem)) return 'measuring';
  return isFitQuestion(problem) ? 'fitting' : isThreadQuestion(problem) ? 'thread' : 'rows';
}
