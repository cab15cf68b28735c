import type { MarkProblem, MarkTarget } from '../../solver/exercises/mark/problem.ts';
import { list } from '../numbers.ts';
import type { QuestionWords } from './question-words.ts';
import { shapedPiece } from './shaped-piece.ts';

const colourOf = ({ picture, colour = 0 }: MarkProblem): string => picture?.palette[colour]?.name ?? '';

const MARK_ASKED: Readonly<Record<MarkTarget, (problem: MarkProblem) => string>> = {
  'corner-cells': ({ from, to }) =>
    from === to ? `Mark every corner cell of row ${from}.` : `Mark every corner cell in rows ${from} to ${to}.`,
  'bundle-knot': ({ from }) => `Mark the cell of each bundle’s knot in row ${from}.`,
  'first-closing-row': () => 'Mark the row in which closing begins. Any cell of it will do.',
  'first-knot': ({ from, startSide = 'left' }) =>
    `Row 1 begins on the ${startSide}. Mark the cell of the first knot of row ${from}.`,
  'colour-in-row': (problem) =>
    `Mark every cell of row ${problem.from} in which the ${colourOf(problem)} string ties a knot.`,
  'picture-cut': ({ to }) => `Mark every coloured cell of rows 1 to ${to} that falls into a corner and would be lost.`,
};

/** What is known of a chart to mark; its picture stands on it. */
function markGiven(problem: MarkProblem): string {
  const { picture, target } = problem;
  if (!picture) return shapedPiece(problem);
  const colours = `The ground is ${picture.palette[picture.ground]?.name}, and the picture has ${list(picture.palette.flatMap(({ name }, index) => (index === picture.ground ? [] : [name])))}.`;
  return target === 'picture-cut'
    ? `${shapedPiece(problem)} ${colours}`
    : `Each row of the chart has its number beside it. ${colours}`;
}

/** What is known of a chart, and what is to be marked on it. */
export const markAsked = (problem: MarkProblem): QuestionWords => ({
  given: markGiven(problem),
  ask: MARK_ASKED[problem.target](problem),
});
