import type { WorkedStep } from '../steps.ts';
import type { SumStepKey } from '../sum/solution.ts';
import { workSum } from './fit-solution.ts';
import { isFitQuestion, isThreadQuestion, type NumberAsk, type NumberField, type NumberProblem } from './problem.ts';
import { workRows } from './row-solution.ts';
import { workThread } from './thread-solution.ts';

/** The steps of the sum, as far as the figure asked for, and those of the rows. */
export type NumberStepKey =
  | SumStepKey
  | 'folds-to-cut'
  | 'row-opening'
  | 'row-closing'
  | 'row-at-full-width'
  | 'bundle-in-row'
  | 'knots-in-row'
  | 'corner-cells-in-row'
  | 'full-width-row'
  | 'first-closing-row'
  | 'corner-cells'
  | 'rows-long'
  | 'one-end'
  | 'both-ends'
  | 'lone-end'
  | 'folds-from-strings'
  | 'base-string-in-all'
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
export const solution = (problem: NumberProblem): NumberStep[] =>
  isFitQuestion(problem) ? workSum(problem) : isThreadQuestion(problem) ? workThread(problem) : workRows(problem);
