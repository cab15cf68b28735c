import type { Fit, RowPlan } from '../../solver/piece.ts';
import type { Point } from '../strand/point.ts';
import type { Laid } from './model-types.ts';
import { COLUMN, halfColumn, ROW, standingPacked } from './packed.ts';

/** Where things hang in one row: the middles of its two edges, and how many strands each has. */
export interface Edges {
  readonly left: number;
  readonly right: number;
  readonly leftStrands: number;
  readonly rightStrands: number;
}

/** Strands at an edge of so many columns; a carried end rides along all the way down. */
const strandsAt = (fit: Fit, side: 'left' | 'right', columns: number): number =>
  columns + (fit.carrySide === side ? 1 : 0);

export function edgesOf(fit: Fit, leftBundle: number, rightBundle: number): Edges {
  const leftStrands = strandsAt(fit, 'left', leftBundle);
  const rightStrands = strandsAt(fit, 'right', rightBundle);
  return {
    left: leftBundle * COLUMN - halfColumn(leftStrands),
    right: (fit.width - rightBundle) * COLUMN + halfColumn(rightStrands),
    leftStrands,
    rightStrands,
  };
}

/** The top of a row, in d. */
export const topOf = ({ fromRow, pitch }: Laid, row: number): number => (row - fromRow) * pitch;

/** The row that a height lies in. */
export const rowAt = ({ fromRow, pitch }: Laid, y: number): number => fromRow + Math.floor(y / pitch);

/** The middle of a column of single strings. */
export const columnMiddle = (column: number): number => (column - 0.5) * COLUMN;

/** Where a base string stands in a row; column 0 is a carried end on the left, width + 1 one on the right. */
function standsAt(fit: Fit, { leftBundle, rightBundle }: RowPlan, column: number): [x: number, z: number] {
  const edges = edgesOf(fit, leftBundle, rightBundle);
  const carriedLeft = fit.carrySide === 'left' ? 1 : 0;
  if (column <= leftBundle && (leftBundle > 1 || carriedLeft)) {
    const [x, z] = standingPacked(edges.leftStrands)[column - 1 + carriedLeft] ?? [0, 0];
    return [edges.left + x, z];
  }
  const firstRight = fit.width - rightBundle + 1;
  if (column >= firstRight && (rightBundle > 1 || fit.carrySide === 'right')) {
    const [x, z] = standingPacked(edges.rightStrands)[column - firstRight] ?? [0, 0];
    return [edges.right + x, z];
  }
  return [columnMiddle(column), 0];
}

/**
 * How a base string runs down the rows, each row's knots holding it straight. `held` tells whether a row's knot on it is
 * tied: where not, it hangs on as it came.
 */
export function courseOf(
  { fit, laid }: { readonly fit: Fit; readonly laid: Laid },
  rows: readonly RowPlan[],
  column: number,
  held: (row: RowPlan) => boolean,
): Point[] {
  const points: Point[] = [];
  for (const row of rows) {
    if (!held(row)) break;
    const [x, z] = standsAt(fit, row, column);
    const top = topOf(laid, row.row);
    const from: Point = [x, top + ROW * 0.12, z];
    const last = points.at(-1);
    if (last && last[0] === x && last[2] === z) points.pop();
    else points.push(...(last && laid.pitch > ROW ? bend(last, from) : []), from);
    points.push([x, top + ROW * 0.88, z]);
  }
  return points;
}

/** Between two rows that lie apart a string bends: it hangs straight out of the one and straight into the other. */
function bend(from: Point, to: Point): Point[] {
  return [0.15, 0.3, 0.5, 0.7, 0.85].map((part): Point => {
    const eased = part * part * (3 - 2 * part);
    return [
      from[0] + (to[0] - from[0]) * eased,
      from[1] + (to[1] - from[1]) * part,
      from[2] + (to[2] - from[2]) * eased,
    ];
  });
}

/** Where a base string hangs above the first of some rows, when the rows before are not there. */
export function comesFrom(fit: Fit, row: RowPlan, column: number, above: number): Point {
  const [x, z] = standsAt(fit, row, column);
  return [x, -above, z];
}
