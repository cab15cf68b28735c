import { faultyPlans } from './in-plan.ts';
import { type Faulty, faultyRows } from './in-row.ts';
import { faultySums } from './in-sum.ts';
import type { SpotProblem, SpotSolution } from './problem.ts';

/** Every sheet like this one with one fault in it. */
function faultySheets(problem: SpotProblem): readonly Faulty<unknown>[] {
  switch (problem.in) {
    case 'row':
      return faultyRows(problem);
    case 'plan':
      return faultyPlans(problem, problem.shown[0]?.row ?? 1, problem.shown.at(-1)?.row ?? 1);
    case 'sum':
      return faultySums(problem);
  }
}

/**
 * Where the fault is, and which it is: the sheet is compared with every sheet that has one fault in it, and is one of
 * them. Which one is written nowhere in the problem.
 *
 * @throws where the sheet has no fault, or more than one: `make` gives none of these
 */
export function solve(problem: SpotProblem): SpotSolution {
  const shown = JSON.stringify(problem.shown);
  const found = faultySheets(problem).find((sheet) => JSON.stringify(sheet.shown) === shown);
  if (!found) throw new Error('This sheet has not just one fault.');
  return { place: found.place, fault: found.fault };
}
