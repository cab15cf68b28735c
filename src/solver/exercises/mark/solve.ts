import { bundlesIn, OUTLINE_RULES, type OutlineRules } from '../outline.ts';
import type { Cell, MarkProblem, MarkSolution } from './problem.ts';

/** Numbers from `low` to `high`, both ends counting; none where high is below low. */
const numbers = (low: number, high: number): number[] =>
  Array.from({ length: Math.max(0, high - low + 1) }, (_, i) => low + i);

/** Marked columns of a row, from the left, by these rules. */
function columnsIn(rules: OutlineRules, problem: MarkProblem, row: number): number[] {
  const { width, target } = problem;
  if (target === 'first-closing-row') return row === rules.firstClosingRow(problem) ? numbers(1, width) : [];
  const bundles = bundlesIn(rules, problem, row);
  const columns = rules.sides.flatMap((side) => {
    const bundle = bundles[side];
    const fromEdge = target === 'corner-cells' ? numbers(1, rules.corners(bundle)) : [rules.knotColumn(bundle)];
    return side === 0 ? fromEdge : fromEdge.map((column) => width + 1 - column);
  });
  return [...new Set(columns)].sort((a, b) => a - b);
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
