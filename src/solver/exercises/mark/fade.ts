import type { SideName } from '../../piece.ts';
import type { Faded } from '../contract.ts';
import { type Cell, hasSides, type MarkField, type MarkProblem, type MarkSolution, sideOf } from './problem.ts';
import { solve } from './solve.ts';

/** The row and, where it is told, the side that a field stands for. */
function placeOf(field: MarkField): { row: number; side: SideName | undefined } {
  const [, row, side] = field.split('-');
  return { row: Number(row), side: side as SideName | undefined };
}

/** The row, of those that have cells to mark, that lies nearest to the one missed; of two, the later one. */
const nearest = (rows: readonly number[], wanted: number): number | undefined =>
  rows.reduce<number | undefined>(
    (best, row) => (best === undefined || Math.abs(row - wanted) <= Math.abs(best - wanted) ? row : best),
    undefined,
  );

/**
 * The half-worked form: the cells are marked but for the row, or the side of a row, that the learner missed last; but
 * for the last row where nothing was missed. Of a row that is alone one side is given all the same. Where nothing can
 * be given, as of a single cell, its working stands there instead, without the step that marks.
 */
export function fade(
  problem: MarkProblem,
  lastMissed: MarkField | null = null,
): Faded<Partial<MarkSolution>, MarkField> {
  const { cells } = solve(problem);
  const rows = [...new Set(cells.map(([row]) => row))];
  const told = lastMissed === null ? null : placeOf(lastMissed);
  const row = told ? nearest(rows, told.row) : rows.at(-1);
  if (row === undefined) return { given: {}, open: [] };
  const there = new Set(cells.filter(([at]) => at === row).map(([, column]) => sideOf(problem, column)));
  const sided = hasSides(problem);
  const missedSide = sided && told?.side && there.has(told.side) ? told.side : undefined;
  const side = missedSide ?? (sided && rows.length === 1 ? [...there].at(-1) : undefined);
  const isOpen = ([at, column]: Cell): boolean => at === row && (!side || sideOf(problem, column) === side);
  const given = cells.filter((cell) => !isOpen(cell));
  return {
    given: given.length > 0 ? { cells: given } : {},
    open: [missedSide ? `row-${row}-${missedSide}` : `row-${row}`],
  };
}
