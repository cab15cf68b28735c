import type { Path } from '../../src/figures/strand/index.ts';
import { type Matrix, matrixOf, type Tag, tagsById, times, treeOf } from './piece/pieces.ts';

/** A cord in space, in its own diameters: x across, y down, z towards the viewer. */
export interface Cord {
  readonly id: string;
  readonly path: Path;
}

/** What a picture strokes as one cord, in diameters of that cord; strokes come in the order in which they are painted. */
export interface Stroke {
  readonly path: readonly Flat[];
  /** What the drawing calls it, and which of its symbols it is a part of, used at which place. */
  readonly is: readonly string[];
  readonly symbol: string;
  readonly at: Flat;
}

type Flat = readonly [x: number, y: number, ...rest: number[]];

/** One crossing of two cords: where it is seen, and who lies over whom. */
export interface Meeting {
  readonly over: Place;
  readonly under: Place;
  readonly x: number;
  readonly y: number;
  /** How near to the viewer the one is that lies over, and how far behind it the other, from middle to middle, in d. */
  readonly z: number;
  readonly gap: number;
}
interface Place {
  readonly cord: string;
  /** How far along it, in d. */
  readonly at: number;
}

/** Cords that part by less than this, as the sine of the angle between them, run alongside each other and do not cross. */
const ALONGSIDE = 0.3;
/** Parts of one cord nearer to each other along it than this, in d, are one bend. */
const BEND = 1.2;
/** A cord covers what is so near to its middle, in d. */
const COVERS = 0.4;
/** Cords whose middles are nearer than this in space, in d, press against each other, as cords of the strand model never do: neither is over. */
const NEAR = 0.8;
/** Where a cord ends it may touch another, or the cord that it is a part of. */
const END = 0.3;
/** How far a stroke may lie off the cord that it draws, in d: curves are drawn with fewer points than they have. */
const OFF = 0.34;
/** Strokes and cords are followed in steps of this length, in d. */
const PIECE = 0.2;
/** The round end of a stroke covers so much beyond it, in d. */
const ROUND = 0.15;

interface Segment<P> {
  readonly owner: P;
  readonly a: readonly number[];
  readonly b: readonly number[];
  /** How far along its cord it begins, in d, and how long it is. */
  readonly at: number;
  readonly long: number;
}

/** Segments by the square of the picture that they lie in. */
class Squares<P> {
  private readonly squares = new Map<string, Segment<P>[]>();
  private readonly reach: number;
  constructor(reach: number) {
    this.reach = reach;
  }
  private *namesOf({ a, b }: Pick<Segment<P>, 'a' | 'b'>): Generator<string> {
    const low = (k: number): number => Math.floor((Math.min(a[k] ?? 0, b[k] ?? 0) - this.reach) / 2);
    const high = (k: number): number => Math.floor((Math.max(a[k] ?? 0, b[k] ?? 0) + this.reach) / 2);
    for (let x = low(0); x <= high(0); x += 1) for (let y = low(1); y <= high(1); y += 1) yield `${x} ${y}`;
  }
  add(segment: Segment<P>): void {
    for (const name of this.namesOf(segment)) {
      const known = this.squares.get(name);
      if (known) known.push(segment);
      else this.squares.set(name, [segment]);
    }
  }
  at(x: number, y: number): readonly Segment<P>[] {
    return this.squares.get(`${Math.floor(x / 2)} ${Math.floor(y / 2)}`) ?? [];
  }
  *pairs(): Generator<[Segment<P>, Segment<P>]> {
    for (const all of this.squares.values())
      for (const [i, one] of all.entries())
        for (let j = i + 1; j < all.length; j += 1) yield [one, all[j] as Segment<P>];
  }
}

