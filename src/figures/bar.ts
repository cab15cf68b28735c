import { type BarPlaces, type BarPlan, type BarStage, type Beside, barPlaces } from './bar-places.ts';
import { cord, twist } from './cord.ts';
import { ACROSS, type Drawing, d, type Figure, path, type Shape, step, text, type Values } from './drawing.ts';
import { type Cut, numbered, saved, slots } from './slots.ts';

export interface BarOptions {
  /** The answer when left out. */
  readonly stage?: BarStage | undefined;
  /** Units across, from 360 (a phone); text keeps its size. */
  readonly across?: number | undefined;
}

export type BarKey =
  | 'bar-capacity'
  | 'bar-shared'
  | 'bar-fitted'
  | 'bar-on-bar'
  | 'bar-empty'
  | 'bar-spare'
  | 'bar-no-spare'
  | 'bar-side'
  | 'bar-borrowed'
  | 'bar-carried'
  | 'label-bar-takes'
  | 'label-on-bar'
  | 'label-strings'
  | 'label-folds'
  | 'label-spare'
  | 'label-borrowed'
  | 'label-empty'
  | 'label-carried';

type Part = Shape<BarKey>;
/** −1 for the left side, 1 for the right one. */
type Sign = -1 | 1;

/** The widest pitch of two places: wide enough to see a lark's head, narrow enough for a keyring. */
const WIDEST = 30;
/** Strands drawn before the middle of the bar is cut out. */
const MOST = 66;
/** Heights from the top: of the ring's crown, the bar and the ledger of columns. */
const CROWN = 29;
const BAR = 116;
const LEDGER = 222;
/** Thickness of the ring's wire. */
const WIRE = 7;
/** How far the ring rises between the bar's end and its own side. */
const RISE = 26;

/** What is left out of a long bar: empty places past the sixth, and the middle of many strings. */
function cutsOf({ onBar, left, right, first, loneSlot }: BarPlaces, barEnd: number): Cut[] {
  const start = left.strings;
  const end = start + onBar;
  const keep = Math.max(8, ((MOST - start - right.strings) >> 2) * 2);
  // A fold is never cut through.
  const from = start + keep + (loneSlot === start ? 1 : 0);
  const all: Cut[] = [
    [first + 2, start - 2],
    [from, from + ((end - keep - from) >> 1) * 2],
    [end + 2, barEnd - 2],
  ];
  return all.filter(([a, b]) => b - a > 3);
}

const down = (x: number, y: number, to: number): string => d`C${x} ${y + 42} ${to} ${LEDGER - 70} ${to} ${LEDGER}`;

/** The strings of one side: each fold lies over the ring, one leg behind the wire and one before it. */
function foldsBeside(
  sign: Sign,
  { strings, over, borrowed }: Beside,
  hook: (strand: number) => readonly [x: number, y: number],
  column: (strand: number) => number,
  weight: number,
): { behind: Part[]; before: Part[] } {
  const name = sign < 0 ? 'left' : 'right';
  const lift = WIRE / 2 + weight * 0.2;
  let [legs, lent, folds, missing, single] = ['', '', '', '', ''];
  for (let j = over; j < strings; j += 2) {
    const [x, y] = hook(j);
    const [outX, outY] = hook(j + 1);
    const leg = d`M${x} ${y}` + down(x, y, column(j));
    if (j < borrowed) lent += leg;
    else legs += leg;
    folds +=
      d`M${x} ${y - lift}C${x} ${y - lift - weight} ${outX} ${outY - lift - weight} ${outX} ${outY - lift}` +
      down(outX, outY - lift, column(j + 1));
  }
  if (over) {
    const [x, y] = hook(0);
    const inner = x - sign * weight * 1.5;
    missing = d`M${x} ${y - 9}C${x} ${y - 24} ${inner} ${y - 24} ${inner} ${y - 6}V${y + 42}`;
    single = d`M${x} ${y - lift}` + down(x, y - lift, column(0));
  }
  return {
    behind: [cord(weight, legs, `legs ${name}`), cord(weight, lent, `must lent ${name}`)],
    // Missing is where its partner would hang, if there were one.
    before: [
      cord(weight, folds, `folds ${name}`),
      path('missing', missing),
      cord(weight, single, `must single ${name}`),
    ],
  };
}

