import { sumOf } from '../figures.ts';
import type { SumField } from '../sum/problem.ts';
import { solution as sumSolution } from '../sum/solution.ts';
import { workOut } from '../sum/solve.ts';
import type { FitAsk, FitQuestion } from './problem.ts';
import type { NumberStep } from './solution.ts';

const FIELD_OF: { readonly [A in FitAsk]: SumField } = {
  spare: 'spare',
  'each-side': 'bundle',
  'on-bar': 'onBar',
  'folds-to-cut': 'foldsEachSide',
};

/** A figure of a fitting sum, worked out. */
export function workSum(problem: FitQuestion): NumberStep[] {
  const field = FIELD_OF[problem.ask];
  const sum = { ...sumOf(problem), fields: [field] };
  const total = problem.ask === 'folds-to-cut';
  const steps = sumSolution(sum).map(
    ({ key, values, gives }): NumberStep => ({ key, values, gives: gives === field && !total ? 'figure' : null }),
  );
  if (!total) return steps;
  const { foldsOnBar, foldsEachSide } = workOut(sum);
  return [
    ...steps,
    {
      key: 'folds-to-cut',
      values: { foldsOnBar, foldsEachSide, folds: foldsOnBar + 2 * foldsEachSide },
      gives: 'figure',
    },
  ];
}