function* segmentsOf<P>(owner: P, path: readonly (readonly number[])[], longest: number): Generator<Segment<P>> {
  let at = 0;
  for (const [i, b] of path.entries()) {
    const a = path[i - 1];
    if (!a) continue;
    const long = Math.hypot(...b.map((part, k) => part - (a[k] ?? 0)));
    if (long === 0) continue;
    const parts = Math.ceil(long / longest);
    const mix = (t: number): number[] => b.map((part, k) => (a[k] ?? 0) + (part - (a[k] ?? 0)) * t);
    for (let k = 0; k < parts; k += 1)
      yield { owner, a: mix(k / parts), b: mix((k + 1) / parts), at: at + (long * k) / parts, long: long / parts };
    at += long;
  }
}

const across = ({ a, b }: Segment<unknown>): [number, number] => [(b[0] ?? 0) - (a[0] ?? 0), (b[1] ?? 0) - (a[1] ?? 0)];
/** The sine of the angle between two segments in the picture. */
function sine(p: Segment<unknown>, q: Segment<unknown>): number {
  const [px, py] = across(p);
  const [qx, qy] = across(q);
  return Math.abs(px * qy - py * qx) / (Math.hypot(px, py) * Math.hypot(qx, qy) || 1);
}

/**
 * Every crossing of the cords that can be seen as one, each once.
 *
 * @param near cords that come nearer to each other than this in space, in d, are passed over
 */
export function meetingsOf(cords: readonly Cord[], near = NEAR): Meeting[] {
  const squares = new Squares<string>(0);
  const ends = new Map<string, number>();
  for (const { id, path } of cords)
    for (const segment of segmentsOf(id, path, 1)) {
      squares.add(segment);
      ends.set(id, segment.at + segment.long);
    }
  const isEnd = ({ cord, at }: Place): boolean => at < END || at > (ends.get(cord) ?? 0) - END;
  const met = new Map<string, Meeting>();
  const z = ({ a, b }: Segment<string>, part: number): number => (a[2] ?? 0) + ((b[2] ?? 0) - (a[2] ?? 0)) * part;
  for (const [p, q] of squares.pairs()) {
    if (p.owner === q.owner && Math.abs(p.at - q.at) < BEND) continue;
    const [px, py] = across(p);
    const [qx, qy] = across(q);
    const cross = px * qy - py * qx;
    if (cross === 0) continue;
    const [dx, dy] = [(q.a[0] ?? 0) - (p.a[0] ?? 0), (q.a[1] ?? 0) - (p.a[1] ?? 0)];
    const [t, u] = [(dx * qy - dy * qx) / cross, (dx * py - dy * px) / cross];
    if (t < 0 || t >= 1 || u < 0 || u >= 1 || sine(p, q) < ALONGSIDE) continue;
    const [one, other] = [
      { cord: p.owner, at: p.at + p.long * t },
      { cord: q.owner, at: q.at + q.long * u },
    ];
    if (isEnd(one) || isEnd(other) || Math.abs(z(p, t) - z(q, u)) < near) continue;
    const [over, under] = z(p, t) > z(q, u) ? [one, other] : [other, one];
    met.set(`${over.cord} ${over.at.toFixed(3)} ${under.cord} ${under.at.toFixed(3)}`, {
      over,
      under,
      x: (p.a[0] ?? 0) + px * t,
      y: (p.a[1] ?? 0) + py * t,
      z: Math.max(z(p, t), z(q, u)),
      gap: Math.abs(z(p, t) - z(q, u)),
    });
  }
  return [...met.values()];
}

/** The crossings of which no part is hidden by a third cord: none that is nearer to the viewer covers them. */
export function inSight(cords: readonly Cord[], all: readonly Meeting[]): Meeting[] {
  const squares = new Squares<string>(COVERS);
  for (const { id, path } of cords) for (const segment of segmentsOf(id, path, 0.5)) squares.add(segment);
  return all.filter(({ over, under, x, y, z }) =>
    squares.at(x, y).every((segment) => {
      for (const own of [over, under])
        if (segment.owner === own.cord && Math.abs(segment.at - own.at) < BEND) return true;
      const [dx, dy] = across(segment);
      const flat = dx * dx + dy * dy || 1;
      const t = Math.max(0, Math.min(1, ((x - (segment.a[0] ?? 0)) * dx + (y - (segment.a[1] ?? 0)) * dy) / flat));
      const away = Math.hypot((segment.a[0] ?? 0) + dx * t - x, (segment.a[1] ?? 0) + dy * t - y);
      return away > COVERS || (segment.a[2] ?? 0) + ((segment.b[2] ?? 0) - (segment.a[2] ?? 0)) * t < z;
    }),
  );
}

