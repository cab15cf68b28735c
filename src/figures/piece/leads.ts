import type { Fit, RowPlan } from '../../solver/piece.ts';
import { RESTING_ROWS } from '../../solver/thread/floats.ts';
import type { Path, Point } from '../strand/point.ts';
import { columnMiddle, edgesOf, topOf } from './courses.ts';
import type { Laid, Part, Place } from './model-types.ts';
import { COLUMN, MOST_STRANDS, ROW, type ShapeKind, shapeOf } from './packed.ts';
import { smooth } from './smooth.ts';

/** How far behind the middle of the bases a float and a tail lie, in d. */
const BEHIND = -1.75;
/** Columns that the tail of a string joined or ended lies under, and how far it sticks out, in d. */
const TAIL_COLUMNS = 3;
const TAIL = 0.6;

/** A tied knot and what was needed to place it. */
export interface Tied extends Place {
  readonly kind: ShapeKind;
  readonly row: RowPlan;
  readonly rightward: boolean;
  readonly paint: number;
}

/** The number of strands comes last. */
const shapeName = (kind: ShapeKind, strands: number): string => `${kind} ${Math.min(MOST_STRANDS, strands)}`;

/** Every knot of the rows up to a knot of the last of them, in tying order. */
export function tiedKnots(
  { fit, laid }: { readonly fit: Fit; readonly laid: Laid },
  rows: readonly RowPlan[],
  lastKnots: number,
): Tied[] {
  const tied: Tied[] = [];
  for (const row of rows) {
    const rightward = row.direction === 'rightward';
    const edges = edgesOf(fit, row.leftBundle, row.rightBundle);
    const most = row === rows.at(-1) ? lastKnots : row.knots;
    let done = 0;
    for (const [at, run] of row.runs.entries()) {
      const paint = run.colour ?? 0;
      const turns = run.knot === 'forward-backward' || run.knot === 'backward-forward';
      for (let i = 0; i < run.count && done < most; i += 1, done += 1) {
        const column = run.columns[0] + (rightward ? i : -i);
        const [x, strands] =
          column === row.firstColumn
            ? [edges.left, edges.leftStrands]
            : column === row.lastColumn
              ? [edges.right, edges.rightStrands]
              : [columnMiddle(column), 1];
        const next = i + 1 < run.count ? paint : row.runs[at + 1] ? (row.runs[at + 1]?.colour ?? 0) : -1;
        const goesOn = next === paint && done + 1 < most;
        const kind: ShapeKind = turns || goesOn ? run.knot : run.knot === 'forward' ? 'forward-stop' : 'backward-stop';
        tied.push({
          kind,
          shape: shapeName(kind, strands),
          x,
          y: topOf(laid, row.row),
          knot: { row: row.row, column, strands: run.strands },
          colour: run.colour ?? null,
          row,
          rightward,
          paint,
        });
      }
    }
  }
  return tied;
}

const strandsOf = ({ shape }: Place): number => Number(shape.slice(shape.lastIndexOf(' ')));
const moved = ([x, y, z]: Point, place: Place): Point => [x + place.x, y + place.y, z];
export const entryOf = (knot: Tied): Point => moved(shapeOf(knot.kind, strandsOf(knot)).lead[0] as Point, knot);
export const exitOf = (knot: Tied): Point => moved(shapeOf(knot.kind, strandsOf(knot)).lead.at(-1) as Point, knot);

const same = (a: Point, b: Point): boolean =>
  Math.abs(a[0] - b[0]) + Math.abs(a[1] - b[1]) + Math.abs(a[2] - b[2]) < 1e-6;

/** From the last knot of a row to the first of the next, as its move says: the freed or taken string passes behind. */
export function downTo(from: Tied, to: Tied): Path {
  const [exit, entry] = [exitOf(from), entryOf(to)];
  const top = to.y;
  const gap = top - from.y - ROW;
  if (gap > 0) return downBetween(exit, entry, { move: to.row.startMove, gap, out: from.rightward ? 0.5 : -0.5 });
  if (to.row.startMove === 'none') {
    const outside = from.kind.endsWith('stop');
    const out = outside ? (from.rightward ? 0.35 : -0.35) : 0;
    return [exit, [exit[0] + out, (exit[1] + entry[1]) / 2, 0.1], entry];
  }
  const z = to.row.startMove === 'carry-behind' ? -1.3 : 0.9;
  return [exit, [exit[0], top - 0.3, z], [(exit[0] + entry[0]) / 2, top, z], [entry[0], top + 0.3, z], entry];
}

/** The same where the rows lie apart: the string crosses between them, where it is seen. */
function downBetween(
  exit: Point,
  entry: Point,
  { move, gap, out }: { readonly move: RowPlan['startMove']; readonly gap: number; readonly out: number },
): Path {
  const [high, low] = [exit[1] + gap * 0.15, entry[1] - gap * 0.15];
  const z = move === 'carry-behind' ? -1.3 : 0.9;
  if (Math.abs(exit[0] - entry[0]) < 1) return [exit, [exit[0] + out, high, 0.5], [entry[0] + out, low, 0.5], entry];
  const way = [0, 0.12, 0.3, 0.5, 0.7, 0.88, 1].map((part): Point => {
    const eased = part * part * (3 - 2 * part);
    // It comes up slowly from under the loop of the knot that it leaves.
    const away = Math.min(1, 0.35 + 4 * part);
    return [exit[0] + (entry[0] - exit[0]) * eased, high + (low - high) * part, z * away];
  });
  return [exit, ...way, entry];
}

