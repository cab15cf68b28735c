import { between, distance, type Path, type Point } from './point.ts';

/** A stretch of one cord: its pieces `from` to `to` (both count), piece i leading from point i to point i + 1. */
export interface Stretch {
  readonly strand: number;
  readonly from: number;
  readonly to: number;
  /**
   * Where it passes over another cord, or over its own far part: only there is air left beside it. In points along
   * the cord, parts of a piece included, so that the air ends where the cord beneath does.
   */
  readonly airy: readonly Air[];
}

/** From one place to another along a cord: 2.5 is half-way from point 2 to point 3. */
export type Air = readonly [from: number, to: number];

interface Bit {
  readonly strand: number;
  readonly index: number;
  readonly a: Point;
  readonly b: Point;
  readonly radius: number;
  readonly low: readonly [x: number, y: number];
  readonly high: readonly [x: number, y: number];
}

function bitOf(strand: number, index: number, a: Point, b: Point, radius: number): Bit {
  const low = [Math.min(a[0], b[0]), Math.min(a[1], b[1])] as const;
  const high = [Math.max(a[0], b[0]), Math.max(a[1], b[1])] as const;
  return { strand, index, a, b, radius, low, high };
}

/** Cords whose outlines come this near to each other in the picture have to be drawn in order of depth, in d. */
const near = 0.16;
/** A cord's own bend is one stroke of the pen this far along it, in times that reach. */
const ownBend = 1.3;
/** Air is left from where a cord's middle is this near to the outline of the one beneath, in d. */
const airReach = 0.08;
/** Cords that part by less than this, as the sine of the angle between them, lie alongside each other. */
const alongside = 0.01;
/** Nearer than this along one cord, in d, two parts of it belong to one turn: no air between them. */
const ownLoop = 4.2;

/**
 * What has to be drawn again over cords that are all drawn once: every stretch that lies over something, the
 * deepest first. Two bits of cord whose outlines meet in the picture are drawn in order of their depth there; a
 * stretch goes on along its cord for as long as nothing that must lie beneath its next bit is still undrawn.
 */
export function overStretches(strands: readonly { readonly path: Path; readonly radius: number }[]): Stretch[] {
  const bits = strands.flatMap(({ path, radius }, strand) =>
    path.slice(1).map((b, index) => bitOf(strand, index, path[index] as Point, b, radius)),
  );
  const above: number[][] = bits.map(() => []);
  const waiting: number[] = bits.map(() => 0);
  const airy: (Air | undefined)[] = bits.map(() => undefined);
  for (const [i, p] of bits.entries())
    for (let j = i + 1; j < bits.length; j++) {
      const q = bits[j] as Bit;
      const reach = p.radius + q.radius + near;
      if (apartInPicture(p, q, reach)) continue;
      if (p.strand === q.strand && alongBetween(bits, i, j) < reach * ownBend) continue;
      const depth = depthAt(p, q);
      if (depth === 0) continue;
      const [low, high] = depth < 0 ? [i, j] : [j, i];
      (above[low] as number[]).push(high);
      const meet = !runAlong(p, q) && (p.strand !== q.strand || alongBetween(bits, i, j) > ownLoop);
      const part = meet && partOver(bits[high] as Bit, bits[low] as Bit);
      if (part) airy[high] = joined(airy[high], part);
      waiting[high] = (waiting[high] ?? 0) + 1;
    }
  const lowest = bits.flatMap((_, i) => (waiting[i] === 0 ? [i] : []));
  const done = bits.map(() => false);
  const finish = (i: number) => {
    done[i] = true;
    for (const high of above[i] as number[]) waiting[high] = (waiting[high] ?? 0) - 1;
  };
  for (const i of lowest) finish(i);
  const rest = bits.flatMap((_, i) => (done[i] ? [] : [i])).sort((i, j) => depthOf(bits[i]) - depthOf(bits[j]));
  const stretches: { strand: number; from: number; to: number }[] = [];
  let run: [number, number] | undefined;
  for (let drawn = 0; drawn < rest.length; drawn++) {
    const goesOn = followsOn(bits, run, done, waiting);
    const next = goesOn ?? rest.find((i) => !done[i] && waiting[i] === 0) ?? rest.find((i) => !done[i]);
    if (next === undefined) break;
    finish(next);
    const { strand, index } = bits[next] as Bit;
    const open = stretches.at(-1);
    if (goesOn !== undefined && run && open) {
      run = [Math.min(next, run[0]), Math.max(next, run[1])];
      open.from = Math.min(open.from, index);
      open.to = Math.max(open.to, index);
    } else {
      run = [next, next];
      stretches.push({ strand, from: index, to: index });
    }
  }
  const firsts = new Map<number, number>();
  for (const [i, { strand }] of bits.entries()) if (!firsts.has(strand)) firsts.set(strand, i);
  return stretches.map((stretch) => ({ ...stretch, airy: airyParts(stretch, airy, firsts.get(stretch.strand) ?? 0) }));
}