/** The same crossing with the other cord on top. */
export const turnedOver = ({ over, under, ...rest }: Meeting): Meeting => ({ over: under, under: over, ...rest });

/** A line at equal steps, with what it takes to ask for the point so many steps on. */
function stepsOf(path: readonly (readonly number[])[], step: number): Spot[] {
  const spots: Spot[] = [];
  let walked = 0;
  for (const [i, b] of path.entries()) {
    const a = path[i - 1];
    if (!a) {
      spots.push([b[0] ?? 0, b[1] ?? 0]);
      continue;
    }
    const long = Math.hypot(...b.map((part, k) => part - (a[k] ?? 0)));
    while (long > 0 && spots.length * step <= walked + long) {
      const t = (spots.length * step - walked) / long;
      spots.push([(a[0] ?? 0) + ((b[0] ?? 0) - (a[0] ?? 0)) * t, (a[1] ?? 0) + ((b[1] ?? 0) - (a[1] ?? 0)) * t]);
    }
    walked += long;
  }
  return spots;
}
type Spot = readonly [x: number, y: number];

/** What it costs to take a stroke for the continuation of another part of a cord, or of another cord, in d. */
const JUMP = 3;

/** What a step of a stroke may be of a cord, and what it costs to take it and all before it so. */
interface Guess {
  readonly cord: number;
  readonly step: number;
  readonly cost: number;
  readonly before: Guess | null;
}

/** A picture read back: where along which cord each of its strokes lies, and which are drawn over which. */
export class ReadPicture {
  private readonly cords: { readonly id: string; readonly spots: readonly Spot[] }[];
  /** Which spots of which cords lie in a square of the picture. */
  private readonly squares = new Map<string, [cord: number, step: number][]>();
  /** For each cord and each step along it, the order of the last stroke there. */
  private readonly drawn = new Map<string, number[]>();
  private order = 0;

  private readonly strokes: readonly Stroke[];

  constructor(cords: readonly Cord[], strokes: readonly Stroke[]) {
    this.strokes = strokes;
    this.cords = cords.map(({ id, path }) => ({ id, spots: stepsOf(path, PIECE) }));
    for (const [cord, { id, spots }] of this.cords.entries()) {
      this.drawn.set(id, []);
      for (const [step, [x, y]] of spots.entries()) {
        const name = `${Math.round(x)} ${Math.round(y)}`;
        const known = this.squares.get(name);
        if (known) known.push([cord, step]);
        else this.squares.set(name, [[cord, step]]);
      }
    }
    for (const stroke of strokes) this.paint(stroke);
  }

  /**
   * Takes up one more stroke, over all others. A stroke follows a cord step by step: of all that it might be of, that is
   * taken which it lies nearest to on its whole way with the fewest jumps (Viterbi).
   */
  private paint({ path }: Pick<Stroke, 'path'>): [known: number[], step: number, order: number][] {
    const undo: [number[], number, number][] = [];
    this.order += 1;
    let guesses: readonly Guess[] = [];
    const spots = stepsOf(path, PIECE);
    for (const [x, y] of spots) {
      const next: Guess[] = [];
      const cheapest = guesses.reduce<Guess | null>((best, one) => (best && best.cost <= one.cost ? best : one), null);
      for (let sx = Math.floor(x); sx <= Math.ceil(x); sx += 1)
        for (let sy = Math.floor(y); sy <= Math.ceil(y); sy += 1)
          for (const [cord, step] of this.squares.get(`${sx} ${sy}`) ?? []) {
            const [u = 0, v = 0] = this.cords[cord]?.spots[step] ?? [];
            const off = Math.hypot(u - x, v - y);
            if (off > OFF) continue;
            let [before, cost] = [cheapest, (cheapest?.cost ?? 0) + (cheapest ? JUMP : 0)];
            for (const one of guesses)
              if (one.cord === cord && Math.abs(one.step - step) <= 3 && one.cost < cost)
                [before, cost] = [one, one.cost];
            next.push({ cord, step, cost: cost + off, before });
          }
      if (next.length > 0) guesses = next;
    }
    let guess = guesses.reduce<Guess | null>((best, one) => (best && best.cost <= one.cost ? best : one), null);
    for (; guess; guess = guess.before) {
      const known = this.drawn.get(this.cords[guess.cord]?.id ?? '');
      if (!known) continue;
      undo.push([known, guess.step, known[guess.step] ?? 0]);
      known[guess.step] = this.order;
    }
    return undo;
  }

