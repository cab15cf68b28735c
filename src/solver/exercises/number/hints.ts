import { another } from '../like.ts';
import type { Hints } from '../steps.ts';
import { make } from './make.ts';
import { isFitQuestion, isInRowQuestion, isThreadQuestion, type NumberProblem } from './problem.ts';
import { type NumberHintKey, type NumberStep, solution } from './solution.ts';

/** The keys of the working, in order, are what makes two problems alike. */
const shapeOf = (problem: NumberProblem): string => {
  const keys = solution(problem).map(({ key }) => key);
  return [...new Set(keys)].join();
};

const sameFigures = (one: NumberProblem, other: NumberProblem): boolean =>
  ('width' in one && 'width' in other && one.width === other.width) ||
  ('baseStrings' in one && 'baseStrings' in other && one.baseStrings === other.baseStrings) ||
  ('row' in one && 'row' in other && one.row === other.row && one.height === other.height);

/** A problem with the same ask and the same way of working, with other figures. */
function workedLike(problem: NumberProblem): NumberProblem | null {
  const shape = shapeOf(problem);
  const given = isFitQuestion(problem)
    ? { oddMethod: problem.oddMethod ?? undefined, startSide: problem.startSide }
    : isThreadQuestion(problem)
      ? {}
      : { openingStep: problem.openingStep, closingStep: problem.closingStep };
  return another(
    problem,
    (seed) => make(seed, 'mixed', { ...given, ask: problem.ask }),
    (other) => shapeOf(other) === shape && !sameFigures(problem, other),
  );
}

/** The question's figures that a sentence can use; lists are told as left and right. */
function stated(problem: NumberProblem): Record<string, number | string> {
  if (isFitQuestion(problem)) return { width: problem.width, capacity: problem.capacity };
  if (isThreadQuestion(problem)) {
    if (problem.ask === 'base-string-in-all')
      return { baseStrings: problem.baseStrings, foldLength: problem.foldLength };
    const { height, rowPitch, takeUp, mountingAndFinishing, tail, place } = problem;
    return { height, rowPitch, takeUp, mountingAndFinishing, tail, place };
  }
  const { width, height, bundles, closing } = problem;
  const values: Record<string, number | string> = {
    width,
    height,
    mountedLeft: bundles[0],
    mountedRight: bundles[1],
    closingLeft: closing[0],
    closingRight: closing[1],
  };
  if (isInRowQuestion(problem)) values['row'] = problem.row;
  return values;
}

/** Hints for the figure asked for. */
export function hints(problem: NumberProblem): Hints<NumberProblem, NumberStep, NumberHintKey> {
  const values = stated(problem);
  const worked = workedLike(problem);
  return {
    look: { key: `look-${problem.ask}`, values },
    do: { key: `do-${problem.ask}`, values },
    worked: worked && { problem: worked, steps: solution(worked) },
  };
}
