import type { Knot } from '../../solver/piece.ts';
import { spreadOf, standing, widen } from '../strand/bundle.ts';
import { distance, mirrored, type Path, type Point } from '../strand/point.ts';
import * as kept from './kept.ts';

/** From one column to the next and from one row to the next, in the cord's diameter d as the piece is drawn. */
export const COLUMN = 2.8;
export const ROW = 2.94;

/**
 * How a drawn-up knot of the strand model is packed between its neighbours: drawn together across and along the base,
 * and the strokes leaned over. The map is affine, so no cord passes any other than it did.
 */
const ACROSS = 0.86;
const ALONG = 0.66;
const LEAN = 0.3;
/** The middle of a drawn-up knot's strokes down its base, in d of the strand model. */
const MIDDLE = 1.85;

/** How far down its row a leading string goes from one knot to the next, and how far behind the bases' middle. */
const PASSES_AT = ROW * 0.34;
const PASSES_BEHIND = -0.3;
/** How far before the boundary one knot takes the string over from the other: there it lies under the next one's turns. */
const BEFORE = 0.4;
/** The strands that any knot is drawn round at most; a thicker core is drawn as thick as this. */
export const MOST_STRANDS = 8;

/** `ordinary` knots go on to the next column; those that `stop` leave the string where the knot lets go of it. */
export type ShapeKind = Knot | 'forward-stop' | 'backward-stop';

/** One drawn-up knot, from the boundary of its column to where its string leaves it; x from the base's middle, y from its row. */
export interface Shape {
  readonly kind: ShapeKind;
  readonly strands: number;
  /** The leading string. */
  readonly lead: Path;
  /** The strings under it, as far as the knot covers them. */
  readonly bases: readonly Path[];
}

/** How far the boundary of its column lies from the middle of so many strands. */
export const halfColumn = (strands: number): number =>
  COLUMN / 2 + spreadOf(Math.min(MOST_STRANDS, strands)).x * ACROSS;

/** Where the strings of a bundle stand, packed: from its middle, left to right. */
export function standingPacked(strands: number): [x: number, z: number][] {
  const drawn = Math.min(MOST_STRANDS, strands);
  const reach = spreadOf(drawn).x * ACROSS;
  if (strands <= MOST_STRANDS) return standing(strands).map(([x, z]) => [x * ACROSS, z]);
  return Array.from({ length: strands }, (_, i) => [
    reach * ((2 * i) / (strands - 1) - 1),
    i % 2 === 0 ? -Math.sqrt(3) / 4 : Math.sqrt(3) / 4,
  ]);
}

export const pack = ([x, y, z]: Point, lean = 0): Point => [x * ACROSS, ROW / 2 + (y - MIDDLE) * ALONG + x * lean, z];

/** The part of a line between the first point right of `from` and the last one for which `inside` holds. */
function between(line: Path, from: number, inside: (point: Point) => boolean): Path {
  return line.slice(
    line.findIndex(([x]) => x > from),
    line.findLastIndex((point) => inside(point)) + 1,
  );
}

/** Cords that stay in their column: how far of a row the knot covers. */
const covered = (strands: number): Path[] =>
  standingPacked(strands).map(([x, z]) => [
    [x, ROW * 0.12, z],
    [x, ROW * 0.88, z],
  ]);

function rightward(kind: 'forward' | 'forward-stop' | 'forward-backward', strands: number): Shape {
  const spread = spreadOf(strands);
  const out = halfColumn(strands);
  const bases = covered(strands);
  if (kind === 'forward-backward') {
    const knot = widen(kept.forwardBackward, spread);
    const within = between(knot, -1.35 - spread.x, ([x]) => x > -1.35 - spread.x).map((point) => pack(point));
    const last = within.at(-1) as Point;
    return {
      kind,
      strands,
      // The end lies a little beyond the boundary: there it has passed under the upright stroke.
      lead: [[-out - BEFORE, PASSES_AT, PASSES_BEHIND], ...within, [-out - BEFORE, last[1] + 0.1, last[2]]],
      bases,
    };
  }
  const lean = LEAN / (1 + 2 * spread.x);
  const knot = widen(kept.forward, spread);
  const within = between(knot, -1.6 - spread.x, ([x]) => x < 0.95 + spread.x).map((point) => pack(point, lean));
  const [, low] = within.at(-1) as Point;
  const end: Path =
    kind === 'forward'
      ? [
          [out - BEFORE + 0.1, low - 0.15, 0.1],
          [out - BEFORE, low - 0.5, PASSES_BEHIND],
          [out - BEFORE, PASSES_AT, PASSES_BEHIND],
        ]
      : [[out, low + 0.1, 0.3]];
  return { kind, strands, lead: [[-out - BEFORE, PASSES_AT, PASSES_BEHIND], ...within, ...end], bases };
}

const otherWay: Partial<Record<ShapeKind, 'forward' | 'forward-stop' | 'forward-backward'>> = {
  backward: 'forward',
  'backward-stop': 'forward-stop',
  'backward-forward': 'forward-backward',
};

const made = new Map<string, Shape>();

/** A drawn-up knot of the strand model round so many strands, packed as it stands in a piece. */
export function shapeOf(kind: ShapeKind, strands: number): Shape {
  const count = Math.max(1, Math.min(MOST_STRANDS, strands));
  const key = `${kind} ${count}`;
  const known = made.get(key);
  if (known) return known;
  const other = otherWay[kind];
  const own = rightward(other ?? (kind as 'forward'), count);
  const shape: Shape = other
    ? {
        kind,
        strands: count,
        lead: own.lead.map(mirrored),
        bases: own.bases.map((base) => base.map(mirrored)).reverse(),
      }
    : own;
  made.set(key, shape);
  return shape;
}

/** A line as equal steps of about `step`, ends included. */
export function evenSteps(line: Path, step: number): Point[] {
  const points: Point[] = [];
  let whole = 0;
  for (let i = 1; i < line.length; i += 1) whole += distance(line[i - 1] as Point, line[i] as Point);
  const pieces = Math.max(1, Math.round(whole / step));
  const each = whole / pieces;
  let walked = 0;
  points.push(line[0] as Point);
  for (let i = 1; i < line.length; i += 1) {
    const [a, b] = [line[i - 1] as Point, line[i] as Point];
    const long = distance(a, b);
    while (points.length < pieces && points.length * each <= walked + long) {
      const t = long === 0 ? 0 : (points.length * each - walked) / long;
      points.push([a[0] + (b[0] - a[0]) * t, a[1] + (b[1] - a[1]) * t, a[2] + (b[2] - a[2]) * t]);
    }
    walked += long;
  }
  points.push(line.at(-1) as Point);
  return points;
}
