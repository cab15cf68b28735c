import type { Reason } from '../read.ts';
import type { Cell, MarkAnswer, MarkProblem } from './problem.ts';

type CellReading = { readonly cells: readonly Cell[] } | { readonly reason: Reason };

const isList = (value: unknown): value is readonly unknown[] => Array.isArray(value);

const isEmptyRecord = (value: unknown): boolean =>
  typeof value === 'object' && value !== null && Object.keys(value).length === 0;

/** Reads marked cells: pairs of whole numbers on the chart. */
export function readCells(problem: MarkProblem, answer: MarkAnswer | null | undefined): CellReading {
  const listed: unknown = typeof answer === 'object' && answer && 'cells' in answer ? answer.cells : answer;
  if (listed === null || listed === undefined) return { cells: [] };
  if (!isList(listed)) return isEmptyRecord(listed) ? { cells: [] } : { reason: 'not-cells' };
  const cells: Cell[] = [];
  for (const cell of listed) {
    if (!isList(cell) || cell.length !== 2) return { reason: 'not-cells' };
    const [row, column] = cell;
    if (!Number.isInteger(row) || !Number.isInteger(column)) return { reason: 'not-cells' };
    const [r, c] = [Number(row), Number(column)];
    if (r < 1 || r > problem.height || c < 1 || c > problem.width) return { reason: 'outside-the-chart' };
    cells.push([r, c]);
  }
  return { cells };
}
