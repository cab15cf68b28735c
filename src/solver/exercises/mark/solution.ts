import { another } from '../like.ts';
import { bundlesIn, OUTLINE_RULES } from '../outline.ts';
import type { Hints, WorkedStep } from '../steps.ts';
import { make } from './make.ts';
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

const isOpening = (problem: MarkProblem): boolean => problem.from <= OUTLINE_RULES.fullWidthRow(problem);

/** The same target on another piece, at the same end of it. */
export function workedLike(problem: MarkProblem): MarkProblem | null {
  const { target, openingStep, closingStep } = problem;
  return another(
    problem,
    (seed) => make(seed, 'mixed', { target, openingStep, closingStep }),
    (other) =>
      other.width !== problem.width && other.height !== problem.height && isOpening(other) === isOpening(problem),
  );
}

/** Hints for the cells to be marked. */
export function hints(problem: MarkProblem): Hints<MarkProblem, MarkStep, MarkHintKey> {
  const { target, width, height, bundles, closing, from, to } = problem;
  const values = {
    width,
    height,
    from,
    to,
    mountedLeft: bundles[0],
    mountedRight: bundles[1],
    closingLeft: closing[0],
    closingRight: closing[1],
  };
  const worked = workedLike(problem);
  return {
    look: { key: `look-${target}`, values },
    do: { key: `do-${target}`, values },
    worked: worked && { problem: worked, steps: solution(worked) },
  };
}
