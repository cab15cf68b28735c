import type { RowPlan } from '../solver/piece.ts';
import { d } from './drawing.ts';

/**
 * The outline stepped round what is tied in some neighbouring rows, as a closed path. `x` gives the right edge of a
 * column (0 for the left edge of the first), `y` the upper edge of a row.
 */
export function stepped(
  rows: readonly Pick<RowPlan, 'row' | 'firstColumn' | 'lastColumn'>[],
  x: (column: number) => number,
  y: (row: number) => number,
): string {
  let [right, left] = ['', ''];
  for (const { row, firstColumn, lastColumn } of rows) {
    right += d`H${x(lastColumn)}V${y(row + 1)}`;
    left = d`H${x(firstColumn - 1)}V${y(row)}` + left;
  }
  const first = rows[0];
  return first ? `${d`M${x(first.firstColumn - 1)} ${y(first.row)}`}${right}${left}z` : '';
}