  /**
   * Whether the picture would still show a crossing if the stroke that draws the cord beneath were painted once more, over
   * all others. Where it is not drawn at all, since more lies over it, there is nothing to be painted again.
   */
  showsWithUnderOnTop(meeting: Meeting): boolean {
    const again = this.strokes[this.lastAt(meeting.under) - 1];
    if (!again) return false;
    const undo = this.paint(again);
    const shown = this.shows(meeting);
    for (const [known, step, order] of undo.reverse()) known[step] = order;
    return shown;
  }

  /** The last stroke that draws a cord at a place, in the order of painting; 0 where it is not drawn. */
  lastAt({ cord, at }: Place): number {
    const known = this.drawn.get(cord) ?? [];
    const step = Math.round(at / PIECE);
    return Math.max(0, known[step - 1] ?? 0, known[step] ?? 0, known[step + 1] ?? 0);
  }

  /** Whether the picture shows a crossing as it is: who lies over is drawn, and drawn later than who lies under. */
  shows({ over, under }: Meeting): boolean {
    return this.lastAt(over) > this.lastAt(under);
  }
}

/** A stroke as far as its round ends reach; those of a knot alone are cut off straight. */
function rounded(line: readonly Flat[], { classes, parent }: Look): Flat[] {
  const beyond = (end: Flat | undefined, next: Flat | undefined): Flat[] => {
    if (!end || !next) return [];
    const [x, y] = [end[0] - next[0], end[1] - next[1]];
    const long = Math.hypot(x, y) || 1;
    return [[end[0] + (x / long) * ROUND, end[1] + (y / long) * ROUND]];
  };
  if (!classes.includes('pc-b') && !parent.includes('f-cord')) return [...line];
  return [...beyond(line[0], line[1]), ...line, ...beyond(line.at(-1), line.at(-2))];
}

/** What of a stroke's look its elements hand down to it. */
interface Look {
  readonly stroke: string;
  readonly width: number;
  readonly classes: readonly string[];
  readonly parent: readonly string[];
  readonly opacity: string;
  readonly symbol: string;
  readonly at: Matrix;
}

/** Whether a path is the body of a cord or of metal, and not its edge, its light or a mark of its twist. */
function isCord({ stroke, width, classes, parent, opacity }: Look): boolean {
  if (classes.includes('pc-b') || parent.includes('f-cord')) return true;
  // The metal of a whole piece; and the cords of a knot alone, by their outlines.
  return stroke === 'var(--m)' || (opacity === '' && stroke.startsWith('var(--cord-line') && width >= 1);
}

