import type { RowPlan } from '../solver/piece.ts';
import type { Plan } from '../solver/plan.ts';
import { cord, twist } from './cord.ts';
import { ACROSS, type Drawing, d, type Figure, path, type Shape, step, text, type Values } from './drawing.ts';
import { colourOf, isTurning, knotStrokes, runsOf } from './knots.ts';
import { leadAt } from './lead-at.ts';
import { CUT, type Cut, slots } from './slots.ts';

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
/** Knots drawn side by side before some are left out, and how many stay at either edge and round the last one tied. */
const MOST = 28;
const STAY = 8;
/** Heights from the top: where the strings begin, the middle of the knots, where the strings end. */
const TOP = 28;
const KNOTS = 104;
const FOOT = 186;

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

function draw(plan: RowFigurePlan, options: RowOptions = {}): Drawing<RowKey> {
  const { across = ACROSS } = options;
  const row = rowAt(plan, options);
  const { leftBundle, rightBundle, knots, firstColumn, direction, startMove } = row.plan;
  const rightward = direction === 'rightward';

  // One slot a knot; a bundle's is wider. Of a long row both edges and the place of work are drawn.
  const cuts: Cut[] = [];
  if (knots > MOST) {
    const work = Math.min(knots, Math.max(1, rightward ? row.tied : knots - row.tied));
    const window: Cut = [Math.max(STAY, work - (STAY >> 1)), Math.min(knots - STAY, work + (STAY >> 1))];
    const parts: Cut[] =
      window[0] < window[1]
        ? [
            [STAY, window[0]],
            [window[1], knots - STAY],
          ]
        : [[STAY, knots - STAY]];
    cuts.push(...parts.filter(([a, b]) => b - a > CUT));
  }
  const extra = (bundle: number): number => (bundle > 1 ? Math.min(2.2, bundle * 0.28) : 0);
  const [more, mores] = [extra(leftBundle), extra(rightBundle)];
  const drawn = knots - cuts.reduce((sum, [a, b]) => sum + b - a - CUT, 0);
  const pitch = Math.min(WIDEST, (across - 48) / (drawn + more + mores));
  const plain = slots(0, knots, cuts, pitch, across);
  const shift = ((more - mores) / 2) * pitch;
  const edge = (slot: number): number =>
    plain.edge(slot) + shift + (slot <= 0 ? -more * pitch : slot >= knots ? mores * pitch : 0);
  const mid = (slot: number): number => (edge(slot) + edge(slot + 1)) / 2;
  const weight = Math.min(8, pitch * 0.52);
  const thread = Math.min(8, pitch * 0.5);
  /** Where a place of work is, from the base strings to its left. */
  const place = (at: number): number =>
    at < leftBundle
      ? edge(0) + ((edge(1) - edge(0)) * at) / leftBundle - (at ? 0 : thread)
      : at > row.width - rightBundle
        ? edge(knots) -
          ((edge(knots) - edge(knots - 1)) * (row.width - at)) / rightBundle +
          (at < row.width ? 0 : thread)
        : edge(at - leftBundle + 1);

  const shapes: Part[] = [twist(weight)];
  // Base strings: singles hang straight, a bundle's are drawn together under its knot.
  let [singles, moved] = ['', ''];
  const bundles: string[] = [];
  let packed = weight;
  for (let slot = 0; slot < knots; slot += 1) {
    if (!plain.shown(slot)) continue;
    const edgeOf = slot === 0 ? row.sizes[0] : slot === knots - 1 ? row.sizes[1] : null;
    const outward = slot === 0 ? -1 : 1;
    const x = mid(slot);
    if (edgeOf && edgeOf.is > 1) {
      const apart = Math.min(weight * 1.02, (edge(slot + 1) - edge(slot) - 2) / edgeOf.is);
      packed = Math.min(packed, apart * 1.25);
      const strands = ['', ''];
      for (let strand = 0; strand < edgeOf.is; strand += 1) {
        const off = (strand - (edgeOf.is - 1) / 2) * apart * outward;
        const tight = off * 0.62;
        const one = d`M${x + off} ${TOP}C${x + off} ${TOP + 44} ${x + tight} ${KNOTS - 34} ${x + tight} ${KNOTS}S${x + off} ${FOOT - 44} ${x + off} ${FOOT}`;
        // The one that joined lies innermost.
        if (edgeOf.is > edgeOf.was && strand === 0) moved += one;
        else strands[strand % 2] += one;
      }
      bundles.push(...strands);
      continue;
    }
    // A string let out leaves the bundle's inner side.
    const left = slot === (row.sizes[0].is > 1 || row.sizes[0].was > 1 ? 1 : -1) && row.sizes[0].was > row.sizes[0].is;
    const right = slot === knots - 2 && row.sizes[1].was > row.sizes[1].is;
    if (left || right) {
      const from = left ? edge(1) - thread * 0.2 : edge(knots - 1) + thread * 0.2;
      moved += d`M${from} ${TOP}C${from} ${TOP + 30} ${x} ${TOP + 22} ${x} ${KNOTS - 20}V${FOOT}`;
    } else singles += d`M${x} ${TOP}V${FOOT}`;
  }
  const strings = [
    cord<RowKey>(weight, singles, 'base'),
    ...bundles.map((one) => cord<RowKey>(packed, one, 'bundle')),
    cord<RowKey>(weight, moved, 'must moved'),
  ];

  // The leading string: from the row above to where this row begins, and its end where the work is now.
  const sign = rightward ? 1 : -1;
  const [begin, here] = [place(row.start), place(row.at)];
  const from = place(row.from);
  const first = row.tied ? KNOTS - weight : KNOTS + 8;
  const lead = d`M${from} ${TOP - 6}C${from} ${TOP + 34} ${begin} ${KNOTS - 50} ${begin} ${first}`;
  const tail = d`M${here} ${KNOTS + (row.tied ? weight * 0.8 : 0)}C${here} ${KNOTS + 30} ${here + sign * 10} ${KNOTS + 30} ${here + sign * 10} ${KNOTS + 66}`;
  const last = row.runs.findLast(({ tied }) => tied > 0)?.run ?? row.runs[0]?.run;
  const start = cord<RowKey>(thread, lead, 'lead', colourOf(plan.chart, row.runs[0]?.run));
  // Carried behind the edge strings; otherwise strings pass behind it.
  shapes.push(...(startMove === 'carry-behind' ? [start, ...strings] : [...strings, start]));
  shapes.push(cord(thread, tail, 'lead end', colourOf(plan.chart, last)));

  const labels: Part[] = [];
  let waiting = '';
  for (const { run, tied } of row.runs) {
    const { knot, columns, strands, count } = run;
    const step1 = columns[1] < columns[0] ? -1 : 1;
    let strokes = '';
    for (let done = 0; done < count; done += 1) {
      const slot = columns[0] + done * step1 - firstColumn;
      if (!plain.shown(slot)) continue;
      if (done >= tied) {
        waiting += d`M${mid(slot)} ${KNOTS}h0`;
        continue;
      }
      const half = strands > 1 ? (edge(slot + 1) - edge(slot)) * 0.31 + thread * 0.8 : pitch / 2;
      strokes += knotStrokes(knot, mid(slot), KNOTS, half, thread);
    }
    shapes.push(cord(thread, strokes, `lead knot ${knot}`, colourOf(plan.chart, run)));
    if (!isTurning(knot)) continue;
    const x = mid(columns[0] - firstColumn);
    const at =
      x < across / 2
        ? Math.max(66, Math.min(x, across / 2 - 108))
        : Math.min(across - 66, Math.max(x, across / 2 + 108));
    labels.push(
      path('leader', d`M${x} ${FOOT + 3}L${at} ${FOOT + 12}`),
      text(at, FOOT + 26, step('label-knots', { knot, count })),
      text(at, FOOT + 43, step('label-on-strings', { strands, count }), 'quiet'),
    );
  }
  const ordinary = row.runs.filter(({ run }) => !isTurning(run.knot));
  const count = ordinary.reduce((sum, { run }) => sum + run.count, 0);
  const knot = ordinary[0]?.run.knot;
  if (knot)
    labels.push(
      text(across / 2, FOOT + 26, step('label-knots', { knot, count })),
      text(across / 2, FOOT + 43, step('label-on-strings', { strands: 1, count }), 'quiet'),
    );
  shapes.push(path('waiting', waiting), ...labels);
  for (let slot = 0; slot < knots; slot += 1) {
    const column = firstColumn + slot;
    const room = (8 * String(column).length + 6) / pitch;
    if (
      plain.shown(slot) &&
      (slot === 0 || slot === knots - 1 || (column % 5 === 0 && slot >= room && knots - 1 - slot >= room))
    )
      shapes.push(text(mid(slot), 15, `${column}`, 'quiet'));
  }
  for (const x of plain.tears)
    shapes.push(path('tear', [-3, 3].map((dx) => d`M${x + shift + dx} ${KNOTS - 18}q5 9 0 18t0 18`).join('')));
  return { width: across, height: FOOT + 52, shapes };
}

function describe(plan: RowFigurePlan, options: RowOptions = {}) {
  const row = rowAt(plan, options);
  const { plan: own, tied, sizes } = row;
  const begins = own.direction === 'rightward' ? 'left' : 'right';
  const steps = [step<RowKey>('row', { row: own.row, knots: own.knots, begins })];
  const say = (key: RowKey, values: Values): void => {
    steps.push(step(key, values));
  };
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
