import type { RowPlan } from '../solver/piece.ts';
import type { Plan } from '../solver/plan.ts';
import { LONGEST_FREE_FLOAT } from '../solver/thread/free-float.ts';
import { colourRuns, rowFloats } from '../solver/thread/row-floats.ts';
import { cord, twist } from './cord.ts';
import { ACROSS, type Drawing, d, type Figure, path, type Shape, step, text } from './drawing.ts';
import { CUT, type Cut, saved, slots } from './slots.ts';

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
const TOP = 30;
const KNOTS = 70;
/** How far the shallowest float hangs below the knots, and each further colour below it. */
const SAG = 22;
const LANE = 11;

const floatsOf = ({ runs }: RowPlan) => rowFloats(colourRuns(runs));

function rowAt({ rows }: BackPlan, { row }: BackOptions): RowPlan {
  const most = rows.reduce((best, each) => (floatsOf(each).length > floatsOf(best).length ? each : best));
  return row === undefined ? most : (rows[Math.min(Math.max(1, Math.round(row) || 1), rows.length) - 1] ?? most);
}

function draw(plan: BackPlan, options: BackOptions = {}): Drawing<BackKey> {
  const { chart } = plan;
  const { across = ACROSS } = options;
  const row = rowAt(plan, options);
  const { knots, direction } = row;
  const floats = floatsOf(row);
  const colours = [...new Set(floats.map(({ colour }) => colour))];
  const cuts: Cut[] = knots > MOST && knots - 2 * STAY > CUT + 1 ? [[STAY, knots - STAY]] : [];
  const pitch = Math.min(WIDEST, (across - 28) / (knots - saved(cuts, 0, knots)));
  const { mid, shown, tears } = slots(0, knots, cuts, pitch, across);
  const weight = Math.min(8, pitch * 0.5);
  const thread = Math.min(6, pitch * 0.42);
  /** Where a knot is, counted from the first tied; seen from behind, left and right change places. */
  const at = (tied: number): number => {
    const slot = direction === 'rightward' ? knots - 1 - tied : tied;
    return shown(slot) ? mid(slot) : (tears[0] ?? mid(slot));
  };
  const foot = KNOTS + SAG + Math.max(1, colours.length) * LANE + 26;

  let strings = '';
  for (let slot = 0; slot < knots; slot += 1) if (shown(slot)) strings += d`M${mid(slot)} ${TOP}V${foot}`;
  const shapes: Shape<BackKey>[] = [twist(weight), cord(weight, strings, 'base')];
  // A knot shows two short strokes behind its base.
  let tied = 0;
  for (const { colour, knots: count } of colourRuns(row.runs)) {
    let strokes = '';
    for (const end = tied + count; tied < end; tied += 1) {
      const x = at(tied);
      const half = pitch * 0.36;
      for (const y of [KNOTS - thread * 0.6, KNOTS + thread * 0.6]) strokes += d`M${x - half} ${y}h${2 * half}`;
    }
    shapes.push(cord(thread, strokes, 'lead across', chart?.palette[colour]?.colour));
  }
  // Each colour keeps its own depth, as its string keeps its place at the back.
  for (const { colour, columns, after } of floats) {
    const [x0, x1] = [at(after - 1), at(after + columns)];
    const deep = KNOTS + thread + SAG + colours.indexOf(colour) * LANE;
    shapes.push(
      cord(
        thread,
        d`M${x0} ${KNOTS + thread}C${x0} ${deep} ${x1} ${deep} ${x1} ${KNOTS + thread}`,
        'lead',
        chart?.palette[colour]?.colour,
      ),
    );
  }
  for (const x of tears)
    shapes.push(path('tear', [-3, 3].map((dx) => d`M${x + dx} ${KNOTS - 14}q5 7 0 14t0 14`).join('')));
  const longest = Math.max(0, ...floats.map(({ columns }) => columns));
  shapes.push(
    { ...text(2, 14, step('label-back-right'), 'quiet'), 'text-anchor': 'start' } as Shape<BackKey>,
    { ...text(across - 2, 14, step('label-back-left'), 'quiet'), 'text-anchor': 'end' } as Shape<BackKey>,
    text(across / 2, foot + 20, step('label-back-floats', { floats: floats.length, columns: longest })),
  );
  return { width: across, height: foot + 28, shapes };
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
