import type { RowProblem } from '../../solver/exercises/row/problem.ts';
import type { SpotProblem } from '../../solver/exercises/spot/problem.ts';
import { count, figure } from '../numbers.ts';
import { chartOnBar } from './fit-question.ts';
import type { QuestionWords } from './question-words.ts';
import { shapedPiece } from './shaped-piece.ts';

const edgesBefore = ([left, right]: RowProblem['before']): string =>
  left === right
    ? left === 1
      ? 'Both edges are single strings'
      : `Each side bundle holds ${count(left, 'string')}`
    : `The left edge holds ${count(left, 'string')} and the right edge ${figure(right)}`;

/** How a row lies before its first move. */
function rowGiven({ width, row, direction, before, change }: Omit<RowProblem, 'kind'>): string {
  const [way, side] = direction === 'rightward' ? ['left to right', 'left'] : ['right to left', 'right'];
  const inside = before[direction === 'rightward' ? 0 : 1] > 1;
  const changes = {
    none: 'No string is let out or taken in.',
    'let-out': 'In this row each side lets one string out.',
    'take-in': 'In this row each side takes one string in.',
  };
  return `A small piece has ${count(width, 'column')}. ${edgesBefore(before)}${row === 1 ? '' : ` after row ${figure(row - 1)}`}. Row ${figure(row)} goes from ${way}. ${changes[change]} The leading string lies ${inside ? `on the inner side of the ${side} bundle` : `outside the ${side} edge`}.`;
}

/** A row to tie. */
export const rowAsked = (problem: RowProblem): QuestionWords => ({
  given: rowGiven(problem),
  ask: 'Tie this row: choose each move and each knot, in order.',
});

/** A sheet on which one thing is amiss. */
export function spotAsked(problem: SpotProblem): QuestionWords {
  if (problem.in === 'row')
    return {
      given: `${rowGiven(problem)} Somebody has tied it, and one thing in it is not as it should be.`,
      ask: 'Find it, and say what it is.',
    };
  if (problem.in === 'plan')
    return {
      given: `${shapedPiece(problem)} Somebody has written some of its rows down, and one line is not as it should be.`,
      ask: 'Find that line, and say what happened in it.',
    };
  return {
    given: `${chartOnBar(problem)} Somebody has written the fitting sum down. In one line something went amiss, and the lines below follow from it.`,
    ask: 'Find the first line that does not come out, and say what happened in it.',
  };
}
