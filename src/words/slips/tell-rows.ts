import type { AnswerOf, ExerciseProblem } from '../../solver/exercises/contract.ts';
import type { MarkProblem } from '../../solver/exercises/mark/problem.ts';
import { readCells } from '../../solver/exercises/mark/read-cells.ts';
import { isRowsQuestion, type RowsQuestion } from '../../solver/exercises/number/problem.ts';
import { bundlesIn, OUTLINE_RULES } from '../../solver/exercises/outline.ts';
import { ROW_WORDS, type SlippedRow } from './rows.ts';
import { type Answer, figureIn, type Tell } from './telling.ts';

/** The row of the first marked cell, where the row is what was asked for. */
function rowMarked(problem: MarkProblem, answer: Answer): number | null {
  if (problem.target !== 'first-closing-row') return null;
  const reading = readCells(problem, answer as AnswerOf<'mark'>);
  return 'cells' in reading ? (reading.cells[0]?.[0] ?? null) : null;
}

/** The row that is asked about, where it is only one. */
function rowAsked(problem: RowsQuestion | MarkProblem): number | null {
  if (problem.kind === 'number') return 'row' in problem ? problem.row : null;
  return problem.from === problem.to ? problem.from : null;
}

/** The name of the colour asked for, where one is. */
function colourOf(problem: RowsQuestion | MarkProblem): string | null {
  if (problem.kind === 'mark') return problem.picture?.palette[problem.colour ?? 0]?.name ?? null;
  return problem.ask === 'knots-of-colour' ? problem.colour : null;
}

/** What a slip of the rows is told with. */
export function slippedRow(problem: RowsQuestion | MarkProblem, answer: Answer): SlippedRow {
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
    wanted:
      problem.kind === 'number'
        ? 'figure'
        : problem.target === 'bundle-knot' || problem.target === 'first-knot'
          ? 'bundle-knots'
          : 'cells',
    startSide: 'startSide' in problem ? problem.startSide : undefined,
    colour: colourOf(problem),
  };
}

/** Whether slips of the rows can be made in a problem. */
export const isOfRows = (problem: ExerciseProblem): problem is RowsQuestion | MarkProblem =>
  problem.kind === 'mark' || (problem.kind === 'number' && isRowsQuestion(problem));

/** Slips of the rows, in a figure of theirs or in cells marked. */
export const tellRows: Tell = (slip, problem, answer) =>
  slip in ROW_WORDS && isOfRows(problem)
    ? ROW_WORDS[slip as keyof typeof ROW_WORDS](slippedRow(problem, answer))
    : null;
