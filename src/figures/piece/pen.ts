import { bends } from '../spline.ts';
import type { Path, Point } from '../strand/point.ts';
import type { PieceShape } from './model-types.ts';
import { evenSteps } from './packed.ts';
import { inRuns, partOf, type Runs } from './runs.ts';

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

/** How far a point may lie off its neighbours' line, in d, before it counts. */
const SLIGHT = 0.05;

/** The line without the points that do not bend it by more than `slight`, in d. */
export function thinned(path: Path, slight = SLIGHT): Path {
  const first = path[0];
  const last = path.at(-1);
  if (!first || !last || path.length < 3) return path;
  const [x, y] = [last[0] - first[0], last[1] - first[1]];
  const size = Math.sqrt(x * x + y * y);
  let far = 0;
  let most = 0;
  for (const [i, [px, py]] of path.entries()) {
    const [u, v] = [px - first[0], py - first[1]];
    const off = size < 0.2 ? Math.sqrt(u * u + v * v) : Math.abs(u * y - v * x) / size;
    if (i > 0 && i < path.length - 1 && off > most) [far, most] = [i, off];
  }
  if (most <= slight) return [first, last];
  return [...thinned(path.slice(0, far + 1), slight), ...thinned(path.slice(far), slight).slice(1)];
}

/** A smooth line with the points as corners of its frame, in whole units. */
export function curved(whole: Path): string {
  const path = thinned(whole);
  if (path.length < 3) return straight(path);
  const corners = path.map((point): [number, number] => [unit(point[0]), unit(point[1])]);
  let [x, y] = corners[0] as [number, number];
  const d = `M${packedFigures([x, y])}`;
  const steps: number[] = [];
  for (const [, corner, to] of bends(corners, halfway)) {
    steps.push(corner[0] - x, corner[1] - y, to[0] - x, to[1] - y);
    [x, y] = to;
  }
  return `${d}q${packedFigures(steps)}`;
}

const halfway = (a: readonly [number, number], b: readonly [number, number]): [number, number] => [
  Math.round((a[0] + b[0]) / 2),
  Math.round((a[1] + b[1]) / 2),
];

/** Whole cord with its twist, cord with light alone, or edge and body. */
export type Fineness = 'cord' | 'lit' | 'stitch';

/** The house's colours with plain ones behind them, so that the picture stands alone as a file too. */
const HOUSE = {
  line: ['--o', 'var(--cord-outline,#463619)'],
  light: ['--i', 'var(--cord-light,#fffdf4)'],
  base: ['--b', 'var(--cord-base,#e3d3ac)'],
  lead: ['--l', 'var(--cord-lead,#2f6f94)'],
  moved: ['--a', 'var(--cord-must,#a93244)'],
  metal: ['--m', 'var(--cord-metal,#b4bac2)'],
  metalLine: ['--e', 'var(--cord-metal-edge,#4d5666)'],
  metalLight: ['--s', 'var(--cord-metal-light,#f4f6f8)'],
} as const;

/** The colours by short names, which the picture's own `PAINT_STYLE` gives. */
export const PAINTS = {
  line: 'var(--o)',
  light: 'var(--i)',
  base: 'var(--b)',
  lead: 'var(--l)',
  moved: 'var(--a)',
  metal: 'var(--m)',
  metalLine: 'var(--e)',
  metalLight: 'var(--s)',
} as const satisfies Record<keyof typeof HOUSE, string>;

export const PAINT_STYLE = Object.values(HOUSE)
  .map(([name, value]) => `${name}:${value}`)
  .join(';');

/** The line round a cord, in d. */
const OUTLINE = 0.1;
const stepOf: Record<Fineness, number> = { cord: 0.5, lit: 0.5, stitch: 0.5 };

/** How the parts of a cord are painted; the picture carries this itself, so that it stands alone as a file.
 * Single classes, since rules with a place to be in do not reach into uses. */
export const PEN_STYLE = `.pc-e{stroke:var(--o);stroke-width:${UNIT}px}.pc-b{stroke:currentColor;stroke-width:${Math.round(UNIT * (1 - 2 * OUTLINE))}px;stroke-linecap:round}.pc-n{stroke:var(--b)}.pc-i{stroke:var(--i);stroke-opacity:.4;stroke-width:4px}.pc-t{stroke:var(--o);stroke-opacity:.34;stroke-width:1.5px}`;

