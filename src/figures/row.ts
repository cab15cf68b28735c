import type { RowPlan } from '../solver/piece.ts';
import type { Plan } from '../solver/plan.ts';
import { cordRows, knotAt, movedIn, type Stretch } from './cord-rows.ts';
import { ACROSS, type Drawing, d, type Figure, path, type Shape, step, TEXT, text, type Values } from './drawing.ts';
import { isTurning, runsOf } from './knots.ts';
import { leadAt } from './lead-at.ts';

export interface RowOptions {
  /** From 1; row 1 when left out. */
  readonly row?: number | undefined;
  /** Knots of the row that are tied so far; all when left out. */
  readonly knot?: number | undefined;
  /** In the chart's colours; otherwise the leading string has the colour it has in all drawings. */
  readonly coloured?: boolean | undefined;
  readonly across?: number | undefined;
}

export type RowKey =
  | 'row'
  | 'row-above'
  | 'row-so-far'
  | 'row-moves'
  | 'row-run'
  | 'row-freed'
  | 'row-taken-in'
  | 'row-leading'
  | 'label-knots'
  | 'label-on-strings';

export type RowFigurePlan = Pick<Plan, 'fit' | 'rows' | 'chart'>;

type Part = Shape<RowKey>;

const WIDEST = 30;
/**
 * Knots drawn side by side before some are left out: fewer where strings change over, since then the edges are what
 * counts. How many stay at either edge, and how few are not worth a tear.
 */
const MOST = 28;
const MOST_AT_EDGES = 20;
const STAY = 8;
const TORN = 2;
/** From the row above to this one, and how far the strings are seen below it, in d. */
const APART = 3.4;
const BELOW = 7.5;
/** Room for the numbers of the columns. */
const TOP = 22;

/** One row as it stands: which knots are tied, where the leading string is, what moved at the edges. */
function rowAt({ fit, rows, chart }: RowFigurePlan, { row = 1, knot, coloured = false }: RowOptions) {
  const index = Math.min(Math.max(1, Math.round(row) || 1), rows.length) - 1;
  const plan = rows[index] as RowPlan;
  const before = rows[index - 1];
  const tied = Math.min(Math.max(0, Math.round(knot ?? plan.knots)), plan.knots);
  const { from, start, at } = leadAt(rows, plan.row, tied);
  let left = tied;
  const runs = runsOf(plan, coloured && chart !== null).map((run) => {
    const done = Math.min(left, run.count);
    left -= done;
    return { run, tied: done };
  });
  const sizes = [
    { side: 'left', was: before?.leftBundle ?? plan.leftBundle, is: plan.leftBundle },
    { side: 'right', was: before?.rightBundle ?? plan.rightBundle, is: plan.rightBundle },
  ] as const;
  return { plan, tied, runs, from, start, at, sizes, width: fit.width };
}

/** The columns that are drawn: of a long row both edges and the place of work. */
function stretchesOf({ plan, tied }: ReturnType<typeof rowAt>, most: number): Stretch[] {
  const { firstColumn, lastColumn, knots, direction } = plan;
  if (knots <= most) return [[firstColumn, lastColumn]];
  const work = direction === 'rightward' ? tied : knots - tied;
  const parts: [from: number, to: number][] = [
    [0, STAY],
    [Math.max(0, work - (STAY >> 1)), Math.min(knots, work + (STAY >> 1))],
    [knots - STAY, knots],
  ];
  const joined: [from: number, to: number][] = [];
  for (const part of parts.sort((a, b) => a[0] - b[0])) {
    const last = joined.at(-1);
    // Where no more would be left out than a tear takes up, nothing is.
    if (last && part[0] - last[1] <= TORN) last[1] = Math.max(last[1], part[1]);
    else joined.push(part);
  }
  return joined.map(([from, to]) => [firstColumn + from, firstColumn + to - 1]);
}

/** The columns of the strings under one knot. */
function columnsUnder({ leftBundle, rightBundle, firstColumn, lastColumn }: RowPlan, column: number): number[] {
  if (column === firstColumn) return Array.from({ length: leftBundle }, (_, i) => column - i);
  return column === lastColumn ? Array.from({ length: rightBundle }, (_, i) => column + i) : [column];
}

/** The first row that is drawn: the one above where strings change over, so that they are seen on their way. */
function fromRow(rows: readonly RowPlan[], row: RowPlan): number {
  const before = rows[row.row - 2];
  const alike = before?.leftBundle === row.leftBundle && before.rightBundle === row.rightBundle;
  return before && !alike ? before.row : row.row;
}

/** The row as cord, below the row above it where strings change over, or below the bar; the tests look at the same. */
export function rowCords(plan: RowFigurePlan, options: RowOptions = {}) {
  const { across = ACROSS, coloured = false } = options;
  const row = rowAt(plan, options);
  const { rows, fit, chart } = plan;
  const number = row.plan.row;
  const from = fromRow(rows, row.plan);
  const cords = cordRows({
    fit,
    chart,
    rows,
    from,
    to: number,
    knot: row.tied,
    coloured,
    moved: movedIn(rows[number - 2], row.plan, fit.width, true),
    apart: APART,
    below: BELOW,
    // Whoever walks through the row sees it in one size all along.
    stretches: stretchesOf(row, from < number && options.knot === undefined ? MOST_AT_EDGES : MOST),
    across,
    gutter: String(number).length * 7.5 + 12,
    top: TOP,
    widest: WIDEST,
  });
  return { row, cords };
}

