import { rowFloats } from '../../thread/row-floats.ts';
import { sumOf } from '../figures.ts';
import { bundlesIn, cornersIn, firstKnotColumn, OUTLINE_RULES, type OutlineRules, openingCorners } from '../outline.ts';
import type { SumFigures } from '../sum/problem.ts';
import { workOut } from '../sum/solve.ts';
import { cutLength } from './cut.ts';
import { capacityBy, MEASURE_RULES } from './measures.ts';
import {
  type ChartQuestion,
  type ClassQuestion,
  type ColourQuestion,
  type FitAsk,
  isChartQuestion,
  isFitQuestion,
  isInRowQuestion,
  isMeasureQuestion,
  isThreadQuestion,
  type NumberProblem,
  type NumberSolution,
  type PlainRowsQuestion,
  type RowsQuestion,
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

/** The first row, from the picture's own on, whose corner cells end before the picture begins. */
export function rowForPicture(rules: OutlineRules, problem: PlainRowsQuestion): number {
  const last = problem.height + problem.pictureRow;
  let row = problem.pictureRow;
  const covered = (): boolean =>
    rules.sides.some((side) => rules.corners(rules.opening(problem, row, side)) >= problem.inset);
  while (row < last && covered()) row += 1;
  return row;
}

/** How long each stretch of the colour asked for is, from left to right. */
export const lengthsOf = ({ stretches, colour }: ColourQuestion): number[] =>
  stretches.flatMap((stretch) => (stretch.colour === colour ? [stretch.cells] : []));

function fromChart(rules: OutlineRules, problem: ChartQuestion): number {
  switch (problem.ask) {
    case 'column-of-knot': {
      const { row, knot, startSide } = problem;
      const first = firstKnotColumn(rules, problem, row, bundlesIn(rules, problem, row), startSide);
      return first + (rules.beginsLeft(row, startSide) ? 1 : -1) * rules.stepsTo(knot);
    }
    case 'knots-of-colour':
      return rules.ofStretches(lengthsOf(problem)).reduce((sum, cells) => sum + cells, 0);
    case 'plain-rows-above':
      return rowForPicture(rules, problem) - problem.pictureRow;
  }
}

/** The figure asked for, by these rules. */
export function fromOutline(rules: OutlineRules, problem: RowsQuestion): number {
  if (isChartQuestion(problem)) return fromChart(rules, problem);
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
      : isMeasureQuestion(problem)
        ? capacityBy(MEASURE_RULES, problem)
        : fromOutline(OUTLINE_RULES, problem),
});
