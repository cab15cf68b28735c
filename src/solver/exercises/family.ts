import type { SLIP_FAMILIES } from '../missteps/index.ts';
import type { ExerciseProblem, ProblemOf } from './contract.ts';
import { readsChart } from './mark/problem.ts';
import { isChartQuestion, isFitQuestion, isMeasureQuestion, isThreadQuestion } from './number/problem.ts';

/** The part of the craft a single figure is about. How a chart is read has steps of its own, and its slips are those of the rows. */
export type FigureFamily = Extract<keyof typeof SLIP_FAMILIES, 'fitting' | 'rows' | 'thread' | 'measuring'> | 'reading';
/** Where the words of a problem's slips and working stand: with its part of the craft, or with its kind. */
export type Family = FigureFamily | 'knots' | 'order' | 'choose' | 'say';

/** The part of the craft a single figure is about. */
export function numberFamilyOf(problem: ProblemOf<'number'>): FigureFamily {
  if (isChartQuestion(problem)) return 'reading';
  if (isMeasureQuestion(problem)) return 'measuring';
  return isFitQuestion(problem) ? 'fitting' : isThreadQuestion(problem) ? 'thread' : 'rows';
}

export function familyOf(problem: ExerciseProblem): Family {
  switch (problem.kind) {
    case 'sum':
      return 'fitting';
    case 'mark':
      return readsChart(problem) ? 'reading' : 'rows';
    case 'number':
      return numberFamilyOf(problem);
    case 'row':
    case 'spot':
      return 'knots';
    case 'order':
    case 'choose':
    case 'say':
      return problem.kind;
  }
}
