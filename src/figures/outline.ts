import { lostCells, type Margins, pictureLost } from '../solver/advise.ts';
import type { Plan } from '../solver/plan.ts';
import { chartCells } from './cells.ts';
import { cord, twist } from './cord.ts';
import { ACROSS, type Drawing, d, type Figure, path, type Shape, step, TEXT, text, type Values } from './drawing.ts';
import { numbered } from './numbered.ts';
import { stepped } from './stepped.ts';

export interface OutlineOptions {
  /** First and last row drawn, from 1; the whole piece when left out. */
  readonly from?: number | undefined;
  readonly to?: number | undefined;
  /** A row to be marked. */
  readonly row?: number | undefined;
  /** What the corners show: cells that are not tied (default), or the strings gathered there. */
  readonly show?: 'corners' | 'bundles' | undefined;
  /** Whether picture cells among the corner cells are marked. */
  readonly lost?: boolean | undefined;
  /** Plain rows and columns that were added round the chart; they are tinted. */
  readonly added?: Partial<Margins> | undefined;
  readonly across?: number | undefined;
}

export type OutlineKey =
  | 'outline'
  | 'outline-rows'
  | 'outline-first-row'
  | 'outline-full'
  | 'outline-never-full'
  | 'outline-closing'
  | 'outline-last-row'
  | 'outline-corners'
  | 'outline-row'
  | 'outline-lost'
  | 'outline-added';

export type OutlinePlan = Pick<Plan, 'fit' | 'rows' | 'outline' | 'chart'>;

/** The largest cell, and the greatest height in widths of the drawing. */
const LARGEST = 22;
const TALLEST = 2.2;
const TOP = 34;

/** The rows asked for, within what the piece has. */
const rowsOf = ({ rows }: OutlinePlan, { from = 1, to = rows.length }: OutlineOptions) => {
  const first = Math.min(Math.max(1, Math.round(from) || 1), rows.length);
  const last = Math.min(Math.max(first, Math.round(to) || first), rows.length);
  return { first, last, shown: rows.slice(first - 1, last) };
};

/** Where the cells of a plan lie in its drawing: the right edge of a column, the upper edge of a row. */
export function outlineFrame(plan: OutlinePlan, options: OutlineOptions = {}) {
  const { width } = plan.fit;
  const { across = ACROSS } = options;
  const { first, last, shown } = rowsOf(plan, options);
  const gutter = String(last).length * 7.5 + 20;
  const size = Math.min(LARGEST, (across - 2 * gutter) / width, (across * TALLEST) / shown.length);
  const left = (across - size * width) / 2;
  const x = (column: number): number => left + column * size;
  const y = (row: number): number => TOP + (row - first) * size;
  return { size, left, x, y };
}

