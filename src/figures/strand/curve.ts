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
    const [a, b, c, d] = [line[i], line[i + 1], line[i + 2], line[i + 3]] as [Point, Point, Point, Point];
    const pieces = isStraight(a, b, c, d) ? 1 : Math.min(14, Math.max(1, Math.ceil(distance(b, c) / finest)));
    for (let k = 1; k <= pieces; k++) points.push(splinePoint(a, b, c, d, k / pieces));
  }
  return points;
}

function splinePoint(a: Point, b: Point, c: Point, d: Point, t: number): Point {
  const s = 1 - t;
  const wa = (s * s * s) / 6;
  const wb = (3 * t * t * t - 6 * t * t + 4) / 6;
  const wd = (t * t * t) / 6;
  const wc = 1 - wa - wb - wd;
  return [
    a[0] * wa + b[0] * wb + c[0] * wc + d[0] * wd,
    a[1] * wa + b[1] * wb + c[1] * wc + d[1] * wd,
    a[2] * wa + b[2] * wb + c[2] * wc + d[2] * wd,
  ];
}

function isStraight(a: Point, b: Point, c: Point, d: Point): boolean {
  return offLine(b, a, d) < straightness && offLine(c, a, d) < straightness;
}

function offLine(p: Point, a: Point, b: Point): number {
  const whole = distance(a, b);
  if (whole === 0) return distance(p, a);
  const t = ((p[0] - a[0]) * (b[0] - a[0]) + (p[1] - a[1]) * (b[1] - a[1]) + (p[2] - a[2]) * (b[2] - a[2])) / whole / whole;
  return distance(p, between(a, b, t));
}

export function lengthOf(path: Path): number {
  let sum = 0;
  for (let i = 1; i < path.length; i++) sum += distance(path[i - 1] as Point, path[i] as Point);
  return sum;
}

/** The first `length` d of a line; where the line is too short it is drawn on straight. */
export function firstOf(path: Path, length: number): Point[] {
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

/** The place `at` d along a line, between its ends. */
export function placeAt(path: Path, at: number): Point {
  return firstOf(path, at).at(-1) ?? [0, 0, 0];
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
