import { conclude } from '../conclude.ts';
import type { Judged, JudgeOptions } from '../contract.ts';
import type { Cell, MarkAnswer, MarkField, MarkProblem, MarkResult } from './problem.ts';
import { readCells } from './read-cells.ts';
import { solve } from './solve.ts';

const columnsOf = (cells: readonly Cell[], row: number): number[] =>
  [...new Set(cells.filter(([at]) => at === row).map(([, column]) => column))].sort((a, b) => a - b);

/**
 * Judges marked cells row by row: each row that has cells or should have. With nothing marked, or something
 * that is no cell of the chart, the answer is `unreadable` and no try. For the row in which closing begins
 * any of its cells will do.
 */
export function judge(
  problem: MarkProblem,
  answer: MarkAnswer,
  options: JudgeOptions<MarkField> = {},
): Judged<MarkField, MarkResult> {
  const reading = readCells(problem, answer);
  const right = solve(problem).cells;
  const results: { [F in MarkField]?: MarkResult } = {};
  const nothing = { right: [], missing: [], extra: [] };
  if (!('cells' in reading) || reading.cells.length === 0) {
    const field: MarkField = `row-${problem.from}`;
    results[field] =
      'reason' in reading
        ? { verdict: 'unreadable', reason: reading.reason, ...nothing }
        : { verdict: 'missing', ...nothing };
    return conclude([field], results, {});
  }
  const wholeRow = problem.target === 'first-closing-row';
  const rows = [...new Set([...right, ...reading.cells].map(([row]) => row))].sort((a, b) => a - b);
  const order: MarkField[] = [];
  for (const row of rows) {
    const marked = columnsOf(reading.cells, row);
    const wanted = columnsOf(right, row);
    const hit = wholeRow && wanted.length > 0 && marked.length > 0;
    const missing = hit ? [] : wanted.filter((column) => !marked.includes(column));
    const extra = hit ? [] : marked.filter((column) => !wanted.includes(column));
    const field: MarkField = `row-${row}`;
    order.push(field);
    results[field] = {
      verdict: missing.length + extra.length === 0 ? 'right' : 'wrong',
      right: marked.filter((column) => wanted.includes(column)),
      missing,
      extra,
    };
  }
  const upTo = options.upTo === undefined ? order.length : order.indexOf(options.upTo) + 1;
  const judged = upTo > 0 ? order.slice(0, upTo) : order;
  return conclude(judged, Object.fromEntries(judged.map((field) => [field, results[field]])), {});
}
