import type { SLIP_FAMILIES } from '../missteps/index.ts';
import type { ExerciseProblem, ProblemOf } from './contract.ts';
import { readsChart } from './mark/problem.ts';
import { isChartQuestion, isFitQuestion, isMeasureQuestion, isThreadQuestion } from './number/problem.ts';

/**
 * The part of the craft a problem is about; its slips and the steps of its working are all of one. How a chart is read
 * has steps of its own, and its slips are those of the rows.
 */
export type Family = keyof typeof SLIP_FAMILIES | 'reading';

/** The part of the craft a single figure is about. */
export function numberFamilyOf(problem: ProblemOf<'number'>): Exclude<Family, 'knots'> {
  if (isChartQuestion(problem)) return 'reading';
  if (isMeasureQuestion(problem)) return 'measuring';
  return isFitQuestion(problem) ? 'fitting' : isThreadQuestion(problem) ? 'thread' : 'rows';
}

export function familyOf(problem: ExerciseProblem): Family {
  if (problem.kind === 'sum') return 'fitting';
  if (problem.kind === 'mark') return readsChart(problem) ? 'reading' : 'rows';
  if (problem.kind === 'row' || problem.kind === 'spot') return 'knots';
  return numberFamilyOf(problem);
}
