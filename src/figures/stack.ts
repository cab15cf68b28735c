import type { RowPlan } from '../solver/piece.ts';
import type { Plan } from '../solver/plan.ts';
import { walkLead } from '../solver/walk.ts';
import { cord, twist } from './cord.ts';
import { ACROSS, type Drawing, d, path, type Shape, TEXT, text } from './drawing.ts';
import { colourOf, isTurning, knotStrokes, runsOf } from './knots.ts';
import { CUT, type Cut, saved, slots } from './slots.ts';

export interface StackOptions {
  /** In the chart's colours; otherwise the leading string has the colour it has in all drawings. */
  readonly coloured?: boolean | undefined;
  readonly across?: number | undefined;
  /** A row whose number stands out. */
  readonly marked?: number | undefined;
}

export type StackPlan = Pick<Plan, 'fit' | 'rows' | 'outline' | 'chart'>;

/** Columns drawn side by side before the middle is left out, and the widest pitch. */
const MOST = 62;
const WIDEST = 22;

/**
 * Some rows of a piece as a stack, each knot in its column and each side string led from its bundle to its own column,
 * so that the piece is seen to widen or to narrow. Strings that change over are in the accent.
 *
 * @param wanted neighbouring rows, at least one; above row 1 the strings come from bar and ring
 */
