import type { RowPlan } from '../solver/piece.ts';
import type { Plan } from '../solver/plan.ts';
import { ACROSS, type Drawing, d, type Figure, path, type Shape, step, TEXT, text, type Values } from './drawing.ts';
import { runsOf } from './knots.ts';
import { numbered } from './numbered.ts';
import { COLUMN, levelFor, type PieceModel, PiecePainter, pieceModel, pieceStyle, ROW, UNIT } from './piece/index.ts';
import { type SpreadFinish, spreadFinish } from './piece/spread-finish.ts';

export interface GatheringOptions {
  /** One side has taken in more than the other. */
  readonly unequal?: boolean | undefined;
  readonly across?: number | undefined;
}

export type GatheringKey =
  | 'gathering'
  | 'gathering-side'
  | 'gathering-laid'
  | 'gathering-behind'
  | 'gathering-square'
  | 'gathering-unequal'
  | 'gathering-too-few'
  | 'label-gathered'
  | 'label-middle';

export type GatheringPlan = Pick<Plan, 'fit' | 'rows' | 'finish' | 'startSide'>;

/** Strings of each side that are drawn before some are left out, and which are left out then: two of those. */
const MOST = 12;
const TORN = [8, 9] as const;
/** Units of the drawing for d at most. */
const LARGEST = 7;
/** How many singles one side takes more than it should, and the other less, at most. */
const LOPSIDED = 2;
/** How far the strings are seen above the row, and beside the bundles, in d. */
const ABOVE = 2.6;
const ASIDE = 3.6;
/** Units that stay free above and at the sides of the cords, for the numbers of the steps. */
const TOP = 4;
const GUTTER = 6;
/** Pixels of a page for one unit of a drawing, so that cords are as fine as can be seen. */
const PIXELS = 1.5;

/** The last row with fewer single strings, which keep their places from either bundle: those in the middle stay. */
function narrowed(row: RowPlan, perSide: number, fewer: number): RowPlan {
  const column = (own: number): number => {
    const order = own - row.leftBundle;
    const fromRight = row.rightBundle;
    const singles = row.lastColumn - row.firstColumn - 1;
    if (order <= perSide)
      return own <= row.leftBundle + TORN[0] ? own : Math.max(row.leftBundle + TORN[0], own - fewer);
    return singles - order < perSide && fromRight ? own - 2 * fewer : own - fewer;
  };
  const runs = runsOf(row, false).map((run) => {
    const columns = [column(run.columns[0]), column(run.columns[1])] as const;
    return { ...run, columns, count: Math.abs(columns[1] - columns[0]) + 1 };
  });
  const [firstColumn, lastColumn] = [column(row.firstColumn), column(row.lastColumn)];
  return { ...row, row: 2, startMove: 'none', runs, firstColumn, lastColumn, knots: lastColumn - firstColumn + 1 };
}

export interface GatheringCords {
  readonly model: PieceModel;
  readonly finish: SpreadFinish;
  /** How many singles each side has in the drawing, and how many more in the piece. */
  readonly perSide: number;
  readonly fewer: number;
  /** How many more the left side has taken, and the right one less. */
  readonly lopsided: number;
}

/** How many singles go astray, where there are enough of them. */
const astray = ({ finish }: GatheringPlan, { unequal = false }: GatheringOptions): number =>
  unequal ? Math.min(LOPSIDED, finish.perSide) : 0;

/** The last row and its finishing as cord; the tests look at the same. */
export function gatheringCords(plan: GatheringPlan, options: GatheringOptions = {}): GatheringCords {
  const { fit, rows, finish, startSide } = plan;
  const lopsided = astray(plan, options);
  const last = rows.at(-1) as RowPlan;
  const fewer = finish.perSide > MOST ? finish.perSide - MOST : 0;
  const perSide = finish.perSide - fewer;
  const width = fit.width - 2 * fewer;
  const own = { ...fit, width };
  const { leftBundle, rightBundle } = last;
  const spread = (from: number): SpreadFinish =>
    spreadFinish({
      fit: own,
      leftBundle,
      rightBundle,
      finish: { perSide, middle: finish.middle },
      lopsided,
      startSide,
      from,
      leftOut: fewer ? TORN : null,
    });
  const alone = spread(0);
  // It is shown as a second row, since its strings come from a row and not from the bar.
  const row = narrowed(last, finish.perSide, fewer);
  const model = pieceModel({
    fit: own,
    bundles: { left: [], right: [] },
    rows: [row, row],
    pulled: {
      fromRow: 2,
      apart: 0,
      moved: alone.tying.map((column) => ({ column, row: 2, on: true })),
      finish: spread,
    },
  });
  return { model, finish: alone, perSide, fewer, lopsided };
}

/** Without the strings that are left out, and the knots on them. */
function withoutTorn({ model, perSide, fewer }: GatheringCords, { leftBundle, rightBundle }: RowPlan): PieceModel {
  if (!fewer || perSide < TORN[1]) return model;
  const torn = new Set(TORN.flatMap((order) => [leftBundle + order, model.width + 1 - rightBundle - order]));
  return {
    ...model,
    places: model.places.filter(({ knot }) => !knot || !torn.has(knot.column)),
    strings: model.strings.filter(({ id }) => ![...torn].some((column) => id === `base-${column}`)),
  };
}