/** A body's colour, where it is not the one handed in from outside. */
const bodyOf = (paint: string): string =>
  paint === PAINTS.base
    ? 'class="pc-b pc-n"'
    : paint === 'currentColor'
      ? 'class="pc-b"'
      : `class="pc-b" color="${paint}"`;

/** Strokes that share one line: the cord's edge and its body. The body's round ends hide where two stretches meet. */
const both = (d: string, paint: string, radius: number, metal = false): string => {
  if (radius === 0.5 && !metal) return `<path d="${d}" class="pc-e"/><path d="${d}" ${bodyOf(paint)}/>`;
  const width = 2 * radius * UNIT;
  return `<path d="${d}" stroke="${metal ? PAINTS.metalLine : PAINTS.line}" stroke-width="${Math.round(width)}"/><path d="${d}" stroke="${paint}" stroke-width="${Math.round(width - 2 * OUTLINE * UNIT)}"/>`;
};

/** The edge round the end of a string that has been cut; painted before the string, which covers all but its rim. */
export const cutEnd = ([x, y]: Point): string =>
  `<path d="M${packedFigures([unit(x), unit(y)])}h0" class="pc-e" stroke-linecap="round"/>`;

/** How far the light lies to the upper left of a cord's middle, in its radius. */
const LIGHT = 0.34;
/** From one mark of the twist to the next, in d. */
const LAY = 0.8;

/** The light lies beside the middle by its own figures: a browser keeps count of every element that is moved by itself. */
const lit = (path: Path, radius: number, metal: boolean): string => {
  const by = -Math.round(LIGHT * radius * UNIT * 0.8) / UNIT;
  const d = curved(path.map(([x, y, z]) => [x + by, y + by, z]));
  if (!metal) return `<path d="${d}" class="pc-i"/>`;
  return `<path d="${d}" stroke="${PAINTS.metalLight}" stroke-opacity="0.85" stroke-width="${Math.round(radius * 0.4 * UNIT)}"/>`;
};

/** Slanting marks of the twist at equal steps. */
function twist(path: Path, radius: number): string {
  let d = '';
  const steps = evenSteps(path, LAY);
  for (const [i, point] of steps.entries()) {
    const next = steps[i + 1];
    if (!next) break;
    const [tx, ty] = [next[0] - point[0], next[1] - point[1]];
    const size = Math.sqrt(tx * tx + ty * ty);
    if (size < LAY * 0.5) continue;
    const [ux, uy] = [tx / size, ty / size];
    const reach = radius * 0.72;
    const [sx, sy] = [-uy * reach + ux * 0.2, ux * reach + uy * 0.2];
    const [mx, my] = [(point[0] + next[0]) / 2, (point[1] + next[1]) / 2];
    d += `M${packedFigures([unit(mx - sx), unit(my - sy)])}l${packedFigures([unit(2 * sx), unit(2 * sy)])}`;
  }
  return d && `<path d="${d}" class="pc-t"/>`;
}

/** Any one stretch of cord. */
export function stretch(path: Path, paint: string, fineness: Fineness, radius = 0.5, metal = false): string {
  const bare = both(curved(path), paint, radius, metal);
  if (fineness === 'stitch' || path.length < 3) return bare;
  return `${bare}${lit(path.slice(1, -1), radius, metal)}${metal || fineness === 'lit' ? '' : twist(path, radius)}`;
}

/** Depth from which a cord lies in front of bases whose middle is at 0, in d. */
const IN_FRONT = 0.2;

/** One cord in the stretches that lie behind the bases and before them, each with the order in which it is painted. */
export interface Stretches {
  readonly behind: readonly Path[];
  readonly before: readonly Path[];
}

export const nearest = (path: Path): number =>
  path.reduce((high, [, , z]) => Math.max(high, z), Number.NEGATIVE_INFINITY);

/** The order in which stretches are painted. */
const deepestFirst = (paths: readonly Path[]): Path[] =>
  paths.filter(({ length }) => length > 1).sort((a, b) => nearest(a) - nearest(b));

/**
 * How far a stretch goes on beyond the place where it is cut, in d, so that no edge is missing where it turns; and how
 * near to either end of the cord it does not, since there it comes from a neighbour or goes on to one.
 */
