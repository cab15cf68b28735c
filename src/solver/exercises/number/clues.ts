import type { Clues } from '../steps.ts';
import {
  isChartQuestion,
  isFitQuestion,
  isInRowQuestion,
  isMeasureQuestion,
  isThreadQuestion,
  type NumberProblem,
} from './problem.ts';
import type { NumberHintKey } from './solution.ts';

/** The question's figures that a sentence can use; lists are told as left and right. */
function stated(problem: NumberProblem): Record<string, number | string> {
  if (isFitQuestion(problem)) return { width: problem.width, capacity: problem.capacity };
  if (isThreadQuestion(problem)) {
    if (problem.ask === 'base-string-in-all')
      return { baseStrings: problem.baseStrings, foldLength: problem.foldLength };
    if (problem.ask === 'longest-float') return {};
    if (problem.ask === 'folds-for-class')
      return { onBar: problem.onBar, bundle: problem.bundle, learners: problem.learners };
    if (problem.ask === 'making-minutes')
      return { knots: problem.knots, secondsPerKnot: problem.secondsPerKnot, beside: problem.beside };
    const { height, rowPitch, takeUp, mountingAndFinishing, tail, place } = problem;
    return { height, rowPitch, takeUp, mountingAndFinishing, tail, place };
  }
  if (isMeasureQuestion(problem)) {
    const { kind, ask, ...values } = problem;
    return values;
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
  if (isChartQuestion(problem)) {
    if (problem.ask !== 'plain-rows-above') values['row'] = problem.row;
    if (problem.ask === 'column-of-knot') Object.assign(values, { knot: problem.knot, startSide: problem.startSide });
    if (problem.ask === 'knots-of-colour') values['colour'] = problem.colour;
    if (problem.ask === 'plain-rows-above')
      Object.assign(values, { pictureRow: problem.pictureRow, inset: problem.inset });
  }
  return values;
}

/** Where to look and what to do, for the figure asked for. */
export function clues(problem: NumberProblem): Clues<NumberHintKey> {
  const values = stated(problem);
  return { look: { key: `look-${problem.ask}`, values }, do: { key: `do-${problem.ask}`, values } };
}
