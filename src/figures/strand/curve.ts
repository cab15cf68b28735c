import { between, distance, type Path, type Point } from './point.ts';

/** The longest piece of a bent line, in d; straight stretches are one piece however long. */
const finest = 0.25;
/** How far a control point may lie off the straight, in d, before its stretch counts as bent. */
const straightness = 0.004;

/**
 * The even cubic B-spline of a control line, ends included. It never leaves the hull of four neighbouring
 * control points, so room left between control lines is room left between cords.
 */
export function smooth(control: Path): Point[] {
  const first = control[0];
  const last = control.at(-1);
  if (!first || !last) return [];
  const line: Path = [first, first, ...control, last, last];
  const points: Point[] = [first];
  for (let i = 0; i + 3 < line.length; i++) {
    const a = line[i] as Point;
    const b = line[i + 1] as Point;
    const c = line[i + 2] as Point;
    const d = line[i + 3] as Point;
    const pieces = isStraight(a, b, c, d) ? 1 : Math.min(14, Math.max(1, Math.ceil(distance(b, c) / finest)));
    for (const [wa, wb, wc, wd] of weightsFor(pieces))
      points.push([
        a[0] * wa + b[0] * wb + c[0] * wc + d[0] * wd,
        a[1] * wa + b[1] * wb + c[1] * wc + d[1] * wd,
        a[2] * wa + b[2] * wb + c[2] * wc + d[2] * wd,
      ]);
  }
  return points;
}

type Weights = readonly [number, number, number, number];
const weights = new Map<number, readonly Weights[]>();

/** How much each of four control points counts at the ends of so many pieces of the span between the middle two. */
function weightsFor(pieces: number): readonly Weights[] {
  const known = weights.get(pieces);
  if (known) return known;
  const fresh = Array.from({ length: pieces }, (_, k): Weights => {
    const t = (k + 1) / pieces;
    const s = 1 - t;
    const a = (s * s * s) / 6;
    const b = (3 * t * t * t - 6 * t * t + 4) / 6;
    const d = (t * t * t) / 6;
    return [a, b, 1 - a - b - d, d];
  });
  weights.set(pieces, fresh);
  return fresh;
}

/** Whether b and c lie on the straight from a to d. */
function isStraight(a: Point, b: Point, c: Point, d: Point): boolean {
  const x = d[0] - a[0];
  const y = d[1] - a[1];
  const z = d[2] - a[2];
  const square = x * x + y * y + z * z;
  return offLine(b, a, x, y, z, square) && offLine(c, a, x, y, z, square);
}

function offLine(p: Point, a: Point, x: number, y: number, z: number, square: number): boolean {
  const u = p[0] - a[0];
  const v = p[1] - a[1];
  const w = p[2] - a[2];
  const along = u * x + v * y + w * z;
  const away = u * u + v * v + w * w - (square === 0 ? 0 : (along * along) / square);
  return away < straightness * straightness;
}

export function lengthOf(path: Path): number {
  let sum = 0;
  for (let i = 1; i < path.length; i++) sum += distance(path[i - 1] as Point, path[i] as Point);
  return sum;
}

/** The first `length` d of a line; where the line is too short it is drawn on straight. */
function firstOf(path: Path, length: number): Point[] {
  const points: Point[] = [];
  let left = length;
  for (const [i, point] of path.entries()) {
    const before = path[i - 1];
    if (!before) {
      points.push(point);
      continue;
    }
    const step = distance(before, point);
    if (step >= left) {
      points.push(step === 0 ? point : between(before, point, left / step));
      return points;
    }
    left -= step;
    points.push(point);
  }
  const end = path.at(-1);
  const before = path.at(-2);
  if (end && before && left > 0) points.push(between(before, end, 1 + left / Math.max(1e-9, distance(before, end))));
  return points;
}

/** `count` points at equal steps along a line, both ends included. */
export function evenly(path: Path, count: number): Point[] {
  const step = lengthOf(path) / (count - 1);
  const points: Point[] = [path[0] as Point];
  let walked = 0;
  for (let i = 1; i < path.length; i++) {
    const a = path[i - 1] as Point;
    const b = path[i] as Point;
    const piece = distance(a, b);
    while (points.length < count - 1 && walked + piece >= points.length * step)
      points.push(between(a, b, piece === 0 ? 0 : (points.length * step - walked) / piece));
    walked += piece;
  }
  points.push(path.at(-1) as Point);
  return points;
}

/** Cuts a line to `length`: from its start, or evenly both ways from its middle. */
export function cutTo(line: Path, from: 'start' | 'middle', length: number): Point[] {
  if (from === 'start') return firstOf(line, length);
  const half = lengthOf(line) / 2;
  const there = firstOf(firstOf(line, half).reverse(), length / 2).reverse();
  const back = firstOf(firstOf([...line].reverse(), half).reverse(), length / 2);
  return [...there, ...back.slice(1)];
}
