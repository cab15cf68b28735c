import { rowFloats } from '../../thread/row-floats.ts';
import { sumOf } from '../figures.ts';
import { bundlesIn, cornersIn, OUTLINE_RULES, type OutlineRules, openingCorners } from '../outline.ts';
import type { SumFigures } from '../sum/problem.ts';
import { workOut } from '../sum/solve.ts';
import { cutLength } from './cut.ts';
import {
  type ClassQuestion,
  type FitAsk,
  type InRowQuestion,
  isFitQuestion,
  isInRowQuestion,
  isThreadQuestion,
  type NumberProblem,
  type NumberSolution,
  type PieceQuestion,
  type ThreadQuestion,
} from './problem.ts';

const FIT_FIGURES: { readonly [A in FitAsk]: (figures: Readonly<SumFigures>) => number } = {
  spare: ({ spare }) => spare,
  'each-side': ({ bundle }) => bundle,
  'on-bar': ({ onBar }) => onBar,
  'folds-to-cut': ({ foldsOnBar, foldsEachSide }) => foldsOnBar + 2 * foldsEachSide,
};

/** The figure asked for, read off a sum that has been worked out. */
export const fromSum = (ask: FitAsk, figures: Readonly<SumFigures>): number => FIT_FIGURES[ask](figures);

/** The figure asked for, by these rules. */
export function fromOutline(rules: OutlineRules, problem: InRowQuestion | PieceQuestion): number {
  if (isInRowQuestion(problem)) {
    const bundles = bundlesIn(rules, problem, problem.row);
    if (problem.ask === 'knots-in-row') return rules.knots(problem, bundles);
    return problem.ask === 'bundle-in-row' ? bundles[problem.side === 'right' ? 1 : 0] : cornersIn(rules, bundles);
  }
  if (problem.ask === 'full-width-row') return rules.fullWidthRow(problem);
  return problem.ask === 'first-closing-row' ? rules.firstClosingRow(problem) : openingCorners(rules, problem);
}

/** Folds of one piece: those of the bar, and those of both sides. */
export const foldsOfPiece = ({ onBar, bundle }: Pick<ClassQuestion, 'onBar' | 'bundle'>): number => onBar / 2 + bundle;

/** mm by the solver's own lengths; columns, folds or minutes for the asks about these. */
export function fromThread(problem: ThreadQuestion): number {
  switch (problem.ask) {
    case 'cut-length':
      return cutLength(problem);
    case 'base-string-in-all':
      return (problem.baseStrings / 2) * problem.foldLength;
    case 'longest-float':
      return Math.max(0, ...rowFloats(problem.runs).map(({ columns }) => columns));
    case 'folds-for-class':
      return foldsOfPiece(problem) * problem.learners;
    case 'making-minutes':
      return (problem.knots * problem.secondsPerKnot) / 60 + problem.beside;
  }
}

/**
 * The right figure.
 *
 * @example solve({ kind: 'number', ask: 'knots-in-row', width: 26, height: 32, bundles: [6, 6], closing: [6, 6],
 *   openingStep: 1, closingStep: 1, row: 3, side: null }) // { figure: 20 }
 */
export const solve = (problem: NumberProblem): NumberSolution => ({
  figure: isFitQuestion(problem)
    ? fromSum(problem.ask, workOut(sumOf(problem)))
    : isThreadQuestion(problem)
      ? fromThread(problem)
      : fromOutline(OUTLINE_RULES, problem),
});
