import type { Clues } from '../steps.ts';
import type { RowField, RowProblem } from './problem.ts';
import type { RowHintKey } from './solution.ts';
import { asWorked } from './tie.ts';

/** Where to look and what to do, for one part of the row or for all of it. */
export function clues(problem: RowProblem, field: RowField | null = null): Clues<RowHintKey> {
  const { direction, change, before, row } = problem;
  const [start, end] = asWorked(before, direction);
  const [startSide, endSide] = direction === 'rightward' ? ['left', 'right'] : ['right', 'left'];
  const values = { row, direction, change, start, end, startSide: startSide ?? '', endSide: endSide ?? '' };
  const about = field ?? 'row';
  return { look: { key: `look-${about}`, values }, do: { key: `do-${about}`, values } };
}