/** Steps in which the place where a bit leaves the cord beneath is sought. */
const partSteps = 16;

/** The part of a bit, from 0 to 1, that lies over another in the picture. */
function partOver(high: Bit, low: Bit): Air | undefined {
  const reach = low.radius + airReach;
  if (flatGap(high, low)[0] >= reach) return undefined;
  const over: number[] = [];
  for (let step = 0; step <= partSteps; step++) {
    const t = step / partSteps;
    const at = between(high.a, high.b, t);
    if (flatGap({ a: at, b: at }, low)[0] < reach) over.push(t);
  }
  const [first, last] = [over[0], over.at(-1)];
  return first === undefined || last === undefined || first === last ? undefined : [first, last];
}

const joined = (known: Air | undefined, part: Air): Air =>
  known ? [Math.min(known[0], part[0]), Math.max(known[1], part[1])] : part;

function airyParts(
  { from, to }: Pick<Stretch, 'from' | 'to'>,
  airy: readonly (Air | undefined)[],
  first: number,
): Air[] {
  const parts: [number, number][] = [];
  for (let i = from; i <= to; i++) {
    const part = airy[first + i];
    if (!part) continue;
    const open = parts.at(-1);
    if (open && open[1] === i && part[0] === 0) open[1] = i + part[1];
    else parts.push([i + part[0], i + part[1]]);
  }
  return parts;
}

const depthOf = (bit: Bit | undefined): number => (bit ? (bit.a[2] + bit.b[2]) / 2 : 0);

/** The bit at either end of the stretch being drawn, if its turn has come. */
function followsOn(
  bits: readonly Bit[],
  run: readonly [number, number] | undefined,
  done: readonly boolean[],
  waiting: readonly number[],
): number | undefined {
  if (!run) return undefined;
  const strand = bits[run[0]]?.strand;
  return [run[1] + 1, run[0] - 1].find((i) => bits[i]?.strand === strand && done[i] === false && waiting[i] === 0);
}

function alongBetween(bits: readonly Bit[], i: number, j: number): number {
  let sum = 0;
  for (let k = i + 1; k < j && sum <= ownLoop; k++) sum += distance((bits[k] as Bit).a, (bits[k] as Bit).b);
  return sum;
}

function apartInPicture(p: Bit, q: Bit, reach: number): boolean {
  if (p.low[0] - q.high[0] > reach || q.low[0] - p.high[0] > reach) return true;
  if (p.low[1] - q.high[1] > reach || q.low[1] - p.high[1] > reach) return true;
  return flatGap(p, q)[0] > reach;
}

/** How much deeper p lies than q where they come nearest in the picture: below 0 where p is farther from the viewer. */
function depthAt(p: Bit, q: Bit): number {
  const [, t, u] = flatGap(p, q);
  return p.a[2] + (p.b[2] - p.a[2]) * t - q.a[2] - (q.b[2] - q.a[2]) * u;
}

/** Whether two bits lie alongside each other: strings of a bundle, between which there is no air. */
function runAlong(p: Bit, q: Bit): boolean {
  const [px, py] = [p.b[0] - p.a[0], p.b[1] - p.a[1]];
  const [qx, qy] = [q.b[0] - q.a[0], q.b[1] - q.a[1]];
  const cross = px * qy - py * qx;
  return cross * cross < alongside * alongside * (px * px + py * py) * (qx * qx + qy * qy);
}

/** The shortest way between two bits in the picture, and where on each it is. */
function flatGap(p: Pick<Bit, 'a' | 'b'>, q: Pick<Bit, 'a' | 'b'>): [gap: number, t: number, u: number] {
  const px = p.b[0] - p.a[0];
  const py = p.b[1] - p.a[1];
  const qx = q.b[0] - q.a[0];
  const qy = q.b[1] - q.a[1];
  const dx = q.a[0] - p.a[0];
  const dy = q.a[1] - p.a[1];
  const cross = px * qy - py * qx;
  if (cross !== 0) {
    const t = (dx * qy - dy * qx) / cross;
    const u = (dx * py - dy * px) / cross;
    if (t >= 0 && t <= 1 && u >= 0 && u <= 1) return [0, t, u];
  }
  const part = (x: number, y: number, wx: number, wy: number) => {
    const whole = wx * wx + wy * wy;
    return whole === 0 ? 0 : Math.min(1, Math.max(0, (x * wx + y * wy) / whole));
  };
  const options: [number, number][] = [
    [0, part(-dx, -dy, qx, qy)],
    [1, part(px - dx, py - dy, qx, qy)],
    [part(dx, dy, px, py), 0],
    [part(dx + qx, dy + qy, px, py), 1],
  ];
  let best: [number, number, number] = [Infinity, 0, 0];
  for (const [t, u] of options) {
    const x = px * t - dx - qx * u;
    const y = py * t - dy - qy * u;
    const gap = Math.sqrt(x * x + y * y);
    if (gap < best[0]) best = [gap, t, u];
  }
  return best;
}
