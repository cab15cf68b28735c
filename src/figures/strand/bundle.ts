import { between, type Path, type Point } from './point.ts';
import type { StillCord } from './tying.ts';

/** Half the height of two layers of cord lying in each other's hollows: √3 / 4. */
const halfLayer = Math.sqrt(3) / 4;
/** The width of a single base over which a pass is widened to cross a bundle. */
const reach = 0.6;

/**
 * Where the strings of a bundle stand: [x, z] of each, left to right. One alone in the middle, two side by
 * side, more in two layers, every string in the hollow of its neighbours (1 d from each).
 */
export function standing(strands: number): [x: number, z: number][] {
  if (strands <= 2) return Array.from({ length: strands }, (_, i) => [i - (strands - 1) / 2, 0]);
  return Array.from({ length: strands }, (_, i) => [(i - (strands - 1) / 2) / 2, i % 2 === 0 ? -halfLayer : halfLayer]);
}

/** The strings of a hanging base, straight, as cords that stay. */
export const hangingBase = (strands: number): StillCord[] =>
  standing(strands).map(([x, z], i) => ({
    id: strands === 1 ? 'base' : `base-${i + 1}`,
    role: 'base',
    path: [
      [x, -14, z],
      [x, 18, z],
    ],
  }));

/** How much thicker than one cord something is, each way from its middle, in d: across, and towards the viewer. */
export interface Spread {
  readonly x: number;
  readonly z: number;
}

/** How far the outer strings of a bundle stand from its middle: across, and towards the viewer. */
export function spreadOf(strands: number): Spread {
  return { x: strands <= 2 ? (strands - 1) / 2 : (strands - 1) / 4, z: strands <= 2 ? 0 : halfLayer };
}

/** 0 at 0, ±1 from ±1 outwards, level where it gets there. */
const eased = (u: number): number => (u >= 1 ? 1 : u <= -1 ? -1 : u * (1.5 - 0.5 * u * u));

/**
 * Widens a line that runs round one base at x = 0, z = 0 so that it runs round something
 * thicker in its place: a bundle, a bar. Nothing
 * comes nearer to anything by it: the map only spreads, so a clear knot over one base is clear over a bundle.
 */
export function widen(path: Path, { x, z }: Spread): Point[] {
  if (x === 0 && z === 0) return [...path];
  const fine: Point[] = [];
  for (const [i, p] of path.entries()) {
    const before = path[i - 1];
    if (before) for (const t of cutsBetween(before, p)) fine.push(between(before, p, t));
    fine.push(p);
  }
  return fine.map((p) => [p[0] + x * eased(p[0] / reach), p[1], p[2] + z * eased(p[2] / reach)]);
}

const levels = [-1, -0.75, -0.5, -0.25, 0, 0.25, 0.5, 0.75, 1].map((part) => part * reach);

/** Where a straight piece has to be divided so that it bends with the map: inside the widened strip. */
function cutsBetween(a: Point, b: Point): number[] {
  const cuts: number[] = [];
  for (const axis of [0, 2] as const) {
    const from = a[axis];
    const way = b[axis] - from;
    if (way === 0) continue;
    for (const level of levels) {
      const t = (level - from) / way;
      if (t > 0 && t < 1) cuts.push(t);
    }
  }
  return cuts.sort((x, y) => x - y);
}
