import { sumOf } from '../../solver/exercises/figures.ts';
import { isFitQuestion, type NumberProblem } from '../../solver/exercises/number/problem.ts';
import { fromSum } from '../../solver/exercises/number/solve.ts';
import { entered } from '../../solver/exercises/sum/judge.ts';
import type { SumAnswer, SumFigures, SumProblem } from '../../solver/exercises/sum/problem.ts';
import { carriedEnds, workOut } from '../../solver/exercises/sum/solve.ts';
import { type FittingSlip, slippedSums } from '../../solver/missteps/fitting.ts';
import { FITTING_WORDS, type SlippedSum } from './fitting.ts';
import { type Answer, figureIn, type Tell } from './telling.ts';

/** The sum as the learner worked it: this slip's own figures, and over them what was entered. */
function mySum(
  slip: FittingSlip,
  problem: SumProblem | NumberProblem,
  sum: SumProblem,
  answer: Answer,
): Readonly<SumFigures> {
  const ways = slippedSums(slip, sum);
  const [likeliest = workOut(sum)] = ways;
  if (problem.kind === 'sum') {
    const written = entered(problem, (answer ?? {}) as SumAnswer);
    const fits = (way: Readonly<SumFigures>): boolean =>
      problem.fields.every((field) => (written[field] ?? way[field]) === way[field]);
    return { ...(ways.find(fits) ?? likeliest), ...written };
  }
  const figure = figureIn(answer);
  return isFitQuestion(problem) ? (ways.find((way) => fromSum(problem.ask, way) === figure) ?? likeliest) : likeliest;
}

function slippedSum(slip: FittingSlip, problem: SumProblem | NumberProblem, answer: Answer): SlippedSum | null {
  if (problem.kind === 'number' && !isFitQuestion(problem)) return null;
  const sum = problem.kind === 'sum' ? problem : sumOf(problem);
  const { width, capacity } = problem;
  return {
    width,
    capacity,
    strands: width + carriedEnds(sum),
    due: workOut(sum),
    mine: mySum(slip, problem, sum, answer),
  };
}

/** Slips of the fitting sum, in a sum or a figure taken from one. */
export const tellFitting: Tell = (slip, problem, answer) => {
  if (!(slip in FITTING_WORDS) || (problem.kind !== 'sum' && problem.kind !== 'number')) return null;
  const sum = slippedSum(slip as FittingSlip, problem, answer);
  return sum && FITTING_WORDS[slip as FittingSlip](sum);
};
