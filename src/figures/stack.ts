import type { RowPlan } from '../solver/piece.ts';
import type { Plan } from '../solver/plan.ts';
import { cord, twist } from './cord.ts';
import { cordRows, knotAt, movedIn, type Stretch } from './cord-rows.ts';
import { ACROSS, type Drawing, d, type Shape, TEXT, text } from './drawing.ts';
import type { PieceModel } from './piece/index.ts';

export interface StackOptions {
  /** In the chart's colours; otherwise the leading string has the colour it has in all drawings. */
  readonly coloured?: boolean | undefined;
  readonly across?: number | undefined;
  /** How what was tied differs from the rows, where a fault is in the cords alone. */
  readonly altered?: ((model: PieceModel) => PieceModel) | undefined;
  /** A row whose number stands out. */
  readonly marked?: number | undefined;
}

export type StackPlan = Pick<Plan, 'fit' | 'rows' | 'outline' | 'chart'>;

/** Columns drawn side by side before the middle is left out, and the widest pitch. */
const MOST = 62;
const WIDEST = 22;
/** From one row to the next, and how far the strings are seen below the last, in d. */
const APART = 1.9;
const BELOW = 5.5;

/** The rows as cord, with what there is to say of the strings that change over; the tests look at the same. */
export function stackCords(
  { fit, rows, chart }: StackPlan,
  wanted: readonly RowPlan[],
  { across = ACROSS, coloured = false, altered }: StackOptions,
) {
  const { width } = fit;
  const [first, last] = [wanted[0]?.row ?? 1, wanted.at(-1)?.row ?? 1];
  const most = wanted.reduce((most, row) => Math.max(most, row.leftBundle, row.rightBundle), 1);
  const keep = Math.max(most + 2, MOST >> 1);
  const stretches: Stretch[] =
    width - 2 * keep > 2
      ? [
          [1, keep],
          [width - keep + 1, width],
        ]
      : [[1, width]];
  return cordRows({
    fit,
    chart,
    rows: rows.map((row) => wanted.find((one) => one.row === row.row) ?? row),
    from: first,
    to: last,
    coloured,
    altered,
    moved: wanted.flatMap((row, i) => movedIn(wanted[i - 1], row, width)),
    apart: APART,
    below: BELOW,
    stretches,
    across,
    gutter: String(last).length * 7.5 + 24,
    top: first === 1 ? 6 : 26,
    widest: WIDEST,
  });
}

/**
 * Some rows of a piece one under the other, as cord: each knot in its column and each side string on its way from its
 * bundle to its own column, so that the piece is seen to widen or to narrow. Strings that change over are in the accent.
 *
 * @param wanted neighbouring rows, at least one; above row 1 the strings come from bar and ring
 */
export function drawStack<Key extends string>(
  plan: StackPlan,
  wanted: readonly RowPlan[],
  options: StackOptions,
): Drawing<Key> {
  const { across = ACROSS, marked } = options;
  const cords = stackCords(plan, wanted, options);
  const shapes: Shape<Key>[] = [twist(4), ...cords.shapes];
  const [first, last] = [wanted[0], wanted.at(-1)];
  const deep = wanted.length > 1 ? (cords.y(last?.row ?? 1) - cords.y(first?.row ?? 1)) / (wanted.length - 1) : TEXT;
  const every = Math.max(1, Math.ceil((TEXT + 1) / deep));
  for (const [i, row] of wanted.entries()) {
    if (i % every !== 0 && row.row !== marked) continue;
    const rightward = row.direction === 'rightward';
    const [beside, out] = rightward ? [cords.left, -1] : [cords.right, 1];
    const y = cords.y(row.row);
    shapes.push(
      cord(3.6, d`M${beside + out * 2} ${y}h${out * 8}`, row.row === marked ? 'must across' : 'lead across'),
      {
        tag: 'text',
        x: beside + out * 14,
        y: y + TEXT * 0.36,
        say: `${row.row}`,
        is: row.row === marked ? 'must strong' : 'quiet',
        'text-anchor': rightward ? 'end' : 'start',
      },
    );
  }
  // The numbers of the outermost columns stand where the rows are widest: above them, or below.
  const above = first && last && first.knots > last.knots && first.row > 1;
  const widest = above ? first : last;
  let beyond = Number.NEGATIVE_INFINITY;
  for (const column of widest ? [widest.firstColumn, widest.lastColumn] : []) {
    const x = widest && cords.x(knotAt(plan.fit, widest, column));
    if (x === null || x === undefined || x < beyond) continue;
    beyond = x + 8 * String(plan.fit.width).length + 4;
    shapes.push(text(x, above ? 18 : cords.foot + 18, `${column}`, 'quiet'));
  }
  return { width: across, height: cords.foot + (above ? 8 : 24), shapes };
}
