import { FITTING_SLIPS, type FittingSlip, slippedSums } from '../../missteps/fitting.ts';
import { type FitFigures, makeable, sumOf } from '../figures.ts';
import { FIT_ASKS, type FitQuestion, isFitQuestion, type NumberProblem } from './problem.ts';
import { type Procedures, slipsBy } from './procedures.ts';
import { fromSum, solve } from './solve.ts';

function byFitting(slip: FittingSlip, problem: NumberProblem): number[] {
  if (!isFitQuestion(problem)) return [solve(problem).figure];
  return slippedSums(slip, sumOf(problem)).map((figures) => fromSum(problem.ask, figures));
}

/** No single figure asked for tells of the lone string. */
const SUM_SLIPS = FITTING_SLIPS.filter((slip) => slip !== 'lone-string-forgotten');

export const FIT_PROCEDURES: Procedures = new Map(
  SUM_SLIPS.map((slip) => [slip, (problem: NumberProblem) => byFitting(slip, problem)]),
);

/** Small charts on small bars; the same ask first, then the others. */
export function* smallSums(problem: FitQuestion): Generator<NumberProblem> {
  const { kind, startSide } = problem;
  const method = problem.oddMethod ?? 'lone-string';
  for (const ask of new Set([problem.ask, ...FIT_ASKS])) {
    for (let width = 8; width <= 20; width += 1) {
      for (let capacity = 6; capacity < width; capacity += 1) {
        const figures: FitFigures = { width, capacity, oddMethod: width % 2 === 0 ? null : method, startSide };
        if ((width === problem.width && capacity === problem.capacity) || !makeable(figures, 8)) continue;
        yield { kind, ask, ...figures };
      }
    }
  }
}

/** The slips of a figure of a fitting sum. */
export const slips = slipsBy(FIT_PROCEDURES, (problem) => (isFitQuestion(problem) ? smallSums(problem) : []));
