import { overStretches } from '../strand/depth.ts';
import type { Path, Point } from '../strand/point.ts';
import { evenSteps } from './packed.ts';

/** Units of the picture in one cord's diameter: figures in paths are whole. */
export const UNIT = 20;

export const unit = (value: number): number => Math.round(value * UNIT);

/** Whole figures as short as path data allows. */
export const packedFigures = (values: readonly number[]): string =>
  values.reduce<string>(
    (text, value) => text + (text === '' || value < 0 ? '' : ' ') + String(value === 0 ? 0 : value),
    '',
  );

/** A straight line through points, in whole units. */
export function straight(path: Path): string {
  let [x, y] = [unit(path[0]?.[0] ?? 0), unit(path[0]?.[1] ?? 0)];
  let d = `M${packedFigures([x, y])}`;
  for (const point of path.slice(1)) {
    const [u, v] = [unit(point[0]) - x, unit(point[1]) - y];
    if (u === 0 && v === 0) continue;
    d += v === 0 ? `h${u}` : u === 0 ? `v${v}` : `l${packedFigures([u, v])}`;
    x += u;
    y += v;
  }
  return d;
}

/** A smooth line with the points as corners of its frame (quadratic B-spline), ends included. */
export function curved(path: Path): string {
  if (path.length < 3) return straight(path);
  const at = (i: number): readonly [number, number] => [unit(path[i]?.[0] ?? 0), unit(path[i]?.[1] ?? 0)];
  const last = path.length - 1;
  let [x, y] = at(0);
  let d = `M${packedFigures([x, y])}`;
  let steps: number[] = [];
  for (let i = 1; i < last; i += 1) {
    const [cx, cy] = at(i);
    const [nx, ny] = at(i + 1);
    const [ex, ey] = i + 1 === last ? [nx, ny] : [Math.round((cx + nx) / 2), Math.round((cy + ny) / 2)];
    steps.push(cx - x, cy - y, ex - x, ey - y);
    [x, y] = [ex, ey];
  }
  d += `q${packedFigures(steps)}`;
  steps = [];
  return d;
}

/** One cord of a group that is drawn together. */
export interface Drawn {
  readonly path: Path;
  /** Any CSS colour; `currentColor` for the string whose colour is handed in. */
  readonly paint: string;
  readonly radius?: number;
  readonly metal?: boolean;
}

export type Fineness = 'cord' | 'stitch';

export const PAINTS = {
  line: 'var(--cord-outline,#463619)',
  light: 'var(--cord-light,#fffdf4)',
  base: 'var(--cord-base,#e3d3ac)',
  lead: 'var(--cord-lead,#2f6f94)',
  metal: 'var(--cord-metal,#b4bac2)',
  metalLine: 'var(--cord-metal-edge,#4d5666)',
  metalLight: 'var(--cord-metal-light,#f4f6f8)',
} as const;

/** The line round a cord, in d. */
const OUTLINE = 0.1;
const stepOf: Record<Fineness, number> = { cord: 0.42, stitch: 0.62 };

/** Strokes that share one line: the cord's edge and its body. */
const both = (d: string, paint: string, radius: number, metal = false): string => {
  const width = 2 * radius * UNIT;
  return `<path d="${d}" stroke="${metal ? PAINTS.metalLine : PAINTS.line}" stroke-width="${Math.round(width)}"/><path d="${d}" stroke="${paint}" stroke-width="${Math.round(width - 2 * OUTLINE * UNIT)}"/>`;
};

/** How far the light lies to the upper left of a cord's middle, in its radius. */
const LIGHT = 0.34;

function lit(path: Path, radius: number, paint: string, opacity: number): string {
  const by = LIGHT * radius;
  const moved = path.map((point, i): Point => {
    const [a, b] = [path[i - 1] ?? point, path[i + 1] ?? point];
    const [tx, ty] = [b[0] - a[0], b[1] - a[1]];
    const size = Math.sqrt(tx * tx + ty * ty) || 1;
    const across = (-by * -ty + -by * tx) / size;
    return [point[0] + (across * -ty) / size, point[1] + (across * tx) / size, point[2]];
  });
  return `<path d="${curved(moved)}" stroke="${paint}" stroke-opacity="${opacity}" stroke-width="${Math.round(radius * 0.44 * UNIT)}"/>`;
}

/**
 * Cords that cross one another, each drawn whole and then again where it lies over something, the deepest first: over
 * and under come from depth alone.
 */
export function woven(cords: readonly Drawn[], fineness: Fineness): string {
  const fine = cords.map((cord) => ({
    ...cord,
    radius: cord.radius ?? 0.5,
    path: evenSteps(cord.path, stepOf[fineness]),
  }));
  const light = (cord: (typeof fine)[number], path: Path): string =>
    fineness === 'cord' && path.length > 2
      ? lit(path, cord.radius, cord.metal ? PAINTS.metalLight : PAINTS.light, cord.metal ? 0.85 : 0.42)
      : '';
  const draw = (cord: (typeof fine)[number], path: Path): string =>
    both(curved(path), cord.paint, cord.radius, cord.metal) + light(cord, path);
  const once = fine.map((cord) => draw(cord, cord.path));
  const again = overStretches(fine).map(({ strand, from, to }) => {
    const cord = fine[strand];
    return cord ? draw(cord, cord.path.slice(from, to + 2)) : '';
  });
  return once.join('') + again.join('');
}

/** Cords that do not cross: one path for their edges, one for their bodies. */
export function sideBySide(paths: readonly Path[], paint: string, radius = 0.5): string {
  const d = paths.map(curvedOrStraight).join('');
  return d && both(d, paint, radius);
}

const curvedOrStraight = (path: Path): string => straight(path);