/** A lark's head and the two turns of a lone string, each to be used at its places. */
function heads(weight: number, leg: number): Part {
  const top = BAR - WIRE / 2 - 1 - weight * 0.3;
  const low = BAR + WIRE / 2 + 1 + weight * 0.1;
  const side = leg + weight * 0.42;
  const turn = weight * 0.42;
  const band = d`M${-side} ${low}Q${-leg} ${low + weight * 0.8} 0 ${low + weight * 0.8}T${side} ${low}`;
  const turns = [turn, -turn].map((x) => d`M${x + 1.5} ${top}L${x - 1.5} ${low + weight * 0.3}`).join('');
  const symbol = (id: string, legs: string, head: Part): Part => ({
    tag: 'g',
    id,
    shapes: [cord(weight, legs), head],
  });
  return {
    tag: 'defs',
    shapes: [
      symbol('fold', d`M${-leg} ${top}V${LEDGER}M${leg} ${top}V${LEDGER}`, cord(weight * 0.9, band, 'across')),
      symbol('lone', d`M${-turn} ${BAR}V${LEDGER}`, cord(weight * 0.85, turns)),
    ],
  };
}

function draw(plan: BarPlan, { stage = 'fitted', across = ACROSS }: BarOptions = {}): Drawing<BarKey> {
  const { fit } = plan;
  const { capacity } = fit;
  const at = barPlaces(plan, stage);
  const { left, right, onBar, first, strands, lone, loneSlot, empty, spare } = at;
  const start = left.strings;
  const end = start + onBar;
  const barEnd = first + capacity;
  const open = stage === 'capacity';
  const sides = [
    { sign: -1, part: left },
    { sign: 1, part: right },
  ] as const;

  // One scale for all stages, so that they can stand side by side.
  const cuts = cutsOf(at, barEnd);
  const low = Math.min(0, first);
  const high = Math.max(strands, barEnd);
  const most = Math.max(fit.left.strands, fit.right.strands);
  const pitch = Math.min(
    WIDEST,
    (across - 20) / (high - low - saved(cuts, low, high)),
    (across - 66) / (capacity - saved(cuts, first, barEnd) + most),
  );
  const { edge, mid, shown, tears } = slots(low, high, cuts, pitch, across);
  const weight = Math.min(9, pitch * 0.62);
  const apart = Math.min(8, pitch * 0.5);
  const reach = Math.max(20, most * apart + 12);
  const middle = (edge(first) + edge(barEnd)) / 2;

  const behind: Part[] = [];
  const before: Part[] = [];
  let ring = '';
  for (const { sign, part } of sides) {
    const from = edge(sign < 0 ? first : barEnd);
    const out = from + sign * reach;
    ring += d`M${from} ${BAR}C${from + sign * reach * 0.55} ${BAR} ${out} ${BAR - RISE * 0.45} ${out} ${BAR - RISE}C${out} ${BAR - RISE - 36} ${middle + (out - middle) * 0.6} ${CROWN} ${middle} ${CROWN}`;
    if (open) continue;
    const folds = foldsBeside(
      sign,
      part,
      (strand) => {
        const along = 8 + (strand + 0.5) * apart;
        return [from + sign * along, BAR - RISE * (1 - Math.sqrt(1 - (along / reach) ** 2))];
      },
      (strand) => mid(sign < 0 ? start - 1 - strand : end + strand),
      weight,
    );
    behind.push(...folds.behind);
    before.push(...folds.before);
  }
  const shapes: Part[] = [
    twist(weight),
    ...behind,
    { tag: 'circle', is: 'key', cx: middle, cy: CROWN - 12, r: 14 },
    cord(WIRE, ring, 'metal'),
    cord(WIRE + 2.5, d`M${edge(first)} ${BAR}H${edge(barEnd)}`, 'metal'),
    ...before,
    heads(weight, pitch * 0.45),
  ];
  const hang = (is: string, x: number) => shapes.push({ tag: 'use', is, href: is, x });
  for (let slot = start + (loneSlot === start ? 1 : 0); slot + 1 < end; slot += 2) if (shown(slot)) hang('fold', edge(slot + 1));
  if (lone) hang('lone', mid(loneSlot));

  // Places of the bar without a string, and what they are called.
  const size = weight * 0.95;
  const name = (y: number, says: Part, places: readonly number[], is = ''): void => {
    for (const x of places) {
      const aside = Math.abs(x - middle) > 37;
      shapes.push(
        path(`leader ${is}`, d`M${x} ${BAR - size * 1.25 - 4}V${aside ? y - 4 : y + 5}H${aside ? middle + Math.sign(x - middle) * 37 : x}`),
      );
    }
    shapes.push(says);
  };
  const lent: number[] = [];
  const idle: number[] = [];
  for (let slot = first; slot < barEnd; slot += 1) {
    if ((slot >= start && slot < end) || !shown(slot)) continue;
    const given = slot >= start - left.borrowed && slot < end + right.borrowed;
    (given ? lent : idle).push(mid(slot));
    shapes.push({
      tag: 'rect',
      is: given ? 'place given' : 'place',
      x: mid(slot) - size / 2,
      y: BAR - size * 1.25,
      width: size,
      height: size * 2.5,
      rx: size / 2,
    });
  }
  const borrowed = left.borrowed + right.borrowed;
  shapes.push(text(middle, 53, step('label-bar-takes', { capacity }), 'strong'));
  if (empty) name(71, text(middle, 71, step('label-empty', { empty, idle: fit.idle })), empty > 1 ? [] : idle);
  if (borrowed) name(88, text(middle, 88, step('label-borrowed', { borrowed }), 'must'), lent, 'given');

  // The ledger: one numbered cell for each column, and what each part of it comes to.
  const wanted = numbered(fit.width, pitch);
  const y = LEDGER + 34;
  const centre = (edge(start) + edge(end)) / 2;
  let height = y + 46;
  for (const [sign, from, to, part] of [
    [-1, 0, start, left],
    [0, start, end, { strings: onBar, folds: onBar >> 1, over: lone, carried: 0 }],
    [1, end, strands, right],
  ] as const) {
    const { strings, folds, over, carried } = part;
    if (!strings) continue;
    const aside = open && sign;
    let cells = '';
    for (let slot = from; slot < to; slot += 1) {
      const column = slot + 1 - left.carried;
      if (!shown(slot) || column < 1 || column > fit.width) continue;
      cells += d`M${edge(slot)} ${LEDGER}h${pitch}v11h${-pitch}z`;
      if (wanted(column)) shapes.push(text(mid(slot), LEDGER + 25, `${column}`, 'quiet'));
    }
    const own = (edge(from) + edge(to)) / 2;
    shapes.push(
      path(aside ? 'cell open' : sign ? 'cell side' : 'cell', cells),
      path(aside ? 'bracket given' : 'bracket', d`M${edge(from) + 2} ${y}v4H${edge(to) - 2}v-4`),
    );
    if (aside) {
      shapes.push(path('bracket given', d`M${own} ${y + 4}V${y + 51}H${centre + sign * 34}`));
      continue;
    }
    // Names of narrow parts step aside rather than run together.
    const far = centre + sign * 84;
    const x = sign ? Math.max(42, Math.min(across - 42, sign * Math.max(sign * own, sign * far))) : own;
    shapes.push(
      text(x, y + 20, sign ? step('label-strings', { strings }) : step('label-on-bar', { onBar }), 'strong'),
      text(x, y + 37, step('label-folds', { folds, over }), sign && over ? 'must' : ''),
    );
    if (!carried) continue;
    shapes.push(text(x, y + 53, step('label-carried'), 'quiet'));
    height = y + 62;
  }
  if (open && spare) {
    shapes.push(text(centre, y + 55, step('label-spare', { spare }), 'must strong'));
    height = y + 64;
  }
  for (const x of tears) {
    let waves = '';
    for (const dx of [-3, 3])
      for (const top of [BAR - 10, LEDGER - 4])
        if (top < BAR || (x > edge(0) && x < edge(strands))) waves += d`M${x + dx} ${top}q4 5 0 10t0 10`;
    shapes.push(path('tear', waves));
  }
  return { width: across, height, shapes };
}

