import { overStretches, type Stretch } from './depth.ts';
import type { Strand, StrandModel } from './model.ts';
import { distance, type Path, type Point } from './point.ts';

/** Air left beside a cord that passes over another, in d. */
const gap = 0.14;
/** The line round a cord, in d. */
const outline = 0.09;
/** From one mark of the twist to the next along a cord, in d. */
const lay = 0.62;
/** Bits of cord are no longer than this before they are sorted by depth, in d. */
const bit = 0.55;

export interface DrawOptions {
  /** A name for the picture, for those who hear it; the words come from `src/words/`. */
  readonly title?: string;
  readonly description?: string;
  /** Prefix of ids inside the picture: needed where several stand on one page. */
  readonly id?: string;
  /** Marks of the twist. Default true; at small sizes they only make grey. */
  readonly twist?: boolean;
}

/**
 * A model as plain SVG in units of the cord's diameter: outlines, cord, soft light from the upper left, marks of
 * the twist. What lies over what comes from depth alone. Colours are the house's custom properties, each with a
 * plain one behind it, so the picture stands alone as a file too.
 */
export function drawModel(model: Pick<StrandModel, 'strands' | 'frame'>, options: DrawOptions = {}): string {
  const { left, right, top, bottom } = model.frame;
  const { id = 'knot', twist = true } = options;
  const fine = model.strands.map((strand) => ({ ...strand, path: within(strand, model.frame) }));
  const pens = fine.map((strand) => penFor(strand, twist));
  const once = pens.map((pen, i) => pen(0, (fine[i]?.path.length ?? 1) - 2, []));
  const again = overStretches(fine).map(({ strand, from, to, airy }) => pens[strand]?.(from, to, airy) ?? '');
  const cords = [...once, ...again].join('');
  const named = options.title
    ? ` role="img" aria-labelledby="${id}-title${options.description ? ` ${id}-desc` : ''}"><title id="${id}-title">${escaped(options.title)}</title>${options.description ? `<desc id="${id}-desc">${escaped(options.description)}</desc>` : ''}`
    : ' aria-hidden="true">';
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="${figure(left)} ${figure(top)} ${figure(right - left)} ${figure(bottom - top)}"${named}<g fill="none" stroke-linejoin="round">${cords}</g></svg>`;
}

/** Draws pieces `from` to `to` of one cord; whatever is drawn twice falls exactly on itself. */
type Pen = (from: number, to: number, airy: Stretch['airy']) => string;

function penFor({ path, radius, colour, role }: Strand, twist: boolean): Pen {
  const thick = radius * 2;
  const width = (part: number): string => figure(part);
  const line = curvesThrough(path);
  const shade = curvesThrough(offset(path, 0.17 * thick, 0.17 * thick));
  const light = curvesThrough(offset(path, -0.17 * thick, -0.15 * thick));
  const marks = twist && role !== 'bar' ? twistMarks(path, radius) : [];
  return (from, to, airy) => {
    const d = line(from, to);
    const ticks = marks.slice(Math.max(0, from - 1), to + 2).join('');
    const air = airy.map(([a, b]) => line(a, b)).join('');
    const whole = lengthened(path.slice(from, to + 2), d);
    return [
      air && `<path d="${air}" stroke="var(--cord-gap,#faf6ec)" stroke-width="${width(thick + 2 * gap)}"/>`,
      `<path d="${d}" stroke="var(--cord-line,#1d2233)" stroke-width="${width(thick)}"/>`,
      `<path d="${whole}" stroke="${withPlain(colour, plainColours[role])}" stroke-width="${width(thick - 2 * outline)}"/>`,
      `<path d="${shade(from, to)}" stroke="var(--cord-shade,#000)" stroke-opacity=".16" stroke-width="${width(thick * 0.36)}"/>`,
      `<path d="${light(from, to)}" stroke="var(--cord-light,#fff)" stroke-opacity=".38" stroke-width="${width(thick * 0.2)}"/>`,
      ticks && `<path d="${ticks}" stroke="var(--cord-line,#1d2233)" stroke-opacity=".5" stroke-width=".06"/>`,
    ].join('');
  };
}

const plainColours: Record<Strand['role'], string> = {
  leading: '#b5303c',
  base: '#c9bfa8',
  bar: '#8c9097',
  resting: '#3f7f6a',
  tying: '#b5303c',
  freed: '#5b7fa6',
};

/** `var(--x)` gets a plain colour behind it; any other colour stays as it is. */
const withPlain = (colour: string, plain: string): string => colour.replace(/^var\((--[\w-]+)\)$/, `var($1,${plain})`);

/** The part of a cord in or near the picture, in bits short enough to be sorted by depth. */
function within({ path }: Strand, frame: StrandModel['frame']): Point[] {
  const out: Point[] = [];
  for (const [i, b] of path.entries()) {
    const a = path[i - 1];
    if (!a) {
      out.push(b);
      continue;
    }
    const margin = 1.5;
    const seen =
      Math.max(a[0], b[0]) > frame.left - margin &&
      Math.min(a[0], b[0]) < frame.right + margin &&
      Math.max(a[1], b[1]) > frame.top - margin &&
      Math.min(a[1], b[1]) < frame.bottom + margin;
    const parts = seen ? Math.ceil(distance(a, b) / bit) : 1;
    for (let k = 1; k <= parts; k++)
      out.push([a[0] + ((b[0] - a[0]) * k) / parts, a[1] + ((b[1] - a[1]) * k) / parts, a[2] + ((b[2] - a[2]) * k) / parts]);
  }
  return out;
}

/** A smooth line through points in the picture (Catmull-Rom as Bézier pieces), whole or from one piece to another. */
function curvesThrough(points: Path): (from?: number, to?: number) => string {
  const at = (i: number): Point => points[Math.max(0, Math.min(points.length - 1, i))] as Point;
  const pieces = points.slice(1).map((p2, i) => {
    const [p0, p1, p3] = [at(i - 1), at(i), at(i + 2)];
    return `C${pair(p1[0] + (p2[0] - p0[0]) / 6, p1[1] + (p2[1] - p0[1]) / 6)} ${pair(p2[0] - (p3[0] - p1[0]) / 6, p2[1] - (p3[1] - p1[1]) / 6)} ${pair(p2[0], p2[1])}`;
  });
  return (from = 0, to = pieces.length - 1) =>
    pieces.length === 0 ? '' : `M${pair(at(from)[0], at(from)[1])}${pieces.slice(from, to + 1).join('')}`;
}

/** A line drawn a hair longer at both ends: no seam shows where a stretch drawn again ends. */
function lengthened(points: Path, d: string): string {
  const grown = (end: Point | undefined, next: Point | undefined): string => {
    if (!end || !next) return '';
    const [x, y] = [end[0] - next[0], end[1] - next[1]];
    const size = Math.sqrt(x * x + y * y) || 1;
    return pair(end[0] + (x / size) * 0.04, end[1] + (y / size) * 0.04);
  };
  return `M${grown(points[0], points[1])}L${d.slice(1)}L${grown(points.at(-1), points.at(-2))}`;
}

/** The line moved sideways towards a direction in the picture: only across the cord, never along it. */
function offset(points: Path, x: number, y: number): Point[] {
  return points.map((p, i) => {
    const [a, b] = [points[i - 1] ?? p, points[i + 1] ?? p];
    const [tx, ty] = [b[0] - a[0], b[1] - a[1]];
    const size = Math.sqrt(tx * tx + ty * ty) || 1;
    const across = (x * -ty + y * tx) / size;
    return [p[0] + (across * -ty) / size, p[1] + (across * tx) / size, p[2]];
  });
}

/** Slanting marks across the cord, by piece, at equal steps along it in space, so that they close up where it dips. */
function twistMarks(points: Path, radius: number): string[] {
  const inner = radius - outline;
  let due = lay / 2;
  let walked = 0;
  return points.slice(1).map((b, i) => {
    const a = points[i] as Point;
    const long = distance(a, b);
    const flat = Math.sqrt((b[0] - a[0]) ** 2 + (b[1] - a[1]) ** 2);
    let d = '';
    while (long > 0 && due <= walked + long) {
      const t = (due - walked) / long;
      due += lay;
      if (flat < long * 0.5) continue;
      const [x, y] = [a[0] + (b[0] - a[0]) * t, a[1] + (b[1] - a[1]) * t];
      const [ux, uy] = [(b[0] - a[0]) / flat, (b[1] - a[1]) / flat];
      const [sx, sy] = [-uy * inner + ux * 0.22, ux * inner + uy * 0.22];
      d += `M${pair(x - sx, y - sy)}Q${pair(x - uy * 0.12 - ux * 0.1, y + ux * 0.12 - uy * 0.1)} ${pair(x + sx, y + sy)}`;
    }
    walked += long;
    return d;
  });
}

const figure = (value: number): string => String(Math.round(value * 100) / 100);
const pair = (x: number, y: number): string => `${figure(x)} ${figure(y)}`;
const escaped = (text: string): string => text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('"', '&quot;');
