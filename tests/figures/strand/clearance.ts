import { type Path, type Point, type StrandModel, strandModel } from '../../../src/figures/strand/index.ts';

interface Piece {
  readonly strand: number;
  readonly from: number;
  readonly to: number;
  readonly a: Point;
  readonly b: Point;
  readonly radius: number;
  readonly moved: boolean;
}

const size = (x: number, y: number, z: number): number => Math.sqrt(x * x + y * y + z * z);
export const step = (a: Point, b: Point): number => size(a[0] - b[0], a[1] - b[1], a[2] - b[2]);

function lengthOf(path: Path): number {
  let sum = 0;
  for (let i = 1; i < path.length; i++) sum += step(path[i - 1] as Point, path[i] as Point);
  return sum;
}

/** The shortest way between two straight pieces in space. */
function pieceGap(p1: Point, q1: Point, p2: Point, q2: Point): number {
  const ux = q1[0] - p1[0];
  const uy = q1[1] - p1[1];
  const uz = q1[2] - p1[2];
  const vx = q2[0] - p2[0];
  const vy = q2[1] - p2[1];
  const vz = q2[2] - p2[2];
  const rx = p1[0] - p2[0];
  const ry = p1[1] - p2[1];
  const rz = p1[2] - p2[2];
  const a = ux * ux + uy * uy + uz * uz;
  const e = vx * vx + vy * vy + vz * vz;
  const f = vx * rx + vy * ry + vz * rz;
  const c = ux * rx + uy * ry + uz * rz;
  const b = ux * vx + uy * vy + uz * vz;
  const denominator = a * e - b * b;
  let s = denominator > 1e-12 ? clamp((b * f - c * e) / denominator) : 0;
  let t = e > 1e-12 ? (b * s + f) / e : 0;
  if (t < 0) {
    t = 0;
    s = a > 1e-12 ? clamp(-c / a) : 0;
  } else if (t > 1) {
    t = 1;
    s = a > 1e-12 ? clamp((b - c) / a) : 0;
  }
  return size(rx + ux * s - vx * t, ry + uy * s - vy * t, rz + uz * s - vz * t);
}

const clamp = (v: number): number => Math.min(1, Math.max(0, v));

/**
 * The nearest that two cords, or two parts of one cord more than 2 d apart along it, come to each other: centre
 * to centre for cords (1 d is touching); a bar counts by its surface, so that it reads the same. With `before`, the
 * same cords a moment ago, only what has moved since is looked at.
 */
export function nearest(
  { strands }: Pick<StrandModel, 'strands'>,
  before?: Pick<StrandModel, 'strands'>,
): { gap: number; where: string } {
  const pieces: Piece[] = [];
  for (const [strand, { path, radius }] of strands.entries()) {
    let walked = 0;
    for (let i = 1; i < path.length; i++) {
      const [a, b] = [path[i - 1] as Point, path[i] as Point];
      const to = walked + step(a, b);
      const old = before?.strands[strand]?.path;
      const moved = !old || !same(old[i - 1], a) || !same(old[i], b);
      pieces.push({ strand, from: walked, to, a, b, radius, moved });
      walked = to;
    }
  }
  const blocks = blocksOf(pieces);
  let gap = farEnough;
  let where = '';
  const look = (p: Piece, q: Piece): void => {
    if (q.strand === p.strand && q.from < p.from) {
      look(q, p);
      return;
    }
    const near = q.strand === p.strand && q.from - p.to < 2;
    if (near && q.to - p.from <= 2) return;
    const parts = near ? farParts(p, q) : [[p, q] as const];
    for (const [one, other] of parts) {
      const here = pieceGap(one.a, one.b, other.a, other.b) - (p.radius + q.radius - 1);
      if (here >= gap) continue;
      gap = here;
      where = `${strands[p.strand]?.id} at ${p.from.toFixed(1)} and ${strands[q.strand]?.id} at ${q.from.toFixed(1)} (${p.a.map((v) => v.toFixed(1))})`;
    }
  };
  for (const [i, first] of blocks.entries())
    for (let j = i; j < blocks.length; j++) {
      const second = blocks[j] as Block;
      if (!first.moved && !second.moved) continue;
      if (boxGap(first, second) > gap + first.radius + second.radius - 1) continue;
      for (let a = first.start; a < first.end; a++)
        for (let b = i === j ? a + 1 : second.start; b < second.end; b++) {
          const [p, q] = [pieces[a] as Piece, pieces[b] as Piece];
          look(p, q);
        }
    }
  return { gap, where };
}

/** Of two pieces near each other along one cord, the parts that are more than 2 d apart along it. */
function farParts(p: Piece, q: Piece): [Piece, Piece][] {
  const pairs: [Piece, Piece][] = [];
  const until = q.from - 2;
  if (until > p.from) pairs.push([{ ...p, to: until, b: on(p, until) }, q]);
  const since = p.to + 2;
  if (since < q.to) pairs.push([p, { ...q, from: since, a: on(q, since) }]);
  return pairs;
}

