import { another } from '../like.ts';
import type { Hints } from '../steps.ts';
import { clues } from './clues.ts';
import { make } from './make.ts';
import { isFitQuestion, isMeasureQuestion, isThreadQuestion, type NumberProblem } from './problem.ts';
import { type NumberHintKey, type NumberStep, solution } from './solution.ts';

/** The keys of the working, in order, are what makes two problems alike. */
const shapeOf = (problem: NumberProblem): string => {
  const keys = solution(problem).map(({ key }) => key);
  return [...new Set(keys)].join();
};

const sameFigures = (one: NumberProblem, other: NumberProblem): boolean =>
  ('width' in one && 'width' in other && one.width === other.width) ||
  ('barWidth' in one && 'barWidth' in other && one.barWidth === other.barWidth) ||
  ('knots' in one && 'knots' in other && one.knots === other.knots) ||
  ('runs' in one && 'runs' in other && JSON.stringify(one.runs) === JSON.stringify(other.runs)) ||
  ('baseStrings' in one && 'baseStrings' in other && one.baseStrings === other.baseStrings) ||
  ('row' in one && 'row' in other && one.row === other.row && one.height === other.height);

/** A problem with the same ask and the same way of working, with other figures. */
function workedLike(problem: NumberProblem): NumberProblem | null {
  const shape = shapeOf(problem);
  const given = isFitQuestion(problem)
    ? { oddMethod: problem.oddMethod ?? undefined, startSide: problem.startSide }
    : isThreadQuestion(problem) || isMeasureQuestion(problem)
      ? {}
      : { openingStep: problem.openingStep, closingStep: problem.closingStep };
  return another(
    problem,
    (seed) => make(seed, 'mixed', { ...given, ask: problem.ask }),
    (other) => shapeOf(other) === shape && !sameFigures(problem, other),
  );
}

/** Hints for the figure asked for. */
export function hints(problem: NumberProblem): Hints<NumberProblem, NumberStep, NumberHintKey> {
  const worked = workedLike(problem);
  return { ...clues(problem), worked: worked && { problem: worked, steps: solution(worked) } };
}