/** The cords that an SVG strokes, in the order of painting, in d. */
export function strokesOf(svg: string, perDiameter: number): Stroke[] {
  const root = treeOf(svg);
  const ids = tagsById(root);
  const strokes: Stroke[] = [];
  const walk = (tag: Tag, before: Matrix, above: Look): void => {
    if (tag.name === 'defs' || tag.name === 'pattern') return;
    const matrix = times(before, matrixOf(tag.at['transform']));
    const look: Look = {
      stroke: tag.at['stroke'] ?? above.stroke,
      width: Number(tag.at['stroke-width'] ?? above.width),
      opacity: tag.at['stroke-opacity'] ?? above.opacity,
      classes: (tag.at['class'] ?? '').split(' '),
      parent: above.classes,
      symbol: above.symbol,
      at: above.at,
    };
    if (tag.name === 'use') {
      const target = ids.get((tag.at['href'] ?? '').slice(1));
      // What lies over a cord in its own course is not the cord again.
      if (!target || look.parent.includes('f-cord')) return;
      const placed = times(matrix, [1, 0, 0, 1, Number(tag.at['x'] ?? 0), Number(tag.at['y'] ?? 0)]);
      walk(target, placed, above.symbol ? look : { ...look, symbol: tag.at['href'] ?? '', at: placed });
      return;
    }
    if (tag.name === 'path' && isCord(look))
      for (const line of linesOf(tag.at['d'] ?? '')) {
        const placed = line.map((point) => placedAt(matrix, point, perDiameter));
        const at = placedAt(look.at, [0, 0], perDiameter);
        strokes.push({ path: rounded(placed, look), is: [...look.classes, ...look.parent], symbol: look.symbol, at });
      }
    for (const inner of tag.inside) walk(inner, matrix, look);
  };
  walk(root, [1, 0, 0, 1, 0, 0], {
    stroke: '',
    width: 0,
    opacity: '',
    classes: [],
    parent: [],
    symbol: '',
    at: [1, 0, 0, 1, 0, 0],
  });
  return strokes;
}

const placedAt = (m: Matrix, [x, y]: Flat, per: number): Flat => [
  (m[0] * x + m[2] * y + m[4]) / per,
  (m[1] * x + m[3] * y + m[5]) / per,
];

/** How many figures each command of path data takes. */
const TAKES: Readonly<Record<string, number>> = { m: 2, l: 2, h: 1, v: 1, q: 4, c: 6, z: 0 };
const STEPS = [0.125, 0.25, 0.375, 0.5, 0.625, 0.75, 0.875, 1];

/** The lines of path data, curves in short steps. */
function linesOf(d: string): Flat[][] {
  const lines: Flat[][] = [];
  let [x, y] = [0, 0];
  const to = (point: Flat): void => {
    lines.at(-1)?.push(point);
    [x, y] = point;
  };
  for (const [, letter = '', raw = ''] of d.matchAll(/([a-zA-Z])([^a-zA-Z]*)/g)) {
    const figures = (raw.match(/-?(?:\d+\.?\d*|\.\d+)/g) ?? []).map(Number);
    const kind = letter.toLowerCase();
    const takes = TAKES[kind];
    if (takes === undefined) throw new Error(`no reader for the command ${letter} of a path`);
    for (let i = 0; i < Math.max(1, figures.length); i += Math.max(1, takes)) {
      const some = figures.slice(i, i + takes);
      const [ox, oy] = letter === kind ? [x, y] : [0, 0];
      const at = (k: number): Flat => [(some[k] ?? 0) + ox, (some[k + 1] ?? 0) + oy];
      if (kind === 'm') {
        if (i === 0) lines.push([]);
        to(at(0));
      } else if (kind === 'l') to(at(0));
      else if (kind === 'h') to([(some[0] ?? 0) + ox, y]);
      else if (kind === 'v') to([x, (some[0] ?? 0) + oy]);
      else if (kind === 'q' || kind === 'c') {
        const corners = [[x, y] as Flat, ...Array.from({ length: takes / 2 }, (_, k) => at(2 * k))];
        for (const t of STEPS) to(onCurve(corners, t));
      }
    }
  }
  return lines;
}

/** A point of a Bézier curve (de Casteljau). */
const onCurve = (corners: readonly Flat[], t: number): Flat =>
  corners.length === 1
    ? (corners[0] as Flat)
    : onCurve(
        corners.slice(1).map(([x, y], i): Flat => {
          const [u, v] = corners[i] as Flat;
          return [u + (x - u) * t, v + (y - v) * t];
        }),
        t,
      );
