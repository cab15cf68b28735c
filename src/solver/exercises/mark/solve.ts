import { bundlesIn, firstKnotColumn, OUTLINE_RULES, type OutlineRules } from '../outline.ts';
import { cellsOf, stretchesOf } from './picture.ts';
import type { Cell, MarkProblem, MarkSolution } from './problem.ts';

/** Numbers from `low` to `high`, both ends counting; none where high is below low. */
const numbers = (low: number, high: number): number[] =>
  Array.from({ length: Math.max(0, high - low + 1) }, (_, i) => low + i);

/** Marked columns of a row, from the left, by these rules. */
function columnsIn(rules: OutlineRules, problem: MarkProblem, row: number): number[] {
  const { width, target } = problem;
  if (target === 'first-closing-row') return row === rules.firstClosingRow(problem) ? numbers(1, width) : [];
  const bundles = bundlesIn(rules, problem, row);
  if (target === 'first-knot') return [firstKnotColumn(rules, problem, row, bundles, problem.startSide ?? 'left')];
  const picture = problem.picture && cellsOf(problem.picture, row);
  if (target === 'colour-in-row') {
    const stretches = stretchesOf(picture ?? [], problem.colour ?? 0);
    return rules
      .ofStretches(stretches.map(({ length }) => length))
      .flatMap((length, at) => numbers(1, length).map((cell) => cell - 1 + (stretches[at]?.column ?? 1)));
  }
  const columns = rules.sides.flatMap((side) => {
    const bundle = bundles[side];
    const fromEdge = target === 'bundle-knot' ? [rules.knotColumn(bundle)] : numbers(1, rules.corners(bundle));
    return side === 0 ? fromEdge : fromEdge.map((column) => width + 1 - column);
  });
  const marked = [...new Set(columns)].sort((a, b) => a - b);
  return target === 'picture-cut' && rules.pictureAlone
    ? marked.filter((column) => (picture?.[column - 1] ?? 0) !== problem.picture?.ground)
    : marked;
}

/** The cells that are marked by someone who goes by these rules, row by row, left to right. */
export const cellsBy = (rules: OutlineRules, problem: MarkProblem): Cell[] =>
  numbers(problem.from, problem.to).flatMap((row) =>
    columnsIn(rules, problem, row).map((column): Cell => [row, column]),
  );

/**
 * The right cells, row by row, left to right. A row to be marked is given with all its cells.
 *
 * @example solve({ kind: 'mark', target: 'bundle-knot', width: 26, height: 32, bundles: [6, 6], closing: [6, 6],
 *   openingStep: 1, closingStep: 1, from: 2, to: 2 }) // { cells: [[2, 5], [2, 22]] }
 */
export const solve = (problem: MarkProblem): MarkSolution => ({ cells: cellsBy(OUTLINE_RULES, problem) });
