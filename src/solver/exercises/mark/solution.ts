import { bundlesIn, firstKnotColumn, OUTLINE_RULES } from '../outline.ts';
import type { WorkedStep } from '../steps.ts';
import { cellsOf } from './picture.ts';
import type { MarkField, MarkProblem, MarkTarget } from './problem.ts';
import { cellsBy } from './solve.ts';

export type MarkStepKey =
  | 'row-corner-cells'
  | 'row-bundles'
  | 'row-bundle-knots'
  | 'strings-taken-in'
  | 'closing-row'
  | 'row-side'
  | 'row-first-knot'
  | 'row-read'
  | 'row-colour'
  | 'row-picture-cut';
export type MarkHintKey = `look-${MarkTarget}` | `do-${MarkTarget}`;
export type MarkStep = WorkedStep<MarkStepKey, MarkField>;

/** A row of the picture as it is read aloud, from left to right: '2 chalk, 3 rust, 2 chalk'. */
function readOut({ picture }: MarkProblem, row: number): string {
  const told: { cells: number; colour: number }[] = [];
  for (const colour of picture ? cellsOf(picture, row) : []) {
    const last = told.at(-1);
    if (last?.colour === colour) last.cells += 1;
    else told.push({ cells: 1, colour });
  }
  return told.map(({ cells, colour }) => `${cells} ${picture?.palette[colour]?.name}`).join(', ');
}

/** What is marked, row by row, and why; rows without a cell to mark are passed over. */
export function solution(problem: MarkProblem): MarkStep[] {
  const { target, width, height, from, to, closing, closingStep } = problem;
  if (target === 'first-closing-row') {
    const bundle = Math.max(...closing);
    const row = OUTLINE_RULES.firstClosingRow(problem);
    const values = { height, bundle, step: closingStep, takenIn: bundle - 1, row };
    return [
      { key: 'strings-taken-in', values, gives: null },
      { key: 'closing-row', values, gives: `row-${row}` },
    ];
  }
  return Array.from({ length: to - from + 1 }, (_, index) => from + index).flatMap((row): MarkStep[] => {
    const [left, right] = bundlesIn(OUTLINE_RULES, problem, row);
    const values = { row, left, right, cornersLeft: left - 1, cornersRight: right - 1 };
    if (target === 'bundle-knot')
      return [
        { key: 'row-bundles', values, gives: null },
        {
          key: 'row-bundle-knots',
          values: { ...values, columnLeft: left, columnRight: width + 1 - right },
          gives: `row-${row}`,
        },
      ];
    if (target === 'first-knot') {
      const startSide = problem.startSide ?? 'left';
      const column = firstKnotColumn(OUTLINE_RULES, problem, row, [left, right], startSide);
      const begins = OUTLINE_RULES.beginsLeft(row, startSide) ? 'left' : 'right';
      const strings = begins === 'left' ? left : right;
      return [
        { key: 'row-side', values: { startSide, begins }, gives: null },
        { key: 'row-first-knot', values: { row, strings, column }, gives: `row-${row}` },
      ];
    }
    if (target === 'colour-in-row') {
      const cells = cellsBy(OUTLINE_RULES, problem).map(([, column]) => column);
      const colour = problem.picture?.palette[problem.colour ?? 0]?.name ?? '';
      return [
        { key: 'row-read', values: { row, read: readOut(problem, row) }, gives: null },
        {
          key: 'row-colour',
          values: { colour, cells: cells.length, columns: cells.join(', ') },
          gives: `row-${row}`,
        },
      ];
    }
    if (target === 'picture-cut') {
      const cut = cellsBy(OUTLINE_RULES, { ...problem, from: row, to: row }).length;
      return left + right > 2 ? [{ key: 'row-picture-cut', values: { ...values, cut }, gives: `row-${row}` }] : [];
    }
    return left + right > 2 ? [{ key: 'row-corner-cells', values, gives: `row-${row}` }] : [];
  });
}