function draw(plan: OutlinePlan, options: OutlineOptions = {}): Drawing<OutlineKey> {
  const { fit, chart } = plan;
  const { row: marked = 0, show = 'corners', across = ACROSS } = options;
  const { width } = fit;
  const { first, last, shown } = rowsOf(plan, options);
  const { size, left, x, y } = outlineFrame(plan, options);
  const wide = size * width;
  const bottom = y(last + 1);

  const shapes: Shape<OutlineKey>[] = [
    twist(4),
    {
      tag: 'defs',
      shapes: [
        {
          tag: 'pattern',
          id: 'hatch',
          width: 4,
          height: 4,
          patternUnits: 'userSpaceOnUse',
          patternTransform: 'rotate(45)',
          shapes: [path('hatch', 'M0 2h4')],
        },
      ],
    },
    { tag: 'rect', is: 'sheet', x: left, y: TOP, width: wide, height: bottom - TOP },
  ];
  if (chart) shapes.push(chartCells(chart, [left, TOP], size, [first, last], true));

  // Lines of the grid, heavier at every fifth.
  let [thin, fifth] = ['', ''];
  for (let column = 1; column < width; column += 1)
    if (column % 5 === 0) fifth += d`M${x(column)} ${TOP}V${bottom}`;
    else thin += d`M${x(column)} ${TOP}V${bottom}`;
  for (let row = first; row < last; row += 1)
    if (row % 5 === 0) fifth += d`M${left} ${y(row + 1)}h${wide}`;
    else thin += d`M${left} ${y(row + 1)}h${wide}`;
  shapes.push(path('grid', size < 5 ? '' : thin), path('grid fifth', size < 1.5 ? '' : fifth));

  // The corners, and the outline stepped round what is tied.
  let [corners, rake, knots] = ['', '', ''];
  for (const { row, leftBundle, rightBundle, firstColumn, lastColumn } of shown) {
    const top = y(row);
    const middle = top + size / 2;
    if (leftBundle > 1) corners += d`M${left} ${top}h${(leftBundle - 1) * size}v${size}H${left}z`;
    if (rightBundle > 1) corners += d`M${x(lastColumn)} ${top}H${left + wide}v${size}H${x(lastColumn)}z`;
    for (const [bundle, knot, outwards] of [
      [leftBundle, firstColumn - 0.5, -1],
      [rightBundle, lastColumn - 0.5, 1],
    ] as const) {
      if (bundle < 2) continue;
      rake += d`M${x(knot)} ${middle}H${x(knot + outwards * (bundle - 1))}`;
      for (let strand = 1; strand < bundle; strand += 1)
        rake += d`M${x(knot + outwards * strand)} ${middle - size * 0.2}v${size * 0.4}`;
      const dot = Math.min(4.5, size * 0.3);
      knots += d`M${x(knot) - dot} ${middle}a${dot} ${dot} 0 1 0 0 -0.1z`;
    }
  }
  shapes.push(path('corner', corners), { tag: 'path', d: corners, paint: 'hatch' });
  if (show === 'bundles') shapes.push(path('rake', rake), path('gathered', knots));
  if (options.added) {
    const { rowsAbove = 0, rowsBelow = 0, columnsLeft = 0, columnsRight = 0 } = options.added;
    const band = (fromRow: number, rowCount: number, fromColumn: number, columnCount: number): string =>
      rowCount > 0 && columnCount > 0
        ? d`M${x(fromColumn)} ${y(fromRow)}h${columnCount * size}v${rowCount * size}h${-columnCount * size}z`
        : '';
    const high = plan.rows.length;
    shapes.push(
      path(
        'added',
        band(1, rowsAbove, 0, width) +
          band(high - rowsBelow + 1, rowsBelow, 0, width) +
          band(rowsAbove + 1, high - rowsAbove - rowsBelow, 0, columnsLeft) +
          band(rowsAbove + 1, high - rowsAbove - rowsBelow, width - columnsRight, columnsRight),
      ),
    );
  }
  if (options.lost)
    shapes.push(
      path(
        'lost',
        lostCells(plan)
          .map(([row, column]) => d`M${x(column - 1)} ${y(row)}h${size}v${size}h${-size}z`)
          .join(''),
      ),
    );
  shapes.push(path('outline', stepped(shown, x, y)));

  // The side where each row begins, shown by the leading string's end; numbers where there is room.
  const wanted = numbered(last, size, TEXT + 2, first);
  let [ends, markedEnd] = ['', ''];
  for (const { row, direction, firstColumn, lastColumn } of shown) {
    const rightward = direction === 'rightward';
    const outward = rightward ? -1 : 1;
    const edge = rightward ? left : left + wide;
    const middle = y(row) + size / 2;
    const here = row === marked;
    const near = marked && Math.abs(row - marked) * size < TEXT + 2;
    const named = here || (wanted(row) && !near);
    const end = d`M${edge + outward * 3} ${middle}h${outward * 8}`;
    if (here) markedEnd = end;
    else if (named || size >= 7) ends += end;
    if (named)
      shapes.push({
        tag: 'text',
        x: edge + outward * 15,
        y: middle + TEXT * 0.36,
        say: `${row}`,
        is: here ? 'must strong' : 'quiet',
        'text-anchor': rightward ? 'end' : 'start',
      });
    if (here)
      shapes.push({
        tag: 'rect',
        is: 'given marked',
        x: x(firstColumn - 1),
        y: y(row),
        width: (lastColumn - firstColumn + 1) * size,
        height: size,
      });
  }
  const weight = Math.max(2.4, Math.min(4.2, size * 0.42));
  shapes.push(cord(weight, ends, 'lead across'), cord(weight, markedEnd, 'must across'));
  const columns = numbered(width, size);
  for (let column = 1; column <= width; column += 1)
    if (columns(column)) shapes.push(text(x(column - 0.5), TOP - 16, `${column}`, 'quiet'));
  if (first === 1)
    shapes.push(cord(5, d`M${x(fit.left.columns) + 2} ${TOP - 6}H${x(width - fit.right.columns) - 2}`, 'metal'));
  return { width: across, height: bottom + 8, shapes };
}

function describe(plan: OutlinePlan, options: OutlineOptions = {}) {
  const { fit, outline } = plan;
  const { first, last, shown } = rowsOf(plan, options);
  const { rows } = plan;
  const steps = [step<OutlineKey>('outline', { width: fit.width, height: rows.length })];
  const say = (key: OutlineKey, values: Values): void => {
    steps.push(step(key, values));
  };
  if (shown.length < rows.length) say('outline-rows', { from: first, to: last });
  const [top, end] = [rows[0], rows.at(-1)];
  if (top && first === 1) say('outline-first-row', { knots: top.knots, left: top.leftBundle, right: top.rightBundle });
  if (outline.firstFullRow === null) say('outline-never-full', { width: fit.width });
  else say('outline-full', { row: outline.firstFullRow, rows: outline.fullWidthRows, width: fit.width });
  // Where a piece never gets its full width, its closing is under way before it can be seen.
  const narrows =
    outline.firstFullRow === null
      ? rows.find(({ knots }, index) => knots < (rows[index - 1]?.knots ?? 0))?.row
      : outline.firstClosingRow;
  if (narrows) say('outline-closing', { row: narrows });
  if (end && last === rows.length)
    say('outline-last-row', { row: end.row, knots: end.knots, left: end.leftBundle, right: end.rightBundle });
  const corners = shown.reduce((sum, row) => sum + row.leftBundle + row.rightBundle - 2, 0);
  say('outline-corners', { corners });
  if (options.lost && plan.chart) say('outline-lost', { lost: pictureLost(plan) ?? 0 });
  const { rowsAbove = 0, rowsBelow = 0, columnsLeft = 0, columnsRight = 0 } = options.added ?? {};
  if (rowsAbove + rowsBelow + columnsLeft + columnsRight > 0)
    say('outline-added', { rowsAbove, rowsBelow, columns: columnsLeft + columnsRight });
  const marked = shown.find(({ row }) => row === options.row);
  if (marked) {
    const { row, knots, leftBundle, rightBundle, direction } = marked;
    say('outline-row', {
      row,
      knots,
      left: leftBundle,
      right: rightBundle,
      side: direction === 'rightward' ? 'left' : 'right',
    });
  }
  return steps;
}

/** The chart, or an empty grid, with the outline stepped round what is tied. */
export const outline: Figure<'outline', OutlineOptions, OutlineKey, OutlinePlan> = { name: 'outline', draw, describe };
