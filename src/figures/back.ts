import type { RowPlan } from '../solver/piece.ts';
import type { Plan } from '../solver/plan.ts';
import { LONGEST_FREE_FLOAT } from '../solver/thread/free-float.ts';
import { colourRuns, rowFloats } from '../solver/thread/row-floats.ts';
import { type CordRows, cordRows, type Stretch } from './cord-rows.ts';
import { ACROSS, type Drawing, type Figure, type Shape, step, text } from './drawing.ts';

export interface BackOptions {
  /** From 1; the first of the rows with the most floats when left out. */
  readonly row?: number | undefined;
  readonly across?: number | undefined;
}

export type BackKey =
  | 'back'
  | 'back-float'
  | 'back-long'
  | 'back-none'
  | 'label-back-left'
  | 'label-back-right'
  | 'label-back-floats';

export type BackPlan = Pick<Plan, 'fit' | 'rows' | 'chart'>;

const WIDEST = 26;
/** Knots drawn before the middle is left out, and how many stay at either edge. */
const MOST = 44;
const STAY = 16;
/** Room for the words above the cords. */
const TOP = 22;
/** From a row to the one above it, which is not drawn; and how far the strings are seen below, with every colour that floats. */
const APART = 3.4;
const BELOW = 3.2;
const LOWER = 1.6;

const floatsOf = ({ runs }: RowPlan) => rowFloats(colourRuns(runs));

function rowAt({ rows }: BackPlan, { row }: BackOptions): RowPlan {
  const most = rows.reduce((best, each) => (floatsOf(each).length > floatsOf(best).length ? each : best));
  return row === undefined ? most : (rows[Math.min(Math.max(1, Math.round(row) || 1), rows.length) - 1] ?? most);
}

/** The row from behind as cord; the tests look at the same. */
export function backCords(plan: BackPlan, options: BackOptions = {}): CordRows {
  const { fit, rows, chart } = plan;
  const { across = ACROSS } = options;
  const { row, knots, firstColumn, lastColumn } = rowAt(plan, options);
  const colours = [...new Set(floatsOf(rowAt(plan, options)).map(({ colour }) => colour))];
  const stretches: Stretch[] =
    knots > MOST
      ? [
          [firstColumn, firstColumn + STAY - 1],
          [lastColumn - STAY + 1, lastColumn],
        ]
      : [[firstColumn, lastColumn]];
  return cordRows({
    fit,
    chart,
    rows,
    from: row,
    to: row,
    coloured: chart !== null,
    moved: [],
    behind: true,
    // Each colour keeps its own depth, as its string keeps its place at the back.
    slack: colours,
    apart: APART,
    below: BELOW + LOWER * Math.max(1, colours.length),
    stretches,
    across,
    gutter: 8,
    top: TOP,
    widest: WIDEST,
  });
}

function draw(plan: BackPlan, options: BackOptions = {}): Drawing<BackKey> {
  const { across = ACROSS } = options;
  const floats = floatsOf(rowAt(plan, options));
  const { shapes: cords, foot } = backCords(plan, options);
  const longest = Math.max(0, ...floats.map(({ columns }) => columns));
  const shapes: Shape<BackKey>[] = [
    ...cords,
    { ...text(2, 14, step('label-back-right'), 'quiet'), 'text-anchor': 'start' } as Shape<BackKey>,
    { ...text(across - 2, 14, step('label-back-left'), 'quiet'), 'text-anchor': 'end' } as Shape<BackKey>,
    text(across / 2, foot + 18, step('label-back-floats', { floats: floats.length, columns: longest })),
  ];
  return { width: across, height: foot + 26, shapes };
}

function describe(plan: BackPlan, options: BackOptions = {}) {
  const row = rowAt(plan, options);
  const floats = floatsOf(row);
  const steps = [step<BackKey>('back', { row: row.row, knots: row.knots })];
  const column = (tied: number): number =>
    row.direction === 'rightward' ? row.firstColumn + tied : row.lastColumn - tied;
  for (const { colour, columns, after } of floats)
    steps.push(
      step(columns > LONGEST_FREE_FLOAT ? 'back-long' : 'back-float', {
        colour: plan.chart?.palette[colour]?.name ?? '',
        columns,
        from: column(after - 1),
        to: column(after + columns),
      }),
    );
  if (floats.length === 0) steps.push(step('back-none'));
  return steps;
}

/** One row seen from behind: the backs of its knots, and every float inside it. */
export const back: Figure<'back', BackOptions, BackKey, BackPlan> = { name: 'back', draw, describe };
