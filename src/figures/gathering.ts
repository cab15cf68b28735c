import type { Plan } from '../solver/plan.ts';
import { cord, twist } from './cord.ts';
import { ACROSS, type Drawing, d, type Figure, path, type Shape, step, TEXT, text, type Values } from './drawing.ts';
import { knotStrokes } from './knots.ts';
import { numbered } from './numbered.ts';
import { CUT, type Cut, saved, slots } from './slots.ts';

export interface GatheringOptions {
  readonly across?: number | undefined;
}

export type GatheringKey =
  | 'gathering'
  | 'gathering-side'
  | 'gathering-laid'
  | 'gathering-behind'
  | 'gathering-square'
  | 'gathering-too-few'
  | 'label-gathered'
  | 'label-middle';

export type GatheringPlan = Pick<Plan, 'fit' | 'rows' | 'finish' | 'startSide'>;

/** Strings drawn side by side before some of each side are left out. */
const MOST = 44;
/** Heights from the top: last row, first and last string gathered, where the bundles meet, the square knots, the ends. */
const ROW = 32;
const FIRST = 66;
const LAST = 168;
const MEET = 246;
const KNOT = 262;
const FOOT = 326;

function draw(
  { fit, rows, finish, startSide }: GatheringPlan,
  { across = ACROSS }: GatheringOptions = {},
): Drawing<GatheringKey> {
  const last = rows.at(-1);
  const leftBundle = last?.leftBundle ?? 1;
  const rightBundle = last?.rightBundle ?? 1;
  const { singles, perSide, middle } = finish;
  // One slot for each bundle, one for each single string.
  const count = singles + 2;
  const cuts: Cut[] = [];
  if (count > MOST) {
    const keep = (MOST - 6) >> 2;
    for (const cut of [
      [1 + keep, 1 + perSide - 3],
      [count - 1 - perSide + 3, count - 1 - keep],
    ] as const)
      if (cut[1] - cut[0] > CUT) cuts.push(cut);
  }
  const wide = 1.8;
  const pitch = Math.min(
    22,
    (across - 24 - 16 * String(perSide).length) / (count - saved(cuts, 0, count) + 2 * (wide - 1)),
  );
  const { mid, shown, tears } = slots(0, count, cuts, pitch, across);
  const centre = across / 2;
  const weight = Math.min(7.5, pitch * 0.52);
  const x = (slot: number): number =>
    slot === 0 ? mid(0) - pitch * 0.4 : slot === count - 1 ? mid(slot) + pitch * 0.4 : mid(slot);

  const shapes: Shape<GatheringKey>[] = [twist(weight)];
  if (fit.width < 4) {
    const strings = Array.from(
      { length: fit.width },
      (_, index) =>
        d`M${centre + (index - (fit.width - 1) / 2) * 20} 14C${centre + (index - (fit.width - 1) / 2) * 20} 60 ${centre + (index - (fit.width - 1) / 2) * 8} 60 ${centre + (index - (fit.width - 1) / 2) * 8} 96V150`,
    );
    shapes.push(cord(8, strings.join(''), 'base'), cord(8, knotStrokes('forward', centre, 100, 18, 8), 'must square'));
    return { width: across, height: 160, shapes };
  }

  // Each single string ties its knot round the bundle it joins, the nearest first.
  const rank = (order: number): number => order - saved(cuts, 0, order + 1);
  const deep = perSide > 1 ? Math.min(24, (LAST - FIRST) / (rank(perSide) - 1)) : 0;
  const half = Math.min(11, weight * 1.5);
  const joint = (order: number): number => FIRST + (rank(order) - 1) * deep;
  const bundle = (side: -1 | 1): number => (side < 0 ? x(0) : x(count - 1));
  const low = joint(Math.max(1, perSide)) + 14;
  for (const side of [-1, 1] as const) {
    const strands = side < 0 ? leftBundle : rightBundle;
    const at = bundle(side);
    const apart = Math.min(weight * 0.62, (pitch * wide) / strands);
    const to = centre + side * half * 0.6;
    const core = ['', ''];
    for (let strand = 0; strand < strands; strand += 1) {
      const off = strand - (strands - 1) / 2;
      const tight = off * Math.min(apart * 0.7, (half * 1.1) / strands);
      core[strand % 2] +=
        d`M${at + off * apart} 14C${at + off * apart} ${ROW} ${at + tight} ${ROW} ${at + tight} ${FIRST}V${low}C${at + tight} ${low + 40} ${to + tight} ${MEET - 40} ${to + tight} ${MEET}V${FOOT - 8}`;
    }
    shapes.push(
      ...core.map((strings) =>
        cord<GatheringKey>(Math.min(weight, apart * 1.5), strings, `bundle ${side < 0 ? 'left' : 'right'}`),
      ),
    );
  }
  // The two in the middle pass behind the bundles, so they are drawn first.
  const pass = (slot: number, side: -1 | 1): string => {
    const out = centre + side * (half * 1.6 + 16);
    return d`M${x(slot)} 14V${low - 10}C${x(slot)} ${low + 34} ${out} ${MEET - 54} ${out} ${MEET - 14}Q${out} ${KNOT - 4} ${out - side * 8} ${KNOT}`;
  };
  const innerLeft = perSide + 1;
  const innerRight = count - 2 - perSide;
  const behind = [
    cord<GatheringKey>(weight, pass(innerLeft, -1), 'must middle left'),
    cord<GatheringKey>(weight, pass(innerRight, 1), 'must middle right'),
  ];
  shapes.splice(1, 0, ...behind);
  if (middle === 3) {
    const side = startSide === 'left' ? -1 : 1;
    const to = centre + side * 2;
    shapes.splice(
      1,
      0,
      cord(
        weight,
        d`M${x(innerLeft + 1)} 14V${low}C${x(innerLeft + 1)} ${low + 40} ${to} ${MEET - 30} ${to} ${MEET}V${FOOT - 10}`,
        'laid',
      ),
    );
  }
  const wanted = numbered(perSide, deep, TEXT + 1);
  for (const side of [-1, 1] as const) {
    const at = bundle(side);
    let [coming, knots] = ['', ''];
    for (let order = perSide; order >= 1; order -= 1) {
      const slot = side < 0 ? order : count - 1 - order;
      if (!shown(slot)) continue;
      const y = joint(order);
      coming += d`M${x(slot)} 14V${Math.min(y - 4, ROW + 8)}C${x(slot)} ${y} ${(at + x(slot)) / 2} ${y - 2} ${at - side * half * 0.5} ${y}`;
      knots += knotStrokes(
        side < 0 ? 'backward' : 'forward',
        at,
        y,
        half,
        Math.min(weight * 0.8, Math.max(1.6, deep * 0.34 || 6)),
      );
      if (wanted(order)) shapes.push(text(at + side * (half + 12), y + TEXT * 0.36, `${order}`, 'quiet'));
    }
    const name = side < 0 ? 'left' : 'right';
    shapes.push(
      cord(weight, coming, `single ${name}`),
      cord(Math.min(weight * 0.8, Math.max(1.6, deep * 0.34 || 6)), knots, `joined ${name}`),
    );
  }

  // The last row's knots, and the square knots round both bundles.
  if (last)
    for (const run of last.runs) {
      let strokes = '';
      const way = run.columns[1] < run.columns[0] ? -1 : 1;
      for (let done = 0; done < run.count; done += 1) {
        const slot = run.columns[0] + done * way - last.firstColumn;
        if (shown(slot))
          strokes += knotStrokes(
            run.knot,
            x(slot),
            ROW,
            run.strands > 1 ? pitch * 0.95 : pitch / 2,
            Math.min(7, pitch * 0.46),
          );
      }
      shapes.push(cord(Math.min(7, pitch * 0.46), strokes, 'lead knot'));
    }
  const squares = 2;
  const tie = Math.min(6.5, weight);
  const breadth = half * 1.6 + 6;
  for (let knot = 0; knot < squares; knot += 1)
    for (const mirrored of [1, -1]) {
      const y = KNOT + (knot * 2 + (mirrored < 0 ? 1 : 0)) * tie * 1.5;
      const out = breadth + tie * 0.7;
      shapes.push(
        cord(
          tie,
          d`M${centre - out * mirrored} ${y + tie * 0.9}Q${centre - (out + 5) * mirrored} ${y - tie * 0.3} ${centre - breadth * mirrored} ${y - tie * 0.35}L${centre + breadth * mirrored} ${y + tie * 0.35}Q${centre + (out + 3) * mirrored} ${y + tie * 0.7} ${centre + out * mirrored} ${y + tie * 1.4}`,
          'must square',
        ),
      );
    }
  const ends = KNOT + squares * 2 * tie * 1.5;
  shapes.push(
    cord(
      tie,
      [-1, 1]
        .map(
          (side) =>
            d`M${centre + side * breadth} ${ends - 2}C${centre + side * (breadth + 10)} ${ends + 6} ${centre + side * (breadth + 8)} ${FOOT - 18} ${centre + side * (breadth + 12)} ${FOOT - 6}`,
        )
        .join(''),
      'must ends',
    ),
  );

  for (const x of tears)
    shapes.push(path('tear', [-3, 3].map((dx) => d`M${x + dx} ${ROW - 12}q4 6 0 12t0 12`).join('')));
  if (perSide)
    for (const side of [-1, 1])
      shapes.push(text(side < 0 ? 66 : across - 66, MEET + 30, step('label-gathered', { count: perSide }), ''));
  shapes.push(text(centre, FOOT + 14, step('label-middle', { count: 2 }), 'must'));
  return { width: across, height: FOOT + 22, shapes };
}

function describe({ fit, finish, startSide }: GatheringPlan) {
  const { singles, perSide, middle } = finish;
  const steps = [step<GatheringKey>('gathering', { width: fit.width, singles })];
  const say = (key: GatheringKey, values: Values): void => {
    steps.push(step(key, values));
  };
  if (fit.width < 4) {
    say('gathering-too-few', { width: fit.width });
    return steps;
  }
  for (const made of finish.steps) {
    if (made.key === 'gather') say('gathering-side', made.values);
    if (made.key === 'pass-behind') say('gathering-behind', made.values);
  }
  if (middle === 3) say('gathering-laid', { side: startSide });
  say('gathering-square', { perSide });
  return steps;
}

/** After the last row: which single string joins which bundle, and the two that tie the square knots. */
export const gathering: Figure<'gathering', GatheringOptions, GatheringKey, GatheringPlan> = {
  name: 'gathering',
  draw,
  describe,
};