/** Where a colour's strings lie at the back: how far behind the others, in d, and how low its floats hang if they are slack. */
interface Lane {
  readonly behind: number;
  readonly hangs?: number;
}

/** How low the first slack float hangs below its row, and each further colour below and behind it, in d. */
const SLACK = 1.5;
const SLACKER = 1.6;

const laneOf = (paint: number, slack: readonly number[] | undefined): Lane => {
  const order = slack?.indexOf(paint) ?? -1;
  // A colour without a float in the row keeps nearest to the bases.
  return slack ? { behind: 1 + order, hangs: SLACK + SLACKER * Math.max(0, order) } : { behind: (paint % 6) * 0.04 };
};

/** The back of the piece from one knot to a later one of the same colour. */
function floatTo(from: Tied, to: Tied, { behind, hangs }: Lane): Path {
  const [exit, entry] = [exitOf(from), entryOf(to)];
  const z = BEHIND - behind;
  if (hangs === undefined) return smooth([exit, [exit[0], exit[1] - 0.3, z], [entry[0], entry[1] + 0.2, z], entry]);
  const low = from.y + ROW + hangs;
  return smooth([
    exit,
    [exit[0], exit[1] + 0.3, z],
    [exit[0], low, z],
    [entry[0], low, z],
    [entry[0], entry[1] + 0.3, z],
    entry,
  ]);
}

/** A tail behind the next three bases, its end sticking out: towards the knot, where a string begins. */
function tailOf(knot: Tied, place: Point, lane: number): Path {
  const way = knot.rightward ? 1 : -1;
  const edge = knot.rightward ? knot.row.lastColumn * COLUMN : (knot.row.firstColumn - 1) * COLUMN;
  const reach = Math.max(0.6, Math.min(TAIL_COLUMNS * COLUMN, (Math.abs(edge - place[0]) || 2 * COLUMN) - 2.4));
  const to = place[0] + (Math.abs(edge - place[0]) < 1e-6 ? -way : way) * reach;
  const y = place[1];
  const z = BEHIND - lane;
  return smooth([place, [place[0], y, z], [to, y + 0.3, z], [to, y + TAIL, z - 0.2]]);
}

/** The string of one colour, from its start to its end; a new one where it rested too long. */
export interface Led {
  readonly colour: number | null;
  readonly paint: number;
  readonly parts: Part[];
  /** Its last knot. */
  readonly last: Tied;
}

/** Follows every leading string through the knots that are tied. */
export function leadsOf(tied: readonly Tied[], slack?: readonly number[]): Led[] {
  const leads: Led[] = [];
  const current = new Map<number, { led: Led & { last: Tied }; order: number }>();
  for (const [order, knot] of tied.entries()) {
    const lane = laneOf(knot.paint, slack);
    const known = current.get(knot.paint);
    const rests = known ? knot.row.row - known.led.last.row.row : 0;
    let led = known?.led;
    if (!led || rests > RESTING_ROWS) {
      if (led) led.parts.push({ is: 'line', what: 'tail', path: tailOf(led.last, exitOf(led.last), lane.behind) });
      led = { colour: knot.colour, paint: knot.paint, parts: [], last: knot };
      leads.push(led);
      led.parts.push({ is: 'line', what: 'tail', path: [...tailOf(knot, entryOf(knot), lane.behind)].reverse() });
    } else if (known && !same(exitOf(led.last), entryOf(knot))) {
      const follows = known.order === order - 1;
      const path = !follows
        ? floatTo(led.last, knot, lane)
        : led.last.row === knot.row
          ? [exitOf(led.last), entryOf(knot)]
          : downTo(led.last, knot);
      led.parts.push({ is: 'line', what: follows ? 'link' : 'float', path });
    }
    led.parts.push({ is: 'shape', place: order, lead: 0 });
    Object.assign(led, { last: knot });
    current.set(knot.paint, { led, order });
  }
  return leads;
}

/** How a string ends that is needed no more. */
export const endTail = (led: Led, slack?: readonly number[]): Path =>
  tailOf(led.last, exitOf(led.last), laneOf(led.paint, slack).behind);

/** How a string that was needed before the rows that are there comes down to them at the back, from so high above its knot. */
export function comesDown(place: Point, paint: number, above: number, slack?: readonly number[]): Path {
  const [x, y, z] = place;
  const behind = BEHIND - laneOf(paint, slack).behind;
  return [
    [x, y - above, behind],
    [x, y - 0.8, behind],
    [x, y, z],
  ];
}

/** The working end, held out of the way, and a resting one, which hangs at the back; `long` in d. */
export function workingEnd(led: Led, works: boolean, long: number, slack?: readonly number[]): Path {
  const behind = BEHIND - (slack ? laneOf(led.paint, slack).behind : 0);
  const exit = exitOf(led.last);
  const turns = led.last.kind === 'forward-backward' || led.last.kind === 'backward-forward';
  const way = (led.last.rightward ? 1 : -1) * (turns ? -1 : 1);
  return works
    ? [
        exit,
        [exit[0] + way * 1.4, exit[1] + 0.4, 0.9],
        [exit[0] + way * 1.9, exit[1] + 2, 1],
        [exit[0] + way * 2.1, exit[1] + long, 1],
      ]
    : [exit, [exit[0], exit[1] + 0.5, behind], [exit[0], exit[1] + long * 0.6, behind]];
}