function draw(plan: RowFigurePlan, options: RowOptions = {}): Drawing<RowKey> {
  const { across = ACROSS } = options;
  const { row, cords } = rowCords(plan, options);
  const { firstColumn, lastColumn } = row.plan;
  const placeOf = (column: number): number | null => cords.x(knotAt(plan.fit, row.plan, column));
  /** Where the strings hang that still wait for their knot over a column. */
  const hangsAt = (column: number): number | null => {
    const strings = columnsUnder(row.plan, column).map((one) => cords.hangsAt(one));
    return cords.x(strings.reduce((sum, x) => sum + x, 0) / strings.length);
  };
  const shapes: Part[] = [...cords.shapes];
  const foot = cords.foot;
  const labels: Part[] = [];
  let waiting = '';
  for (const { run, tied } of row.runs) {
    const { knot, columns, strands, count } = run;
    const way = columns[1] < columns[0] ? -1 : 1;
    for (let done = tied; done < count; done += 1) {
      const x = hangsAt(columns[0] + done * way);
      if (x !== null) waiting += d`M${x} ${cords.y(row.plan.row)}h0`;
    }
    const x = isTurning(knot) ? placeOf(columns[0]) : null;
    if (x === null) continue;
    const at =
      columns[0] === firstColumn
        ? Math.max(66, Math.min(x, across / 2 - 108))
        : Math.min(across - 66, Math.max(x, across / 2 + 108));
    labels.push(
      path('leader', d`M${x} ${foot + 3}L${at} ${foot + 12}`),
      text(at, foot + 26, step('label-knots', { knot, count })),
      text(at, foot + 43, step('label-on-strings', { strands, count }), 'quiet'),
    );
  }
  const ordinary = row.runs.filter(({ run }) => !isTurning(run.knot));
  const count = ordinary.reduce((sum, { run }) => sum + run.count, 0);
  const knot = ordinary[0]?.run.knot;
  if (knot)
    labels.push(
      text(across / 2, foot + 26, step('label-knots', { knot, count })),
      text(across / 2, foot + 43, step('label-on-strings', { strands: 1, count }), 'quiet'),
    );
  shapes.push(path('waiting', waiting), ...labels);
  for (let column = firstColumn; column <= lastColumn; column += 1) {
    const room = (8 * String(column).length + 6) / cords.pitch;
    const x = placeOf(column);
    const ends = column === firstColumn || column === lastColumn;
    if (x !== null && (ends || (column % 5 === 0 && column - firstColumn >= room && lastColumn - column >= room)))
      shapes.push(text(x, 15, `${column}`, 'quiet'));
  }
  // Each row's number stands on the side where it begins; the row above is only there for its strings.
  for (const one of plan.rows.slice(cords.model.laid.fromRow - 1, row.plan.row)) {
    const rightward = one.direction === 'rightward';
    shapes.push({
      tag: 'text',
      x: rightward ? cords.left - 6 : cords.right + 6,
      y: cords.y(one.row) + TEXT * 0.36,
      say: `${one.row}`,
      is: one === row.plan ? 'strong' : 'quiet',
      'text-anchor': rightward ? 'end' : 'start',
    });
  }
  return { width: across, height: foot + 52, shapes };
}

function describe(plan: RowFigurePlan, options: RowOptions = {}) {
  const row = rowAt(plan, options);
  const { plan: own, tied, sizes } = row;
  const begins = own.direction === 'rightward' ? 'left' : 'right';
  const steps = [step<RowKey>('row', { row: own.row, knots: own.knots, begins })];
  const say = (key: RowKey, values: Values): void => {
    steps.push(step(key, values));
  };
  const from = fromRow(plan.rows, own);
  if (from < own.row || from === 1) say('row-above', { above: from < own.row ? from : 0 });
  if (tied < own.knots) say('row-so-far', { tied, knots: own.knots });
  if (own.startMove !== 'none') say('row-moves', { move: own.startMove, side: begins });
  for (const { side, was, is } of sizes) {
    if (is < was) say('row-freed', { side, column: side === 'left' ? is + 1 : row.width - is });
    if (is > was) say('row-taken-in', { side, bundle: is });
  }
  for (const { run } of row.runs)
    say('row-run', {
      knot: run.knot,
      count: run.count,
      strands: run.strands,
      from: run.columns[0],
      to: run.columns[1],
      colour: (run.colour !== undefined && plan.chart?.palette[run.colour]?.name) || '',
    });
  say('row-leading', { start: row.start, at: row.at, width: row.width });
  return steps;
}

/** One row as it is tied: its strings, knots and edges, and where the leading string begins and is now. */
export const row: Figure<'row', RowOptions, RowKey, RowFigurePlan> = { name: 'row', draw, describe };