const LAP = 0.25;
const NO_LAP = 2;
const SEAM = 0.05;

/** Cuts a cord where it passes from behind the bases to before them; the stretches of each kind the deepest first. */
export function stretchesOf(line: Path, step: number, inFront = IN_FRONT): Stretches {
  const path = evenSteps(line, step);
  const cuts: { readonly at: number; readonly front: boolean }[] = [];
  for (let i = 1; i + 1 < path.length; i += 1) {
    const [a, b] = [path[i] as Point, path[i + 1] as Point];
    const front = b[2] > inFront;
    if (a[2] > inFront !== front) cuts.push({ at: i + (inFront - a[2]) / (b[2] - a[2]), front });
  }
  const behind: Path[] = [];
  const before: Path[] = [];
  // What begins just at the depth of the cut belongs to where it goes.
  let front = (path[Math.min(1, path.length - 1)] as Point)[2] > inFront;
  let from = 0;
  for (const cut of [...cuts, null]) {
    const inside = cut && cut.at * step > NO_LAP && (path.length - 1 - cut.at) * step > NO_LAP;
    const lap = (inside ? LAP : SEAM) / step;
    (front ? before : behind).push(partOf(path, from, cut ? cut.at + lap : path.length - 1));
    if (cut) {
      front = cut.front;
      from = cut.at - lap;
    }
  }
  return { behind: deepestFirst(behind), before: deepestFirst(before) };
}

/** Depth from which a part of a lark's head is painted over the bar: its ends are deeper below it, under the loop. */
export const HEAD_IN_FRONT = 0.7;

/** The same for what is fixed to the bar, in the order of painting. The loop of a lark's head lies over its ends, and comes last. */
export function headStretches(name: string, line: Path, step: number): Stretches {
  if (name.startsWith('larks')) {
    const { behind, before } = stretchesOf(line, step, HEAD_IN_FRONT);
    const middle = (path: Path): number => path.reduce((sum, [, y]) => sum + y, 0) / path.length;
    return { behind, before: [...before].sort((a, b) => middle(a) - middle(b)) };
  }
  const { behind, before } = stretchesOf(line, step);
  const sorted = (stretches: readonly Path[]): Path[] => {
    const { low, high } = inRuns(stretches.map((path) => ({ path })));
    return [...low, ...high].map(({ path }) => path);
  };
  return { behind: sorted(behind), before: sorted(before) };
}

const together = (runs: readonly { readonly path: Path }[], paint: string): string => {
  const d = runs.map(({ path }) => curved(path)).join('');
  return d && both(d, paint, 0.5);
};

/** The stretches of some cords on one side of what they wind round, so cut that those which lie over others come last. */
const wind = (leads: readonly Path[], fineness: Fineness, side: keyof Stretches): Runs<{ readonly path: Path }> =>
  inRuns(leads.flatMap((lead) => stretchesOf(lead, stepOf[fineness])[side].map((path) => ({ path }))));

/** Of strings that wind round bases what lies behind these. It is seen in gaps alone, and so it is painted in few lines. */
export function windsBehind({ leads }: Pick<PieceShape, 'leads'>, paint: string, fineness: Fineness): string {
  const { low, high } = wind(leads, fineness, 'behind');
  return together(low, paint) + together(high, paint);
}

/** The same of what lies before them. */
export function windsBefore({ leads }: Pick<PieceShape, 'leads'>, paint: string, fineness: Fineness): string {
  const { low, high } = wind(leads, fineness, 'before');
  return [...low, ...high].map(({ path }) => stretch(path, paint, fineness)).join('');
}

/** Strings that wind round bases: what lies behind, the bases, what lies before. */
export function wound({ leads, bases }: PieceShape, paint: string, fineness: Fineness): string {
  const layer = (front: boolean): string =>
    sideBySide(
      bases.filter(([point]) => (point?.[2] ?? 0) > 0 === front),
      PAINTS.base,
    );
  return windsBehind({ leads }, paint, fineness) + layer(false) + layer(true) + windsBefore({ leads }, paint, fineness);
}

/** Cords that do not cross: one path for their edges, one for their bodies. */
export function sideBySide(paths: readonly Path[], paint: string, radius = 0.5, metal = false): string {
  const d = paths.map(straight).join('');
  return d && both(d, paint, radius, metal);
}
