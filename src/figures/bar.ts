import { BAR_THICK, OVER_WIRE, overWire, smooth, WIRE_THICK } from './bar-cords.ts';
import { type BarPlan, type BarStage, barPlaces } from './bar-places.ts';
import { cord, twist } from './cord.ts';
import { ACROSS, type Drawing, d, type Figure, path, type Shape, step, text, type Values } from './drawing.ts';
import { heads } from './heads.ts';
import { numbered } from './numbered.ts';

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

/** The widest pitch of two places: wide enough to see a lark's head, narrow enough for a keyring. */
const WIDEST = 30;
/** Empty places drawn at most where the bar is longer than the piece needs. */
const MOST_EMPTY = 12;
/** Heights from the top: of the ring's crown, the bar and the ledger of columns. */
const CROWN = 29;
const BAR = 116;
const LEDGER = 222;
/** How far the ring rises between the bar's end and its own side. */
const RISE = 26;

/** A string's way down from where it hangs to its column. */
const down = (x: number, y: number, to: number): string => d`C${x} ${y + 42} ${to} ${LEDGER - 70} ${to} ${LEDGER}`;

function draw(plan: BarPlan, { stage = 'fitted', across = ACROSS }: BarOptions = {}): Drawing<BarKey> {
  const { fit, startSide } = plan;
  const { left, bar: onBar, right, spare, empty } = barPlaces(plan, stage);
  const open = stage === 'capacity';
  const endsLeft = startSide === 'right' ? 1 : 0;
  const drawnEmpty = Math.min(MOST_EMPTY, empty);
  // Slots count strands from 0 at the left. A place that stays idle lies where row 1 ends; places that nobody needs lie
  // at both ends of the bar.
  const start = left.strings;
  const end = start + onBar.strings;
  const strands = end + right.strings;
  const first = start - left.borrowed - (fit.idle ? endsLeft : (drawnEmpty + endsLeft) >> 1);
  const barEnd = first + left.borrowed + onBar.strings + right.borrowed + drawnEmpty;

  // One scale for all stages, so that they can stand side by side.
  const low = Math.min(0, first);
  const units = Math.max(strands, barEnd) - low;
  const most = Math.max(fit.left.strands, fit.right.strands);
  const pitch = Math.min(WIDEST, (across - 20) / units, (across - 66) / (barEnd - first + most));
  const edge = (slot: number): number => (across - units * pitch) / 2 + (slot - low) * pitch;
  const mid = (slot: number): number => edge(slot + 0.5);
  const weight = Math.min(7.5, pitch * 0.46);
  const apart = Math.min(8, pitch * 0.5);
  const reach = Math.max(20, most * apart + 12);
  const middle = edge((first + barEnd) / 2);
  const centre = edge((start + end) / 2);
  const y = LEDGER + 34;
  const wanted = numbered(fit.width, pitch);

  let ring = '';
  let height = y + 46;
  const behind: Part[] = [];
  const before: Part[] = [];
  const below: Part[] = [];
  for (const [sign, from, to, part] of [
    [-1, 0, start, left],
    [0, start, end, onBar],
    [1, end, strands, right],
  ] as const) {
    const { strings, folds, over, borrowed, carried } = part;
    if (sign) {
      const x = edge(sign < 0 ? first : barEnd);
      const out = x + sign * reach;
      ring += d`M${x} ${BAR}C${x + sign * reach * 0.55} ${BAR} ${out} ${BAR - RISE * 0.45} ${out} ${BAR - RISE}C${out} ${BAR - RISE - 36} ${middle + (out - middle) * 0.6} ${CROWN} ${middle} ${CROWN}`;
      if (!open) {
        // Beside the bar each fold lies over the ring, one leg behind the wire and one before it.
        const hook = (strand: number): [x: number, y: number, to: number] => {
          const along = 8 + (strand + 0.5) * apart;
          const height = BAR - RISE * (1 - Math.sqrt(1 - (along / reach) ** 2));
          return [x + sign * along, height, mid(sign < 0 ? start - 1 - strand : end + strand)];
        };
        /** From the middle of a fold over the wire, down one of its legs and on to the column. */
        const overRing = (x: number, y: number, legX: number, legY: number, column: number): string => {
          const leg = overWire(weight, [x, y], [legX, legY]);
          return smooth(leg) + down(legX, leg.at(-1)?.[1] ?? legY, column);
        };
        const lines = ['', '', '', '', '', ''];
        for (let strand = over; strand < strings; strand += 2) {
          const [inX, inY, column] = hook(strand);
          const [outX, outY, outColumn] = hook(strand + 1);
          const [x, y] = [(inX + outX) / 2, (inY + outY) / 2];
          lines[strand < borrowed ? 1 : 0] += overRing(x, y, inX, inY, column);
          // Where more than one a side was borrowed, both legs of a fold may come from the bar.
          lines[strand + 1 < borrowed ? 5 : 2] += overRing(x, y, outX, outY, outColumn);
        }
        if (over) {
          const [ownX, ownY, column] = hook(0);
          const top = ownY - OVER_WIRE * weight;
          const inner = ownX - sign * weight * 1.5;
          // Where its partner would hang, if there were one.
          lines[3] = d`M${ownX} ${top}C${ownX} ${top - 15} ${inner} ${top - 15} ${inner} ${top + 3}V${ownY + 42}`;
          lines[4] = overRing(ownX - (sign * apart) / 2, ownY, ownX, ownY, column);
        }
        const [legs = '', lent = '', loops = '', missing = '', single = '', lentLoops = ''] = lines;
        behind.push(cord(weight, legs, 'legs'), cord(weight, lent, 'must lent'));
        before.push(
          cord(weight, loops, 'folds'),
          cord(weight, lentLoops, 'must folds'),
          path('missing', missing),
          cord(weight, single, 'must single'),
        );
      }
    }
    if (!strings) continue;

    // The ledger: one numbered cell for each column, and what this part of it comes to.
    const aside = open && sign;
    const begin = from + (sign < 0 ? carried : 0);
    const columns = strings - carried;
    let cells = d`M${edge(begin)} ${LEDGER}h${columns * pitch}v11h${-columns * pitch}z`;
    for (let cell = 0; cell < columns; cell += 1) {
      const column = begin + cell + 1 - left.carried;
      // Below two units lines would only make grey.
      if (cell && pitch > 2) cells += d`M${edge(begin + cell)} ${LEDGER}v11`;
      if (wanted(column)) below.push(text(mid(begin + cell), LEDGER + 25, `${column}`, 'quiet'));
    }
    below.push(
      path(aside ? 'cell open' : sign ? 'cell side' : 'cell', cells),
      path(aside ? 'bracket given' : 'bracket', d`M${edge(from) + 2} ${y}v4H${edge(to) - 2}v-4`),
    );
    const own = edge((from + to) / 2);
    if (aside) {
      below.push(path('bracket given', d`M${own} ${y + 4}V${y + 51}H${centre + sign * 34}`));
      continue;
    }
    // Names of narrow parts step aside rather than run together.
    const x = sign ? Math.max(45, Math.min(across - 45, sign * Math.max(sign * own, sign * centre + 84))) : own;
    below.push(
      text(x, y + 20, sign ? step('label-strings', { strings }) : step('label-on-bar', { onBar: strings }), 'strong'),
      text(x, y + 37, step('label-folds', { folds, over }), sign && over ? 'must' : ''),
    );
    if (!carried) continue;
    below.push(text(x, y + 53, step('label-carried'), 'quiet'));
    height = y + 62;
  }
  if (open && spare) {
    below.push(text(centre, y + 55, step('label-spare', { spare }), 'must strong'));
    height = y + 64;
  }

  // The lone string hangs where row 1 ends.
  const lone = onBar.over;
  const hung: [href: string, x: number][] = [];
  for (let slot = start + lone * endsLeft; slot + 1 < end; slot += 2) hung.push(['fold', edge(slot + 1)]);
  if (lone) hung.push(['lone', mid(endsLeft ? start : end - 1)]);
  const shapes: Part[] = [
    twist(weight),
    ...behind,
    { tag: 'circle', is: 'key', cx: middle, cy: CROWN - 12, r: 14 },
    heads(weight, pitch, { bar: BAR, foot: LEDGER, turned: endsLeft === 1 }),
    cord(WIRE_THICK * weight, ring, 'metal'),
    ...hung.map(([href, x]): Part => ({ tag: 'use', href: `${href}-behind`, x })),
    cord(BAR_THICK * weight, d`M${edge(first)} ${BAR}H${edge(barEnd)}`, 'metal'),
    ...before,
    ...hung.map(([href, x]): Part => ({ tag: 'use', href, x })),
  ];

  // Places of the bar without a string, and what they are called.
  const size = weight * 0.95;
  const name = (y: number, key: BarKey, values: Values, given: boolean, led: boolean): void => {
    for (let slot = first; slot < barEnd; slot += 1) {
      if ((slot >= start && slot < end) || given !== (slot >= start - left.borrowed && slot < end + right.borrowed))
        continue;
      const x = mid(slot);
      const off = x - middle;
      const hold = Math.sign(off) * Math.min(37, Math.abs(off));
      const top = BAR - size * 1.25;
      const is = given ? 'given' : '';
      shapes.push(
        { tag: 'rect', is: `place ${is}`, x: x - size / 2, y: top, width: size, height: size * 2.5, rx: size / 2 },
        path(`leader ${is}`, led ? d`M${x} ${top - 4}V${hold === off ? y + 5 : y - 4}H${middle + hold}` : ''),
      );
    }
    shapes.push(text(middle, y, step(key, values), given ? 'must' : ''));
  };
  const borrowed = left.borrowed + right.borrowed;
  shapes.push(text(middle, 53, step('label-bar-takes', { capacity: fit.capacity }), 'strong'));
  if (empty) name(71, 'label-empty', { empty, idle: fit.idle }, false, empty === 1);
  if (borrowed) name(88, 'label-borrowed', { borrowed }, true, true);
  return { width: across, height, shapes: [...shapes, ...below] };
}

function describe(plan: BarPlan, { stage = 'fitted' }: BarOptions = {}) {
  const { width, capacity, idle, carrySide } = plan.fit;
  const { left, bar: onBar, right, empty, spare } = barPlaces(plan, stage);
  const steps = [step<BarKey>(`bar-${stage}`, { width, capacity })];
  const say = (key: BarKey, values: Values) => steps.push(step(key, values));
  say('bar-on-bar', { onBar: onBar.strings, folds: onBar.folds, lone: onBar.over });
  if (empty) say('bar-empty', { empty, idle });
  if (!spare) say('bar-no-spare', { width });
  else if (stage === 'capacity') say('bar-spare', { spare, strands: carrySide ? width + 1 : width });
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
