import type { AnswerOf } from '../../solver/exercises/contract.ts';
import type { MarkProblem } from '../../solver/exercises/mark/problem.ts';
import { readCells } from '../../solver/exercises/mark/read-cells.ts';
import {
  type InRowQuestion,
  isFitQuestion,
  isInRowQuestion,
  isThreadQuestion,
  type PieceQuestion,
} from '../../solver/exercises/number/problem.ts';
import { bundlesIn, OUTLINE_RULES } from '../../solver/exercises/outline.ts';
import type { RowSlip } from '../../solver/missteps/rows.ts';
import { ROW_WORDS, type SlippedRow } from './rows.ts';
import { type Answer, figureIn, type Tell } from './telling.ts';

/** The row of the first marked cell, where the row is what was asked for. */
function rowMarked(problem: MarkProblem, answer: Answer): number | null {
  if (problem.target !== 'first-closing-row') return null;
  const reading = readCells(problem, answer as AnswerOf<'mark'>);
  return 'cells' in reading ? (reading.cells[0]?.[0] ?? null) : null;
}

/** The row that is asked about, where it is only one. */
function rowAsked(problem: InRowQuestion | PieceQuestion | MarkProblem): number | null {
  if (problem.kind === 'number') return isInRowQuestion(problem) ? problem.row : null;
  return problem.from === problem.to ? problem.from : null;
}

function slippedRow(problem: InRowQuestion | PieceQuestion | MarkProblem, answer: Answer): SlippedRow {
  const row = rowAsked(problem);
  const [left, right] = bundlesIn(OUTLINE_RULES, problem, row ?? 1);
  const asked = problem.kind === 'mark' ? problem.target : problem.ask;
  const from = row ?? (problem.kind === 'mark' ? problem.from : 1);
  const closes = asked === 'first-closing-row' || from > OUTLINE_RULES.fullWidthRow(problem);
  return {
    piece: problem,
    row,
    left,
    right,
    phase: closes ? 'closing' : 'opening',
    mine: problem.kind === 'mark' ? rowMarked(problem, answer) : figureIn(answer),
    wanted: problem.kind === 'number' ? 'figure' : problem.target === 'bundle-knot' ? 'bundle-knots' : 'cells',
  };
}

/** Slips of the rows, in a figure of theirs or in cells marked. */
export const tellRows: Tell = (slip, problem, answer) => {
  if (!(slip in ROW_WORDS) || (problem.kind !== 'number' && problem.kind !== 'mark')) return null;
  if (problem.kind === 'number' && (isFitQuestion(problem) || isThreadQuestion(problem))) return null;
  return ROW_WORDS[slip as RowSlip](slippedRow(problem, answer));
};