function draw(plan: GatheringPlan, options: GatheringOptions = {}): Drawing<GatheringKey> {
  const { across = ACROSS } = options;
  const cords = gatheringCords(plan, options);
  const { model, finish, perSide, fewer, lopsided } = cords;
  const last = plan.rows.at(-1) as RowPlan;
  const few = plan.fit.width < 4;
  const aside = Math.max(finish.middle - finish.left, finish.right - finish.middle) + ASIDE;
  const gutter = GUTTER + 8 * String(plan.finish.perSide + lopsided).length;
  const scale = Math.min(LARGEST, (across - 2 * gutter) / (2 * aside));
  const low = few ? finish.neck + ROW + 4.5 : model.frame.bottom - 1;
  const [width, height] = [2 * aside * scale, (low + ABOVE) * scale];
  const x = (place: number): number => across / 2 + (place - finish.middle) * scale;
  const y = (place: number): number => TOP + (place + ABOVE) * scale;
  const level = levelFor(scale * COLUMN * PIXELS) === 'cord' ? 'cord' : 'stitch';
  const shown = withoutTorn(cords, last);
  const box = [finish.middle - aside, -ABOVE, 2 * aside, low + ABOVE].map((value) => Math.round(value * UNIT));
  const shapes: Shape<GatheringKey>[] = [
    {
      tag: 'cords',
      id: 'cords',
      model: shown,
      style: pieceStyle(level),
      paint: (id) => new PiecePainter(id, level).parts(shown).reduce((svg, part) => svg + part.svg, ''),
    },
    { tag: 'window', shows: 'cords', x: x(finish.middle - aside), y: TOP, width, height, box: box.join(' ') },
  ];
  if (few) return { width: across, height: TOP + height + 4, shapes };

  for (const side of ['left', 'right'] as const) {
    const out = side === 'left' ? -1 : 1;
    const taken = perSide - out * lopsided;
    const wanted = numbered(taken, finish.knotAt(2) * scale - finish.knotAt(1) * scale, TEXT + 1);
    for (let order = 1; order <= taken; order += 1) {
      if (!wanted(order) || (fewer && order >= TORN[0] && order <= TORN[1])) continue;
      const number = order > TORN[1] ? order + fewer : order;
      shapes.push({
        tag: 'text',
        x: x(finish[side] + out * ASIDE),
        y: y(finish.knotAt(order)) + TEXT * 0.36,
        say: `${number}`,
        is: 'quiet',
        'text-anchor': side === 'left' ? 'end' : 'start',
      });
    }
    if (!fewer) continue;
    // Where strings are left out of the row, and the steps in which they join their bundle.
    const column = side === 'left' ? last.leftBundle + TORN[0] : model.width - last.rightBundle - TORN[0];
    const wave = [-3, 3].map((dx) => d`M${x(column * COLUMN) + dx} ${TOP}q4 6 0 12t0 12t0 12`);
    const beside = (finish.knotAt(TORN[0]) + finish.knotAt(TORN[1])) / 2;
    const level = [-3, 3].map((dy) => d`M${x(finish[side]) - 24} ${y(beside) + dy}q6 4 12 0t12 0t12 0t12 0`);
    shapes.push(path('tear', [...wave, ...level].join('')));
  }
  const foot = TOP + height;
  if (perSide)
    for (const side of [-1, 1])
      shapes.push(
        text(
          side < 0 ? 66 : across - 66,
          y(finish.neck) + 20,
          step('label-gathered', { count: plan.finish.perSide - side * lopsided }),
          lopsided ? 'must strong' : '',
        ),
      );
  shapes.push(text(across / 2, foot + 16, step('label-middle', { count: 2 }), 'must'));
  return { width: across, height: foot + 24, shapes };
}

function describe(plan: GatheringPlan, options: GatheringOptions = {}) {
  const { fit, finish, startSide } = plan;
  const { singles, perSide, middle } = finish;
  const lopsided = astray(plan, options);
  const steps = [step<GatheringKey>('gathering', { width: fit.width, singles })];
  const say = (key: GatheringKey, values: Values): void => {
    steps.push(step(key, values));
  };
  if (fit.width < 4) {
    say('gathering-too-few', { width: fit.width });
    return steps;
  }
  for (const { key, values } of finish.steps) {
    const more = values['side'] === 'left' ? lopsided : -lopsided;
    const count = Number(values['count']) + more;
    if (key === 'gather' && count > 0)
      say('gathering-side', { ...values, count, becomes: Number(values['becomes']) + more });
    if (key === 'pass-behind') say('gathering-behind', { ...values, column: Number(values['column']) + lopsided });
  }
  if (middle === 3) say('gathering-laid', { side: startSide });
  if (lopsided) say('gathering-unequal', { left: perSide + lopsided, right: perSide - lopsided });
  say('gathering-square', { perSide });
  return steps;
}

/** After the last row: which single string joins which bundle, and the two that tie the square knots. */
export const gathering: Figure<'gathering', GatheringOptions, GatheringKey, GatheringPlan> = {
  name: 'gathering',
  draw,
  describe,
};
