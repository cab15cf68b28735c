import type { WorkedStep } from '../steps.ts';
import type { SumStepKey } from '../sum/solution.ts';
import { workSum } from './fit-solution.ts';
import { workMeasures } from './measure-solution.ts';
import {
  isChartQuestion,
  isFitQuestion,
  isMeasureQuestion,
  isThreadQuestion,
  type NumberAsk,
  type NumberField,
  type NumberProblem,
} from './problem.ts';
import { workChart } from './reading-solution.ts';
import { workRows } from './row-solution.ts';
import { workThread } from './thread-solution.ts';

/** The steps of the sum, as far as the figure asked for, and those of the rows. */
export type NumberStepKey =
  | SumStepKey
  | 'folds-to-cut'
  | 'row-opening'
  | 'row-closing'
  | 'row-at-full-width'
  | 'bundles-left'
  | 'bundle-in-row'
  | 'knots-in-row'
  | 'corner-cells-in-row'
  | 'strings-to-let-out'
  | 'full-width-row'
  | 'strings-to-take-in'
  | 'first-closing-row'
  | 'corner-cells'
  | 'rows-long'
  | 'one-end'
  | 'both-ends'
  | 'lone-end'
  | 'folds-from-strings'
  | 'base-string-in-all'
  | 'bundles-in-row'
  | 'row-begins'
  | 'column-of-knot'
  | 'stretches-of-colour'
  | 'knots-of-colour'
  | 'row-for-picture'
  | 'plain-rows-above'
  | 'one-turn'
  | 'widest-column'
  | 'swatch-column'
  | 'columns-on-bar'
  | 'float-skips'
  | 'longest-float'
  | 'folds-of-piece'
  | 'folds-for-class'
  | 'knotting-seconds'
  | 'knotting-minutes'
  | 'making-minutes';
export type NumberHintKey = `look-${NumberAsk}` | `do-${NumberAsk}`;
export type NumberStep = WorkedStep<NumberStepKey, NumberField>;

/** The figure worked out step by step. */
export function solution(problem: NumberProblem): NumberStep[] {
  if (isFitQuestion(problem)) return workSum(problem);
  if (isThreadQuestion(problem)) return workThread(problem);
  if (isMeasureQuestion(problem)) return workMeasures(problem);
  return isChartQuestion(problem) ? workChart(problem) : workRows(problem);
}
