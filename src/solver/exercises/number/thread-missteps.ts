import { slippedLength, THREAD_SLIPS, type ThreadSlip } from '../../missteps/thread.ts';
import { cutQuestion } from './cut.ts';
import { isThreadQuestion, type NumberProblem, type ThreadQuestion } from './problem.ts';
import { type Procedures, slipsBy } from './procedures.ts';
import { solve } from './solve.ts';

const byThread = (slip: ThreadSlip, problem: NumberProblem): number[] => [
  isThreadQuestion(problem) ? slippedLength(slip, problem) : solve(problem).figure,
];

export const THREAD_PROCEDURES: Procedures = new Map(
  THREAD_SLIPS.map((slip) => [slip, (problem: NumberProblem) => byThread(slip, problem)]),
);

/** Short pieces of the same cord first. */
export function* smallCuts(problem: ThreadQuestion): Generator<NumberProblem> {
  for (const size of [8, 10, 12, 16, 20, 30]) {
    if (problem.ask === 'cut-length') {
      const { place, width, diameter, threadKind, barThickness, rowPitch } = problem;
      yield cutQuestion({ place, width, diameter, threadKind, barThickness, rowPitch }, size);
    } else if (problem.ask === 'base-string-in-all') {
      if (size !== problem.baseStrings) yield { ...problem, baseStrings: size };
    } else if (problem.ask === 'folds-for-class' && size !== problem.learners) yield { ...problem, learners: size };
  }
}

/** The slips of a length to cut. */
export const slips = slipsBy(THREAD_PROCEDURES, (problem) => (isThreadQuestion(problem) ? smallCuts(problem) : []));
