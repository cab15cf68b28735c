import type { SLIP_FAMILIES } from '../missteps/index.ts';
import type { ExerciseProblem } from './contract.ts';
import { isFitQuestion, isThreadQuestion, type NumberProblem } from './number/problem.ts';

/** The part of the craft a sum, a figure or marked cells are about; slips and steps of working are all of one. */
export type FigureFamily = Extract<keyof typeof SLIP_FAMILIES, 'fitting' | 'rows' | 'thread'>;
/** Where the words of a problem's slips and working stand: with its part of the craft, or with its kind. */
export type Family = FigureFamily | 'order' | 'choose' | 'say';

export const familyOfFigure = (problem: NumberProblem): FigureFamily =>
  isFitQuestion(problem) ? 'fitting' : isThreadQuestion(problem) ? 'thread' : 'rows';

export function familyOf(problem: ExerciseProblem): Family {
  switch (problem.kind) {
    case 'sum':
      return 'fitting';
    case 'mark':
      return 'rows';
    case 'number':
      return familyOfFigure(problem);
    case 'order':
    case 'choose':
    case 'say':
      return problem.kind;
  }
}