function on({ a, b, from, to }: Piece, at: number): Point {
  const t = (at - from) / (to - from);
  return [a[0] + (b[0] - a[0]) * t, a[1] + (b[1] - a[1]) * t, a[2] + (b[2] - a[2]) * t];
}

interface Block {
  readonly strand: number;
  readonly radius: number;
  readonly start: number;
  readonly end: number;
  readonly low: Point;
  readonly high: Point;
  readonly moved: boolean;
}

const same = (a: Point | undefined, b: Point): boolean =>
  a !== undefined && a[0] === b[0] && a[1] === b[1] && a[2] === b[2];

/** Neighbouring pieces in boxes, so that most pairs need no look. */
function blocksOf(pieces: readonly Piece[]): Block[] {
  const blocks: Block[] = [];
  let start = 0;
  while (start < pieces.length) {
    const { strand, radius } = pieces[start] as Piece;
    let end = start;
    let moved = false;
    const low = [Infinity, Infinity, Infinity];
    const high = [-Infinity, -Infinity, -Infinity];
    while (end < Math.min(start + 6, pieces.length) && pieces[end]?.strand === strand) {
      moved ||= pieces[end]?.moved === true;
      for (const p of [pieces[end]?.a, pieces[end]?.b])
        for (let k = 0; p && k < 3; k++) {
          low[k] = Math.min(low[k] as number, p[k] as number);
          high[k] = Math.max(high[k] as number, p[k] as number);
        }
      end++;
    }
    blocks.push({ strand, radius, start, end, low: low as unknown as Point, high: high as unknown as Point, moved });
    start = end;
  }
  return blocks;
}

function boxGap(p: Block, q: Block): number {
  let most = 0;
  for (const k of [0, 1, 2] as const) most = Math.max(most, p.low[k] - q.high[k], q.low[k] - p.high[k]);
  return most;
}

/** The farthest that any point of a cord moved between two pictures of it: points are the same distance along. */
export function movedBetween(before: Path, after: Path): number {
  return Math.max(farthest(before, after), farthest(after, before));
}

function farthest(before: Path, after: Path): number {
  let most = 0;
  let walked = 0;
  let there = 0;
  let k = 1;
  for (const [i, point] of before.entries()) {
    if (i > 0) walked += step(before[i - 1] as Point, point);
    while (k < after.length - 1 && there + step(after[k - 1] as Point, after[k] as Point) < walked) {
      there += step(after[k - 1] as Point, after[k] as Point);
      k++;
    }
    const [a, b] = [after[k - 1] as Point, after[k] as Point];
    const long = step(a, b);
    const u = long === 0 ? 0 : Math.min(1, (walked - there) / long);
    const seen: Point = [a[0] + (b[0] - a[0]) * u, a[1] + (b[1] - a[1]) * u, a[2] + (b[2] - a[2]) * u];
    most = Math.max(most, step(point, seen));
  }
  return most;
}

/** Beyond this, in d, how near two cords are makes no difference; `nearest` then says this much. */
const farEnough = 0.95;

export interface Watched {
  readonly moments: number;
  readonly gap: number;
  readonly where: string;
  readonly shortest: Readonly<Record<string, number>>;
  readonly longest: Readonly<Record<string, number>>;
}

/** The whole tying, watched so often that no point moves more than `most` d from one look to the next. */
export function watch(
  knot: Parameters<typeof strandModel>[0],
  options: Parameters<typeof strandModel>[1],
  most = 0.2,
): Watched {
  const look = (t: number) => strandModel(knot, { ...options, moment: t, crossings: false });
  let now = look(0);
  let t = 0;
  let stride = 1 / 400;
  let worst = { gap: 9, where: '' };
  let moments = 0;
  const shortest: Record<string, number> = {};
  const longest: Record<string, number> = {};
  const note = (model: Pick<StrandModel, 'strands'>, before?: Pick<StrandModel, 'strands'>) => {
    moments++;
    const here = nearest(model, before);
    if (here.gap < worst.gap) worst = { gap: here.gap, where: `t ${t.toFixed(4)}: ${here.where}` };
    for (const { id, path } of model.strands) {
      const length = lengthOf(path);
      shortest[id] = Math.min(shortest[id] ?? length, length);
      longest[id] = Math.max(longest[id] ?? length, length);
    }
  };
  note(now);
  while (t < 1) {
    const next = Math.min(1, t + stride);
    const then = look(next);
    const moved = Math.max(...now.strands.map(({ path }, i) => movedBetween(path, then.strands[i]?.path ?? [])));
    if (moved > most) {
      stride *= Math.max(0.3, (most / moved) * 0.9);
      if (stride < 1e-7) return { moments, gap: -1, where: `jump at t ${t}`, shortest, longest };
      continue;
    }
    t = next;
    note(then, now);
    now = then;
    stride *= Math.min(2, (most / Math.max(moved, 1e-3)) * 0.93);
  }
  return { moments, ...worst, shortest, longest };
}
