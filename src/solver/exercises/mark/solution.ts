import { bundlesIn, OUTLINE_RULES } from '../outline.ts';
import type { WorkedStep } from '../steps.ts';
import type { MarkField, MarkProblem, MarkTarget } from './problem.ts';

export type MarkStepKey = 'row-corner-cells' | 'row-bundle-knots' | 'first-closing-row';
export type MarkHintKey = `look-${MarkTarget}` | `do-${MarkTarget}`;
export type MarkStep = WorkedStep<MarkStepKey, MarkField>;

/** What is marked, row by row, and why; rows without a cell to mark are passed over. */
export function solution(problem: MarkProblem): MarkStep[] {
  const { target, width, height, from, to, closing, closingStep } = problem;
  if (target === 'first-closing-row') {
    const bundle = Math.max(...closing);
    const row = OUTLINE_RULES.firstClosingRow(problem);
    return [
      {
        key: 'first-closing-row',
        values: { height, bundle, step: closingStep, takenIn: bundle - 1, row },
        gives: `row-${row}`,
      },
    ];
  }
  return Array.from({ length: to - from + 1 }, (_, index) => from + index).flatMap((row): MarkStep[] => {
    const [left, right] = bundlesIn(OUTLINE_RULES, problem, row);
    const values = { row, left, right, cornersLeft: left - 1, cornersRight: right - 1 };
    if (target === 'bundle-knot')
      return [
        {
          key: 'row-bundle-knots',
          values: { ...values, columnLeft: left, columnRight: width + 1 - right },
          gives: `row-${row}`,
        },
      ];
    return left + right > 2 ? [{ key: 'row-corner-cells', values, gives: `row-${row}` }] : [];
  });
}
