import type { Clues } from '../steps.ts';
import type { RowField, RowProblem } from './problem.ts';
import type { RowHintKey } from './solution.ts';

/** Where to look and what to do, for one part of the row or for all of it. */
export function clues(problem: RowProblem, field: RowField | null = null): Clues<RowHintKey> {
  const { direction, change, before, row } = problem;
  const [left, right] = before;
  const rightward = direction === 'rightward';
  const values = {
    row,
    direction,
    change,
    start: rightward ? left : right,
    end: rightward ? right : left,
    startSide: rightward ? 'left' : 'right',
    endSide: rightward ? 'right' : 'left',
  };
  const about = field ?? 'row';
  return { look: { key: `look-${about}`, values }, do: { key: `do-${about}`, values } };
}
