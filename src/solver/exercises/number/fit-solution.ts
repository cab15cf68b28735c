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
  const { bundle, foldsOnBar, foldsEachSide } = workOut(sum);
  const steps = sumSolution(sum);
  // An even half is the bundle already, long before the step that says so: nothing from there on may be told beforehand.
  const telling = steps.findIndex(({ values, gives }) => gives === field || values['half'] === bundle);
  const untold = total ? steps.length : problem.ask === 'each-side' ? telling : steps.length - 1;
  const worked = steps.map(
    ({ key, values }, at): NumberStep => ({ key, values, gives: at < untold ? null : 'figure' }),
  );
  if (!total) return worked;
  return [
    ...worked,
    {
      key: 'folds-to-cut',
      values: { foldsOnBar, foldsEachSide, folds: foldsOnBar + 2 * foldsEachSide },
      gives: 'figure',
    },
  ];
}