export function drawStack<Key extends string>(
  { fit, rows, chart }: StackPlan,
  wanted: readonly RowPlan[],
  { across = ACROSS, coloured = false, marked }: StackOptions,
): Drawing<Key> {
  const { width } = fit;
  const first = wanted[0]?.row ?? 1;
  const last = wanted.at(-1)?.row ?? 1;
  const onBar = first === 1;
  const most = wanted.reduce((most, row) => Math.max(most, row.leftBundle, row.rightBundle), 1);
  const keep = Math.max(most + 2, MOST >> 1);
  const cuts: Cut[] = width - 2 * keep > CUT + 1 ? [[keep, width - keep]] : [];
  const gutter = String(last).length * 7.5 + 24;
  const pitch = Math.min(WIDEST, (across - 2 * gutter) / (width - saved(cuts, 0, width)));
  const { edge, mid, shown, tears } = slots(0, width, cuts, pitch, across);
  const thread = Math.min(8, pitch * 0.5);
  const weight = Math.min(7, pitch * 0.46);
  const deep = Math.max(thread * 3.5, 8);
  const packed = Math.min(pitch * 0.34, (pitch * 3.4) / most);
  const top = onBar ? 20 : 6;
  const start = top + (onBar ? 46 : 24);
  const y = (row: number): number => start + (row - first) * deep;
  const foot = y(last) + 34;
  const left = edge(0);
  const right = edge(width);

  /** Where a string is in a row: in its own column, or packed outwards from the column in which its bundle is tied. */
  const held = (column: number, row: RowPlan): number => {
    const { leftBundle, rightBundle, firstColumn, lastColumn } = row;
    if (leftBundle > 1 && column <= leftBundle) return mid(firstColumn - 1) - (leftBundle - column) * packed;
    if (rightBundle > 1 && column >= lastColumn) return mid(lastColumn - 1) + (column - lastColumn) * packed;
    return mid(column - 1);
  };
  /** Whether a string is the one that leaves or joins its bundle between two rows: the innermost of the larger bundle. */
  const changes = (column: number, row: RowPlan, before: RowPlan): boolean =>
    (row.leftBundle !== before.leftBundle && column === Math.max(row.leftBundle, before.leftBundle)) ||
    (row.rightBundle !== before.rightBundle && width + 1 - column === Math.max(row.rightBundle, before.rightBundle));
  const barEnds = [edge(fit.left.columns), edge(width - fit.right.columns)] as const;

  const shapes: Shape<Key>[] = [twist(weight)];
  let straight = '';
  const sides = ['', ''];
  let moved = '';
  for (let column = 1; column <= width; column += 1) {
    if (!shown(column - 1)) continue;
    const row = wanted[0];
    if (!row) break;
    let x = held(column, row);
    // Above row 1 a side string comes from the ring, just beyond the bar's end.
    const [outLeft, outRight] = [fit.left.columns - column, column - 1 - width + fit.right.columns];
    const from = !onBar
      ? x
      : outLeft >= 0
        ? barEnds[0] - 6 - outLeft * packed
        : outRight >= 0
          ? barEnds[1] + 6 + outRight * packed
          : x;
    const still = from === x && wanted.every((next) => held(column, next) === x);
    let line = d`M${from} ${top}` + (still ? '' : d`C${from} ${top + 20} ${x} ${start - 20} ${x} ${start}`);
    wanted.forEach((next, index) => {
      const before = wanted[index - 1];
      if (!before) return;
      const [to, above, at] = [held(column, next), y(before.row), y(next.row)];
      const leg = to === x ? d`V${at}` : d`C${x} ${above + deep * 0.5} ${to} ${at - deep * 0.5} ${to} ${at}`;
      if (!still) line += leg;
      if (changes(column, next, before)) moved += d`M${x} ${above}` + leg + d`v${deep * 0.4}`;
      x = to;
    });
    line += d`V${foot}`;
    if (still) straight += line;
    else sides[column % 2] += line;
  }
  if (onBar) {
    // The bar, and the ring going on from its ends, where the side strings hang.
    const reach = [fit.left.columns, fit.right.columns].map((columns) => 9 + columns * packed);
    const shoulders = barEnds
      .map((end, index) => ({ end, out: end + (index ? 1 : -1) * (reach[index] ?? 0) }))
      .map(({ end, out }) => d`M${end} ${top + 2}C${(end + out) / 2} ${top + 2} ${out} ${top} ${out} ${top - 14}`);
    shapes.push(cord(5, shoulders.join(''), 'metal'), cord(7.5, d`M${barEnds[0]} ${top + 2}H${barEnds[1]}`, 'metal'));
  }
  shapes.push(
    cord(weight, straight, 'base'),
    cord(weight, sides[0] ?? '', 'base'),
    cord(weight, sides[1] ?? '', 'base'),
    cord(weight, moved, 'must moved'),
  );

  // The leading string turns at the edges, on the side where the last knot left it.
  const walk = walkLead(rows);
  const places = walk.ok ? walk.path.filter(({ row }) => row >= first && row <= last) : [];
  const at = (strings: number, row: RowPlan): number =>
    strings < row.leftBundle
      ? held(1, row) - pitch * 0.5
      : strings > width - row.rightBundle
        ? held(width, row) + pitch * 0.5
        : edge(strings);
  wanted.forEach((row, index) => {
    const next = wanted[index + 1];
    const ends = places.findLast((place) => place.row === row.row);
    const begins = places.find((place) => place.row === next?.row);
    if (!next || !ends || !begins) return;
    const [x0, x1] = [at(ends.ends, row), at(begins.at, next)];
    const turn = d`M${x0} ${y(row.row)}C${x0} ${y(row.row) + deep * 0.5} ${x1} ${y(next.row) - deep * 0.5} ${x1} ${y(next.row)}`;
    shapes.push(cord(thread * 0.9, turn, 'lead turn', coloured ? colourOf(chart, row.runs.at(-1)) : undefined));
  });

  for (const row of wanted) {
    for (const run of runsOf(row, coloured && chart !== null)) {
      const { knot, columns, count, strands } = run;
      const way = columns[1] < columns[0] ? -1 : 1;
      let strokes = '';
      for (let done = 0; done < count; done += 1) {
        const column = columns[0] + done * way;
        if (!shown(column - 1)) continue;
        const spread = (strands - 1) * packed;
        const x = mid(column - 1) + (strands > 1 ? (column === row.firstColumn ? -spread : spread) / 2 : 0);
        strokes += knotStrokes(knot, x, y(row.row), strands > 1 ? spread / 2 + pitch * 0.5 : pitch / 2, thread);
      }
      shapes.push(cord(thread, strokes, `lead knot ${isTurning(knot) ? 'turning' : 'ordinary'}`, colourOf(chart, run)));
    }
    const rightward = row.direction === 'rightward';
    const beside = rightward ? left - 4 : right + 4;
    const out = rightward ? -1 : 1;
    const named = deep >= 8 || (row.row - first) % 2 === 0;
    if (!named) continue;
    shapes.push(
      cord(3.6, d`M${beside + out * 2} ${y(row.row)}h${out * 8}`, row.row === marked ? 'must across' : 'lead across'),
      {
        tag: 'text',
        x: beside + out * 14,
        y: y(row.row) + TEXT * 0.36,
        say: `${row.row}`,
        is: row.row === marked ? 'must strong' : 'quiet',
        'text-anchor': rightward ? 'end' : 'start',
      },
    );
  }
  for (const x of tears)
    shapes.push(path('tear', [-3, 3].map((dx) => d`M${x + dx} ${start - 6}V${y(last) + 6}`).join('')));
  for (const column of [1, width]) shapes.push(text(mid(column - 1), foot + 18, `${column}`, 'quiet'));
  return { width: across, height: foot + 24, shapes };
}
