import { distance, type Path, type Point } from '../strand/point.ts';

/** Parts of one cord nearer to each other along it than this, in d, are one bend of it. */
const BEND = 1.2;

/** Where a stretch meets another in the picture: so many pieces along it, parts of one included, over it or under. */
interface Mark {
  readonly at: number;
  readonly over: boolean;
}

/** What is drawn along a line in space. */
interface Drawn {
  readonly path: Path;
}

/** Runs of cord that lie under all that they cross, or cross nothing, and those that lie over it; each the deepest first. */
export interface Runs<One> {
  readonly low: readonly One[];
  readonly high: readonly One[];
}

/** Cords that part by less than this, as the sine of the angle between them, run alongside each other. */
const ALONGSIDE = 0.3;
/** Cords whose middles are nearer than this in space, in d, press against each other: neither is over. */
const NEAR = 0.3;

/**
 * Stretches of cord cut into runs, each of which lies either over all that it crosses or under all of it. So they may be
 * painted in any order, as long as the low ones come before the high ones.
 */
export function inRuns<One extends Drawn>(stretches: readonly One[]): Runs<One> {
  const marks: Mark[][] = stretches.map(() => []);
  const boxes = stretches.map(({ path }) => boxOf(path));
  const blocks = stretches.map(({ path }) => blocksOf(path));
  for (const [i, one] of stretches.entries())
    for (let j = i; j < stretches.length; j += 1) {
      // Of a large piece hardly any two stretches meet, and there are very many pairs of them.
      if (apart(boxes[i] as Box, boxes[j] as Box)) continue;
      for (const [at, there, above] of meetings(one.path, (stretches[j] as One).path, blocks[j] ?? [], i === j)) {
        marks[i]?.push({ at, over: above });
        marks[j]?.push({ at: there, over: !above });
      }
    }
  const [low, high]: [One[], One[]] = [[], []];
  for (const [i, one] of stretches.entries()) {
    const own = (marks[i] ?? []).sort((a, b) => a.at - b.at);
    let from = 0;
    for (const [k, mark] of own.entries()) {
      const next = own[k + 1];
      if (next?.over === mark.over) continue;
      const to = next ? (mark.at + next.at) / 2 : one.path.length - 1;
      (mark.over ? high : low).push({ ...one, path: partOf(one.path, from, to) });
      from = to;
    }
    if (own.length === 0) low.push(one);
  }
  return { low: deepestFirst(low), high: deepestFirst(high) };
}

type Box = readonly [left: number, top: number, right: number, bottom: number];

function boxOf(path: Path): Box {
  let [left, top, right, bottom] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const [x, y] of path) {
    left = Math.min(left, x);
    top = Math.min(top, y);
    right = Math.max(right, x);
    bottom = Math.max(bottom, y);
  }
  return [left, top, right, bottom];
}

const apart = (one: Box, other: Box): boolean =>
  one[2] < other[0] || other[2] < one[0] || one[3] < other[1] || other[3] < one[1];

const nearest = (path: Path): number => path.reduce((most, [, , z]) => Math.max(most, z), Number.NEGATIVE_INFINITY);
const deepestFirst = <One extends Drawn>(all: readonly One[]): One[] =>
  [...all].sort((a, b) => nearest(a.path) - nearest(b.path));

/** So many pieces of a line share a box. */
const BLOCK = 8;

/** The boxes of a line, one after the other. */
function blocksOf(path: Path): Box[] {
  const blocks: Box[] = [];
  for (let from = 0; from + 1 < path.length; from += BLOCK) blocks.push(boxOf(path.slice(from, from + BLOCK + 1)));
  return blocks;
}

/** How far along it each point of a line lies, in d. */
function lengthsOf(path: Path): number[] {
  let along = 0;
  return path.map((point, i) => {
    along += i === 0 ? 0 : distance(path[i - 1] as Point, point);
    return along;
  });
}

/** Where two stretches, or two parts of one, cross in the picture: how far along either, and whether the first lies over. */
function meetings(
  p: Path,
  q: Path,
  blocks: readonly Box[],
  same: boolean,
): [at: number, there: number, above: boolean][] {
  const met: [number, number, boolean][] = [];
  const far = same ? lengthsOf(p) : [];
  for (let i = 0; i + 1 < p.length; i += 1) {
    const [a, b] = [p[i] as Point, p[i + 1] as Point];
    const own = boxOf([a, b]);
    for (let j = same ? i + 1 : 0; j + 1 < q.length; j += 1) {
      if (j % BLOCK === 0 && apart(own, blocks[j / BLOCK] as Box)) {
        j += BLOCK - 1;
        continue;
      }
      if (same && (far[j + 1] as number) - (far[i + 1] as number) < BEND) continue;
      const [c, d] = [q[j] as Point, q[j + 1] as Point];
      if (own[2] < Math.min(c[0], d[0]) || own[0] > Math.max(c[0], d[0])) continue;
      if (own[3] < Math.min(c[1], d[1]) || own[1] > Math.max(c[1], d[1])) continue;
      const [px, py, qx, qy] = [b[0] - a[0], b[1] - a[1], d[0] - c[0], d[1] - c[1]];
      const cross = px * qy - py * qx;
      if (Math.abs(cross) < ALONGSIDE * Math.hypot(px, py) * Math.hypot(qx, qy) || cross === 0) continue;
      const [dx, dy] = [c[0] - a[0], c[1] - a[1]];
      const [t, u] = [(dx * qy - dy * qx) / cross, (dx * py - dy * px) / cross];
      if (t < 0 || t >= 1 || u < 0 || u >= 1) continue;
      const above = a[2] + (b[2] - a[2]) * t - c[2] - (d[2] - c[2]) * u;
      if (Math.abs(above) > NEAR) met.push([i + t, j + u, above > 0]);
    }
  }
  return met;
}

/** A part of a line, from and to so many pieces along it. */
export function partOf(path: Path, from: number, to: number): Path {
  if (path.length < 2) return path;
  const spot = (at: number): Point => {
    const i = Math.min(path.length - 2, Math.floor(at));
    const [a, b] = [path[i] as Point, path[i + 1] as Point];
    const t = at - i;
    return [a[0] + (b[0] - a[0]) * t, a[1] + (b[1] - a[1]) * t, a[2] + (b[2] - a[2]) * t];
  };
  const between = path.filter((_, i) => i > from && i < to);
  return [spot(from), ...between, spot(to)];
}
