import { overStretches, type Stretch } from './depth.ts';
import type { Strand, StrandModel } from './model.ts';
import { between, distance, type Path, type Point } from './point.ts';

/** Air left beside a cord that passes over another, in d. */
const gap = 0.14;
/** The line round a cord, in d. */
const outline = 0.09;
/** From one mark of the twist to the next along a cord, in d. */
const lay = 0.62;
/** Bits of cord are no longer than this before they are sorted by depth, in d. */
const bit = 0.48;

export interface DrawOptions {
  /** A name for the picture, for those who hear it; the words come from `src/words/`. */
  readonly title?: string;
  readonly description?: string;
  /**
   * Prefix of ids inside the picture. By default it comes from what is drawn, so that different pictures on one page
   * have different ones.
   */
  readonly id?: string;
  /** Marks of the twist. Default true; at small sizes they only make grey. */
  readonly twist?: boolean;
  /** A place in the picture to draw a ring round. */
  readonly ring?: { readonly x: number; readonly y: number };
}

/**
 * A model as plain SVG in units of the cord's diameter: outlines, cord, soft light from the upper left, marks of
 * the twist. What lies over what comes from depth alone. Colours are the house's custom properties, each with a
 * plain one behind it, so the picture stands alone as a file too.
 */
export function drawModel(model: Pick<StrandModel, 'strands' | 'frame'>, options: DrawOptions = {}): string {
  const { left, right, top, bottom } = model.frame;
  const { twist = true } = options;
  const fine = model.strands.map((strand) => ({ ...strand, path: within(strand, model.frame) }));
  const pens = fine.map((strand) => penFor(strand, twist, freeSides(strand, model.strands)));
  const once = pens.map((pen, i) => pen(`${placeholder}-${i}`, 0, (fine[i]?.path.length ?? 1) - 2));
  const again = overStretches(fine).map(
    ({ strand, from, to, airy }, i) => pens[strand]?.(`${placeholder}-over-${i}`, from, to, airy) ?? '',
  );
  const drawn = [...once, ...again].join('');
  const id = options.id ?? `cord-${fingerprint(drawn)}`;
  const cords = drawn.replaceAll(placeholder, id);
  const named = options.title
    ? ` role="img" aria-labelledby="${id}-title${options.description ? ` ${id}-desc` : ''}"><title id="${id}-title">${escaped(options.title)}</title>${options.description ? `<desc id="${id}-desc">${escaped(options.description)}</desc>` : ''}`
    : ' aria-hidden="true">';
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="${figure(left)} ${figure(top)} ${figure(right - left)} ${figure(bottom - top)}"${named}<g fill="none" stroke-linejoin="round">${cords}</g>${options.ring ? ringAt(options.ring) : ''}</svg>`;
}

/** A ring that shows on every cord, and leaves what is inside it free. */
function ringAt({ x, y }: { readonly x: number; readonly y: number }): string {
  const circle = (paint: string, width: number): string =>
    `<circle cx="${figure(x)}" cy="${figure(y)}" r="1.15" fill="none" stroke="${paint}" stroke-width="${figure(width)}"/>`;
  return circle(paints.gap, 0.46) + circle(paints.ring, 0.2);
}

const placeholder = '@';

/** A short name for a text: the same text, the same name (FNV-1a, 32 bits). */
function fingerprint(text: string): string {
  let hash = 0x811c9dc5;
  for (let i = 0; i < text.length; i++) hash = Math.imul(hash ^ text.charCodeAt(i), 0x01000193);
  return (hash >>> 0).toString(36);
}

/** Strings that hang nearer to each other than this, in d, are one bundle. */
const BESIDE = 1.2;

/** The sides of a string on which no other string of its bundle touches it: -1 left, 1 right. */
function freeSides(strand: Strand, strands: readonly Strand[]): number[] {
  const hangs = ({ role, path }: Strand): boolean => role === 'base' && path[0]?.[0] === path.at(-1)?.[0];
  const across = ({ path }: Strand): number => path[0]?.[0] ?? 0;
  if (!hangs(strand)) return [-1, 1];
  const beside = strands
    .filter((other) => other.id !== strand.id && hangs(other))
    .map((other) => across(other) - across(strand));
  return [-1, 1].filter((side) => !beside.some((way) => way * side > 0 && Math.abs(way) < BESIDE));
}

/** Draws pieces `from` to `to` of one cord; whatever is drawn twice falls exactly on itself. */
type Pen = (id: string, from: number, to: number, airy?: Stretch['airy']) => string;

function penFor({ path, radius, colour, role }: Strand, twist: boolean, free: readonly number[]): Pen {
  const thick = radius * 2;
  const line = curvesThrough(path);
  const side = (x: number, y: number): ((from: number, to: number, over: boolean) => string) => {
    const points = offset(path, x * thick, y * thick);
    const curve = curvesThrough(points);
    return (from, to, over) =>
      over ? lengthened(points.slice(from, to + 2), curve(from, to + 1)) : curve(from, to + 1);
  };
  // A bundle leaves air round it as one: a string leaves none on a side where another string touches it.
  const beside = free.map((way) => curvesThrough(path.map(([x, y, z]): Point => [x + way * radius, y, z])));
  const shade = side(0.17, 0.17);
  const light = side(-0.17, -0.15);
  const marks = twist && role !== 'bar' ? twistMarks(path, radius) : [];
  const stroke = (d: string, paint: string, width: number): string =>
    `<path d="${d}" stroke="${paint}" stroke-width="${figure(width)}"/>`;
  const body = withPlain(colour, plainColours[role]);
  return (id, from, to, airy = []) => {
    const over = from > 0 || to < path.length - 2;
    const d = line(from, to + 1);
    if (d === '') return '';
    const ticks = marks.slice(Math.max(0, from - 1), to + 2).join('');
    const [only] = airy;
    const whole = airy.length === 1 && only?.[0] === from && only[1] === to + 1;
    const air = airy.map(([a, b]) => line(a, b)).join('');
    const outer = beside.flatMap((edge) => airy.map(([a, b]) => edge(a, b))).join('');
    const again = (paint: string, width: number): string =>
      `<use href="#${id}" stroke="${paint}" stroke-width="${figure(width)}"/>`;
    const cuts = [
      from === 0 ? cutEnd(path, 0, 1, radius) : '',
      to === path.length - 2 ? cutEnd(path, -1, -2, radius) : '',
    ].join('');
    return [
      `<defs><path id="${id}" d="${d}"/></defs>`,
      free.length < 2
        ? outer && stroke(outer, paints.gap, 2 * gap)
        : airy.length > 0 && (whole ? again(paints.gap, thick + 2 * gap) : stroke(air, paints.gap, thick + 2 * gap)),
      again(paints.line, thick),
      over
        ? stroke(lengthened(path.slice(from, to + 2), d), body, thick - 2 * outline)
        : again(body, thick - 2 * outline),
      `<path d="${shade(from, to, over)}" stroke="${paints.shade}" stroke-opacity=".16" stroke-width="${figure(thick * 0.36)}"/>`,
      `<path d="${light(from, to, over)}" stroke="${paints.light}" stroke-opacity=".38" stroke-width="${figure(thick * 0.2)}"/>`,
      cuts && stroke(cuts, paints.line, outline),
      ticks && `<path d="${ticks}" stroke="${paints.line}" stroke-opacity=".5" stroke-width=".06"/>`,
    ]
      .filter(Boolean)
      .join('');
  };
}

/** The line that closes a cord where it ends. */
function cutEnd(path: Path, end: number, next: number, radius: number): string {
  const [p, q] = [path.at(end), path.at(next)];
  if (!p || !q) return '';
  const [x, y] = [q[0] - p[0], q[1] - p[1]];
  const size = Math.sqrt(x * x + y * y) || 1;
  const [u, v] = [(-y / size) * radius, (x / size) * radius];
  const pen = new Pencil([p[0] - u, p[1] - v]);
  pen.straightTo([p[0] + u, p[1] + v]);
  return pen.d;
}

const paints = {
  gap: 'var(--cord-gap,#faf6ec)',
  line: 'var(--cord-line,#1d2233)',
  shade: 'var(--cord-shade,#000)',
  light: 'var(--cord-light,#fff)',
  ring: 'var(--ink,#1d2233)',
} as const;

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

/**
 * The part of a cord in or near the picture, at steps short enough to be sorted by depth and long enough to be
 * few; where the cord has gone out of the picture for good there is nothing to draw.
 */
function within({ path }: Strand, frame: StrandModel['frame']): Point[] {
  const margin = 1.5;
  const seen = (p: Point): boolean =>
    p[0] > frame.left - margin &&
    p[0] < frame.right + margin &&
    p[1] > frame.top - margin &&
    p[1] < frame.bottom + margin;
  const out: Point[] = [];
  let due = 0;
  for (const [i, b] of path.entries()) {
    const a = path[i - 1];
    if (!a) {
      out.push(b);
      continue;
    }
    const long = distance(a, b);
    const parts = Math.ceil(long / bit);
    due += long;
    if (parts === 1 && due < bit && i < path.length - 1) continue;
    due = 0;
    for (let k = 1; k <= parts; k++) out.push(k === parts ? b : between(a, b, k / parts));
  }
  const first = out.findIndex(seen);
  const last = out.findLastIndex(seen);
  return first < 0 ? [] : out.slice(Math.max(0, first - 1), last + 2);
}

/** Bends less than this, in d, are drawn straight. */
const straightness = 0.004;

/**
 * A smooth line through points in the picture (Catmull-Rom as Bézier pieces), whole or from one place along it to
 * another, parts of a piece included.
 */
function curvesThrough(points: Path): (from?: number, end?: number) => string {
  const at = (i: number): Point => points[Math.max(0, Math.min(points.length - 1, i))] as Point;
  const straight = points.slice(1).map((_, i) => {
    const [p0, p1, p2, p3] = [at(i - 1), at(i), at(i + 1), at(i + 2)];
    return offLine(p1, p0, p2) < straightness && offLine(p2, p1, p3) < straightness;
  });
  const tight = points.slice(1).map((_, i) => isTight(at(i - 1), at(i), at(i + 1), at(i + 2)));
  const bend = (i: number): Bend => {
    const [p0, p1, p2, p3] = [at(i - 1), at(i), at(i + 1), at(i + 2)];
    return [
      p1,
      [p1[0] + (p2[0] - p0[0]) / 6, p1[1] + (p2[1] - p0[1]) / 6],
      [p2[0] - (p3[0] - p1[0]) / 6, p2[1] - (p3[1] - p1[1]) / 6],
      p2,
    ];
  };
  return (from = 0, end = points.length - 1) => {
    if (points.length < 2) return '';
    const first = Math.floor(from);
    const last = Math.ceil(end) - 1;
    const piece = (i: number): Bend => partOf(bend(i), i === first ? from - i : 0, i === last ? end - i : 1);
    const pen = new Pencil(piece(first)[0]);
    let start = first;
    for (let i = first; i <= last; i++) {
      const [, a, b, to] = piece(i);
      if (straight[i]) {
        const passed = points.slice(start + 1, i + 2);
        const goesOn =
          i < last && straight[i + 1] && passed.every((p) => offLine(p, at(start), at(i + 2)) < 2 * straightness);
        if (goesOn) continue;
        pen.straightTo(to);
      } else if (tight[i]) pen.straightTo(to);
      else pen.curveTo(a, b, to);
      start = i + 1;
    }
    return pen.d;
  };
}

/** A piece shorter than this that turns by more than the angle below is tight: in d, and as a cosine. */
const tightLength = 0.2;
const tightTurn = 0.75;

/**
 * Whether the piece from b to c turns so sharply that it is drawn straight, with the round joins of the pen: a wide
 * line along so tight a curve would leave a hole on its inner side.
 */
function isTight(a: Point, b: Point, c: Point, d: Point): boolean {
  if (Math.hypot(c[0] - b[0], c[1] - b[1]) > tightLength) return false;
  const [px, py] = [c[0] - a[0], c[1] - a[1]];
  const [qx, qy] = [d[0] - b[0], d[1] - b[1]];
  return px * qx + py * qy < tightTurn * Math.hypot(px, py) * Math.hypot(qx, qy);
}

/** A Bézier piece: where it starts, its two handles, where it ends. */
type Bend = readonly [from: Flat, a: Flat, b: Flat, to: Flat];

/** The part of a Bézier piece from t to u, each from 0 to 1 (de Casteljau, twice). */
function partOf(bend: Bend, t: number, u: number): Bend {
  if (t === 0 && u === 1) return bend;
  const mix = (p: Flat, q: Flat, by: number): Flat => [p[0] + (q[0] - p[0]) * by, p[1] + (q[1] - p[1]) * by];
  const upTo = ([p, a, b, q]: Bend, by: number): Bend => {
    const [pa, ab, bq] = [mix(p, a, by), mix(a, b, by), mix(b, q, by)];
    const [l, r] = [mix(pa, ab, by), mix(ab, bq, by)];
    return [p, pa, l, mix(l, r, by)];
  };
  const [p, a, b, q] = upTo(bend, u);
  const [end, c, d, start] = upTo([q, b, a, p], u === 0 ? 1 : 1 - t / u);
  return [start, d, c, end];
}

/** A line drawn a hair longer at both ends: no seam shows where a stretch drawn again ends. */
function lengthened(points: Path, d: string): string {
  const hair = (end: Point | undefined, next: Point | undefined): Flat => {
    if (!end || !next) return [0, 0];
    const [x, y] = [end[0] - next[0], end[1] - next[1]];
    const size = Math.sqrt(x * x + y * y) || 1;
    return [(x / size) * 0.04, (y / size) * 0.04];
  };
  const first = points[0] as Point;
  const [x, y] = hair(first, points[1]);
  const [u, v] = hair(points.at(-1), points.at(-2));
  return `M${packed([hundredth(first[0] + x), hundredth(first[1] + y)])}L${d.slice(1)}l${packed([hundredth(u), hundredth(v)])}`;
}

/** How far p lies off the line from a to b in the picture. */
function offLine(p: Point, a: Point, b: Point): number {
  const [x, y] = [b[0] - a[0], b[1] - a[1]];
  const size = Math.sqrt(x * x + y * y);
  return size === 0 ? 0 : Math.abs((p[0] - a[0]) * y - (p[1] - a[1]) * x) / size;
}

type Flat = readonly [x: number, y: number, ...rest: number[]];

/** Writes path data in steps from the last point, to a hundredth of d, as short as they go. */
class Pencil {
  d: string;
  private x: number;
  private y: number;
  constructor([x, y]: Flat) {
    this.x = hundredth(x);
    this.y = hundredth(y);
    this.d = `M${packed([this.x, this.y])}`;
  }
  straightTo(to: Flat): void {
    this.write('l', [to]);
  }
  curveTo(a: Flat, b: Flat, to: Flat): void {
    this.write('c', [a, b, to]);
  }
  bendTo(a: Flat, to: Flat): void {
    this.write('q', [a, to]);
  }
  private write(letter: string, points: readonly Flat[]): void {
    const steps = points.flatMap(([x, y]) => [hundredth(x) - this.x, hundredth(y) - this.y]);
    this.x += steps.at(-2) ?? 0;
    this.y += steps.at(-1) ?? 0;
    this.d += letter + packed(steps);
  }
}

/** Hundredths as figures, with no sign or nought that is not needed. */
const packed = (hundredths: readonly number[]): string =>
  hundredths
    .map((value) => String(value / 100).replace(/^(-?)0\./, '$1.'))
    .reduce((text, next) => text + (text === '' || next.startsWith('-') ? '' : ' ') + next, '');

/**
 * The line moved sideways towards a direction in the picture: only across the cord, never along it, and the less the
 * more the cord points at the viewer, so that it does not curl where the cord turns into the depth.
 */
function offset(points: Path, x: number, y: number): Point[] {
  return points.map((p, i) => {
    const [a, b] = [points[i - 1] ?? p, points[i + 1] ?? p];
    const [tx, ty] = [b[0] - a[0], b[1] - a[1]];
    const size = Math.sqrt(tx * tx + ty * ty) || 1;
    const across = (x * -ty + y * tx) / (distance(a, b) || 1);
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
      const pen = new Pencil([x - sx, y - sy]);
      pen.bendTo([x - uy * 0.12 - ux * 0.1, y + ux * 0.12 - uy * 0.1], [x + sx, y + sy]);
      d += pen.d;
    }
    walked += long;
    return d;
  });
}

const hundredth = (value: number): number => Math.round(value * 100);
const figure = (value: number): string => packed([hundredth(value)]);
const escaped = (text: string): string =>
  text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;').replaceAll('"', '&quot;');
