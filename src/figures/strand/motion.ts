import { widen } from './bundle.ts';
import { cutTo, lengthOf, smooth } from './curve.ts';
import { edge } from './frame.ts';
import type { Key } from './keys.ts';
import { between, distance, type Path, type Point } from './point.ts';
import { tighten } from './tighten.ts';
import type { MovingCord, NamedMoment, Tying } from './tying.ts';

/** What hangs out of the picture beyond the loose knot, in d. */
const spare = 3;
/** How long drawing up takes, where the way from one key to the next takes 1. */
const drawingUpTakes = 4;

/** Cord that the first of two halves uses up at least, round a single base. */
const firstHalfTakes = 12;
const farEnd = { length: 400, first: 400, again: 400 };
const anyEnd = { length: 40, first: 40, again: 40 };

/** A tying made ready to be drawn at any moment. */
export interface Motion {
  readonly stops: readonly NamedMoment[];
  /** Length of every moving cord in d, free ends included: the same at every moment. */
  readonly lengths: readonly number[];
  /** Lines of the moving cords, in the order of `Tying.moving`; t from 0 to 1. */
  readonly at: (t: number) => Path[];
}

/** `drawnUp` gives the states of drawing up, which do not depend on the number of strings in the base. */
export function motionOf(tying: Tying, drawnUp: () => readonly Path[][]): Motion {
  const { moving, spread } = tying;
  const lengths = looseRuns(tying).map((line, c) => lengthOf(widen([...before(tying, c), ...line], spread)) + spare);
  const longest = Math.max(...lengths);
  const first = longest - edge - spread.x;
  const keys = tying.keys({ length: longest, first, again: first - firstHalfTakes - 6 * spread.x });
  const ends = timesOf(keys, tying.drawUp !== null);
  const looseAt = ends[keys.length - 1] as number;
  const stops: NamedMoment[] = keys.flatMap(({ stop }, i) => (stop ? [{ name: stop, t: ends[i] as number }] : []));
  if (tying.drawUp) stops.push({ name: 'drawn-up', t: 1 });
  const finish = (line: Path, c: number): Path => {
    const cut = cutTo(widen(line, spread), moving[c]?.from ?? 'start', lengths[c] as number);
    return tying.turned ? cut.map(([x, y, z]): Point => [y, x === 0 ? 0 : -x, z]) : cut;
  };
  return {
    stops,
    lengths,
    at: (t) => {
      const lines =
        t <= looseAt || !tying.drawUp ? keyed(keys, ends, t) : drawn(tying, drawnUp(), (t - looseAt) / (1 - looseAt));
      return lines.map(finish);
    },
  };
}

/** The cords of the loose knot from where they are held to where they leave the picture. */
function looseRuns(tying: Tying): Path[] {
  return (tying.keys(anyEnd).at(-1) as Key).lines.map((control, c) => {
    const whole = smooth(control);
    const [first, last] = heldAt(control, tying.moving[c]);
    return whole.slice(nearest(whole, first), nearest(whole, last) + 1);
  });
}

export function drawUp(tying: Tying): Path[][] {
  if (!tying.drawUp) return [];
  return tighten({ ...tying.drawUp, cords: looseRuns(tying) });
}

/** A control line ends with three points along the way out of the picture and one far off: it is held at the second. */
function heldAt(control: Path, cord: MovingCord | undefined): [Point, Point] {
  return [control[cord?.from === 'middle' ? 2 : (cord?.heldAt ?? 0)] as Point, control.at(-3) as Point];
}

/** What a cord runs through before the place where it is held. */
function before(tying: Tying, c: number): Path {
  const held = tying.moving[c]?.heldAt ?? 0;
  if (held === 0) return [];
  const whole = smooth((tying.keys(anyEnd).at(-1) as Key).lines[c] as Path);
  const control = (tying.keys(anyEnd).at(-1) as Key).lines[c] as Path;
  return whole.slice(0, nearest(whole, control[held] as Point));
}

function nearest(line: Path, place: Point): number {
  let best = 0;
  for (const [i, p] of line.entries()) if (distance(p, place) < distance(line[best] as Point, place)) best = i;
  return best;
}

/** When each key is reached, 0 for the first. */
function timesOf(keys: readonly Key[], drawnUp: boolean): number[] {
  const shares = keys.map(({ pace = 1 }, i) => (i === 0 ? 0 : pace));
  const whole = shares.reduce((sum, share) => sum + share, 0) + (drawnUp ? drawingUpTakes : 0);
  let reached = 0;
  return shares.map((share) => {
    reached += share;
    return reached / whole;
  });
}

function keyed(keys: readonly Key[], ends: readonly number[], t: number): Path[] {
  const next = ends.findIndex((end) => end >= t);
  const k = next < 0 ? keys.length - 1 : next;
  const to = keys[k] as Key;
  const from = keys[k - 1];
  const start = ends[k - 1] ?? 0;
  const end = ends[k] as number;
  const part = from ? (t - start) / (end - start) : 1;
  return to.lines.map((line, c) =>
    smooth(from ? line.map((p, i) => between(from.lines[c]?.[i] as Point, p, Math.min(1, part))) : line),
  );
}

function drawn(tying: Tying, states: readonly Path[][], part: number): Path[] {
  const place = part * (states.length - 1);
  const k = Math.min(states.length - 2, Math.floor(place));
  const loose = tying.keys(farEnd).at(-1) as Key;
  return (states[k] as Path[]).map((line, c) => {
    const next = states[k + 1]?.[c] as Path;
    const run = line.map((p, i) => between(p, next[i] as Point, place - k));
    const control = loose.lines[c] as Path;
    const out = control.at(-1) as Point;
    return tying.moving[c]?.from === 'middle' ? [control[0] as Point, ...run, out] : [...before(tying, c), ...run, out];
  });
}
