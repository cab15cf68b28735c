import { conclude } from '../conclude.ts';
import type { Judged } from '../contract.ts';
import { readWhole } from '../read.ts';
import type { NumberAnswer, NumberField, NumberProblem } from './problem.ts';
import { solve } from './solve.ts';

/** Whether a figure counts as this one: exactly, or for a length to be cut within a part of it. */
export const isNear = (problem: NumberProblem, figure: number, wanted: number, tolerance: number): boolean =>
  Math.abs(figure - wanted) <= (problem.ask === 'cut-length' ? tolerance * Math.abs(wanted) : 0);

/** The part by which an answer may be off. */
export const toleranceOf = (problem: NumberProblem): number => (problem.ask === 'cut-length' ? problem.tolerance : 0);

/** Judges one figure; there is nothing it could follow from. A length to be cut may be a little off. */
export function judge(problem: NumberProblem, answer: NumberAnswer): Judged<NumberField> {
  const reading = readWhole(answer?.figure);
  const result =
    reading.verdict === 'read'
      ? ({
          verdict: isNear(problem, reading.value, solve(problem).figure, toleranceOf(problem)) ? 'right' : 'wrong',
        } as const)
      : reading;
  return conclude(['figure'], { figure: result }, {});
}