function describe(plan: BarPlan, { stage = 'fitted' }: BarOptions = {}) {
  const { width, capacity, idle, carrySide } = plan.fit;
  const { left, right, onBar, lone, empty, spare } = barPlaces(plan, stage);
  const steps = [step<BarKey>(`bar-${stage}`, { width, capacity })];
  const say = (key: BarKey, values: Values): void => {
    steps.push(step(key, values));
  };
  say('bar-on-bar', { onBar, folds: onBar >> 1, lone });
  if (empty) say('bar-empty', { empty, idle });
  if (!spare) say('bar-no-spare', { width });
  else if (stage === 'capacity') say('bar-spare', { spare, width });
  else {
    const borrowed = left.borrowed + right.borrowed;
    if (borrowed) say('bar-borrowed', { borrowed, left: left.borrowed, right: right.borrowed });
    for (const [side, { strings, folds, over }] of Object.entries({ left, right }))
      if (strings) say('bar-side', { side, strings, folds, over });
    if (carrySide) say('bar-carried', { side: carrySide });
  }
  return steps;
}

/** The keyring with its bar: what hangs on it, what hangs beside it, and why two places are borrowed. */
export const bar: Figure<'bar', BarOptions, BarKey, BarPlan> = { name: 'bar', draw, describe };
