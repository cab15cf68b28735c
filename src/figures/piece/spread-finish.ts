import type { Finish } from '../../solver/finish.ts';
import type { Fit, SideName } from '../../solver/piece.ts';
import { mirrored, type Path, type Point } from '../strand/point.ts';
import { columnMiddle, edgesOf } from './courses.ts';
import { type Finishing, gatheringShape, SQUARE, SQUARES, squareShape } from './finishing.ts';
import { type Part, type PieceShape, type Place, TOLD } from './model-types.ts';
import { MOST_STRANDS, ROW, standingPacked } from './packed.ts';
import { smooth } from './smooth.ts';

/** From the row to the first gathering knot, and from each to the next, in d. */
const FIRST = 2.6;
const APART = 4.3;
/** How far the bundles go down from their last gathering knot to the square knots: of half their distance, and bounds. */
const CONVERGE = { part: 0.6, least: 9, most: 17 };
/** How far both bundles hang side by side above the square knots. */
const TOGETHER = 2.6;
/** How far a tying string keeps from the middle of the core, beyond the outermost strand, and how far behind it passes. */
const BESIDE = 1.62;
const BEHIND = -1.9;
/** Below the last square knot, in d. */
const ENDS = 5.5;

export interface SpreadFinishInput {
  readonly fit: Fit;
  readonly leftBundle: number;
  readonly rightBundle: number;
  readonly finish: Pick<Finish, 'perSide' | 'middle'>;
  /** How many singles more than that the left side takes, and the right one less; none when left out. */
  readonly lopsided?: number | undefined;
  readonly startSide: SideName;
  /** How many instances of shapes the piece has before those of its finishing. */
  readonly from: number;
  /** Which singles of each side, counted from its bundle, are not drawn on their way: the first and the last. */
  readonly leftOut: readonly [first: number, last: number] | null;
}

/** The finishing of one row alone, and where there is something to say of it. */
export interface SpreadFinish extends Finishing {
  /** The middles of the two bundles while they are gathered, and of the two strings that tie. */
  readonly left: number;
  readonly right: number;
  readonly middle: number;
  /** The columns of the strings that tie. */
  readonly tying: readonly number[];
  /** The middle of a gathering knot, from 1. */
  readonly knotAt: (order: number) => number;
  /** The top of the first square knot. */
  readonly neck: number;
}

const at = (place: Place, [x, y, z]: Point): Point => [place.x + x, place.y + y, z];
const eased = (part: number): number => part * part * (3 - 2 * part);
const blend = (a: number, b: number, part: number): number => a + (b - a) * part;
const SAMPLES = [0, 0.06, 0.12, 0.19, 0.26, 0.34, 0.42, 0.5, 0.58, 0.66, 0.74, 0.81, 0.88, 0.94, 1];

/** The way of a bundle from its last gathering knot to the square knots, and how it leans on it. */
function waysTogether(from: number, to: number, top: number, neck: number) {
  const handle = (neck - top) * 0.56;
  return (t: number): { readonly x: number; readonly y: number; readonly across: readonly [number, number] } => {
    const u = 1 - t;
    const x = from * (u ** 3 + 3 * u * u * t) + to * (3 * u * t * t + t ** 3);
    const y = top * u ** 3 + 3 * u * u * t * (top + handle) + 3 * u * t * t * (neck - handle) + neck * t ** 3;
    const dx = 6 * u * t * (to - from);
    const dy = 3 * u * u * handle + 6 * u * t * (neck - top - 2 * handle) + 3 * t * t * handle;
    const long = Math.sqrt(dx * dx + dy * dy);
    return { x, y, across: [dy / long, -dx / long] };
  };
}

/**
 * What is done below the last row, spread apart so that each string can be followed: both bundles hang straight down
 * while the singles tie their knots round them, one below the other; then they come together, and the two strings in
 * the middle pass behind them and tie. Each string that has tied lies on the outer side of its bundle.
 *
 * Lengths in d; y is 0 at the top of the row.
 */
export function spreadFinish(input: SpreadFinishInput): SpreadFinish {
  const { fit, leftBundle, rightBundle, finish, startSide, from, leftOut } = input;
  const { width } = fit;
  const edges = edgesOf(fit, leftBundle, rightBundle);
  const shapes: Record<string, PieceShape> = {};
  const places: Place[] = [];
  const after = new Map<number, Part[]>();
  const lines = new Map<number, Point[]>();
  const line = (column: number): Point[] => {
    const known = lines.get(column) ?? [];
    lines.set(column, known);
    return known;
  };
  const flush = (column: number, what: 'core' | 'tassel' | 'way' = 'core'): Part[] => {
    const parts = after.get(column) ?? [];
    const path = lines.get(column) ?? [];
    if (path.length > 1) parts.push({ is: 'line', what, path: [...path] });
    lines.delete(column);
    after.set(column, parts);
    return parts;
  };
  const tie = (place: Place, column: number, lead: number): void => {
    const path = shapes[place.shape]?.leads[lead] ?? [];
    line(column).push(at(place, path[0] as Point));
    flush(column, 'way').push({ is: 'shape', place: from + places.indexOf(place), lead });
    line(column).push(at(place, path.at(-1) as Point));
  };
  const below = ROW;
  const few = width < 4;
  const taken = {
    left: few ? 0 : finish.perSide + (input.lopsided ?? 0),
    right: few ? 0 : finish.perSide - (input.lopsided ?? 0),
  };
  const most = Math.max(taken.left, taken.right);
  const top = (order: number): number => below + FIRST + (order - 1) * APART;

  /** Where strings of a bundle stand, counted from its inner side: so each stays where it is when one more joins it. */
  const standing = (side: SideName, strands: number): Path =>
    standingPacked(strands).map(([x, z]): Point => [side === 'left' ? -x : x, 0, z]);
  const knotShape = (side: SideName, strands: number, told = ''): string => {
    const count = Math.min(MOST_STRANDS, strands);
    const name = `gathering-${side} ${count}${told}`;
    const own = gatheringShape(side, count);
    shapes[name] ??= side === 'left' ? { ...own, bases: own.bases.map((base) => base.map(mirrored)) } : own;
    return name;
  };

  if (few) return tiedTogether();

  const firstMiddle = leftBundle + taken.left + 1;
  const lastMiddle = width - rightBundle - taken.right;
  const middle = (columnMiddle(firstMiddle) + columnMiddle(lastMiddle)) / 2;
  const gathered = most > 0 ? top(most) + ROW + 1.2 : below + 1.2;
  const half = (edges.right - edges.left) / 2;
  const neck = gathered + Math.max(CONVERGE.least, Math.min(CONVERGE.most, half * CONVERGE.part)) + TOGETHER;
  const loose = neck + SQUARES * SQUARE + 0.7;
  const bottom = loose + ENDS;

  // From the inner side outwards.
  const cores = (['left', 'right'] as const).map((side) => {
    const core =
      side === 'left'
        ? Array.from({ length: edges.leftStrands }, (_, i) => leftBundle - i)
        : Array.from({ length: edges.rightStrands }, (_, i) => width - rightBundle + 1 + i);
    for (let order = 1; order <= taken[side]; order += 1) {
      const single = side === 'left' ? leftBundle + order : width + 1 - rightBundle - order;
      if (leftOut && order >= leftOut[0] && order <= leftOut[1]) continue;
      const place = { shape: knotShape(side, core.length), x: edges[side], y: top(order), colour: null };
      places.push(place);
      const stands = standing(side, core.length);
      for (const [i, column] of core.entries())
        for (const part of [0.02, 0.98])
          line(column).push(at(place, [stands[i]?.[0] ?? 0, ROW * part, stands[i]?.[2] ?? 0]));
      const lead = shapes[place.shape]?.leads[0] ?? [];
      const [x, y, z] = at(place, lead[0] as Point);
      const own = columnMiddle(single);
      const hangs: Path = [
        [own, below + 0.4, 0],
        [own, below + 1.1, 0],
        [blend(own, x, 0.94), blend(below + 1.1, y, 0.9), z],
      ];
      line(single).push(...smooth([...hangs, [x, y, z]]));
      line(single).pop();
      tie(place, single, 0);
      core.push(single);
    }
    return core;
  });
  const [leftCore = [], rightCore = []] = cores;
  const laid = finish.middle === 3 ? [firstMiddle + 1] : [];
  const core = [...[...leftCore].reverse(), ...laid, ...rightCore];
  const together = standingPacked(core.length);
  const reach = together.at(-1)?.[0] ?? 0;
  const shape = `square-knot ${Math.min(MOST_STRANDS, core.length)}${TOLD}`;
  shapes[shape] = squareShape(Math.min(MOST_STRANDS, core.length));
  const squares = Array.from(
    { length: SQUARES },
    (_, i): Place => ({ shape, x: middle, y: neck + i * SQUARE, colour: null }),
  );
  places.push(...squares);
  const ways = {
    left: waysTogether(edges.left, middle, gathered, neck - TOGETHER),
    right: waysTogether(edges.right, middle, gathered, neck - TOGETHER),
  };

  /** From where they come together down to their ends. */
  const hangOn = (column: number): void => {
    const [x, z] = together[core.indexOf(column)] ?? [0, 0];
    line(column).push([middle + x, neck + 0.1, z], [middle + x, loose, z]);
    flush(column);
    line(column).push([middle + x, loose, z], [middle + x * 1.1, loose + 1.5, z], [middle + x * 1.7, bottom, z]);
    flush(column, 'tassel');
  };
  for (const [i, side] of (['left', 'right'] as const).entries()) {
    const own = cores[i] ?? [];
    const stands = standing(side, own.length);
    for (const [order, column] of own.entries()) {
      const [x, , z] = stands[order] ?? [0, 0, 0];
      const [toX, toZ] = together[core.indexOf(column)] ?? [0, 0];
      if (line(column).length === 0) line(column).push([edges[side] + x, below + 0.4, z]);
      for (const t of SAMPLES) {
        const way = ways[side](t);
        const off = blend(x, toX, eased(t));
        line(column).push([way.x + off * way.across[0], way.y + off * way.across[1], blend(z, toZ, t)]);
      }
      hangOn(column);
    }
  }
  for (const column of laid) {
    const [x, z] = together[core.indexOf(column)] ?? [0, 0];
    const out = startSide === 'left' ? -1 : 1;
    const own = (cores[startSide === 'left' ? 0 : 1] ?? []).length;
    const beside = (standingPacked(own).at(-1)?.[0] ?? 0) + 1;
    const along = [0.72, 0.82, 0.91].map((t): Point => {
      const way = ways[startSide](t);
      const off = -out * blend(beside, Math.abs(x) + 0.3, eased((t - 0.72) / 0.28));
      return [way.x + off * way.across[0], way.y + off * way.across[1], 0];
    });
    const hangs: Path = [[columnMiddle(column), below + 0.4, z], [columnMiddle(column), gathered - 1, 0], ...along];
    line(column).push(...smooth([...hangs, [middle + x, neck - TOGETHER, z]]));
    hangOn(column);
  }
  const tying = [firstMiddle, lastMiddle];
  for (const [lead, column] of tying.entries()) {
    const side = lead === 0 ? 'left' : 'right';
    const out = lead === 0 ? -1 : 1;
    const strands = (cores[lead] ?? []).length;
    const beside = (standingPacked(strands).at(-1)?.[0] ?? 0) + BESIDE;
    const along = (t: number, off: number, z: number): Point => {
      const way = ways[side](t);
      // On the inner side it keeps to its own half.
      const x = out * Math.max(0.6, out * (way.x + out * off * way.across[0] - middle));
      return [middle + x, way.y + out * off * way.across[1], z];
    };
    const [start] = shapes[shape].leads[lead] ?? [];
    const [x, y, z] = at(squares[0] as Place, start as Point);
    const own = columnMiddle(column);
    line(column).push(
      ...smooth([
        [own, below + 0.4, -0.9],
        [own, below + 0.8, -0.9],
        [own, Math.max(below + 0.8, gathered - 4), -0.9],
        [own, gathered + 1, -1.2],
        along(0.6, -beside - 0.8, BEHIND),
        along(0.56, -beside * 0.5, BEHIND),
        along(0.52, beside * 0.5, BEHIND),
        along(0.52, beside + 1.2, BEHIND),
        along(0.72, beside + 1.6, -1.4),
        along(0.9, beside + 0.6, -1),
        [x, y - 1.8, z],
        [x, y, z],
      ]),
    );
    line(column).pop();
    for (const place of squares) tie(place, column, lead);
    const [below0] = line(column);
    const foot: Point = [middle + out * (reach + 4.4), bottom - 0.6, 0.3];
    lines.set(column, [
      ...smooth([
        below0 as Point,
        [middle + out * (reach + 2.6), loose + 0.2, 0.2],
        [middle + out * (reach + 3.6), loose + 2.4, 0.3],
        foot,
      ]),
    ]);
    flush(column, 'tassel');
  }
  return {
    shapes,
    places,
    after,
    left: edges.left,
    right: edges.right,
    middle,
    tying,
    neck,
    knotAt: (order) => top(order) + ROW / 2,
    laid: (exit) => {
      const side = exit[0] < middle ? 'left' : 'right';
      const down = SAMPLES.map((t): Point => {
        const way = ways[side](t);
        return [way.x, way.y, -0.9];
      });
      return [
        exit,
        [blend(exit[0], edges[side], 0.5), below + 0.7, -0.9],
        [edges[side], below + FIRST, -0.9],
        ...down,
        [middle, loose, -0.9],
        [middle, bottom - 1, -0.9],
      ];
    },
    bottom,
  };

  /** Too few strings for a core and two that tie round it: the last ties a knot round the others. */
  function tiedTogether(): SpreadFinish {
    const others = Array.from({ length: Math.max(1, width - 1) }, (_, i) => i + 1);
    if (fit.carrySide === 'left') others.unshift(0);
    const middle = (columnMiddle(1) + columnMiddle(Math.max(1, width - 1))) / 2;
    const place = { shape: knotShape('left', others.length, TOLD), x: middle, y: below + 5, colour: null };
    places.push(place);
    const stands = standingPacked(others.length);
    const bottom = place.y + ROW + ENDS;
    for (const [i, column] of others.entries()) {
      const [x, z] = stands[i] ?? [0, 0];
      const own = column === 0 ? edges.left : columnMiddle(column);
      line(column).push(
        ...smooth([
          [own, below + 0.4, z],
          [own, below + 1.4, z],
          [middle + x, place.y - 1.2, z],
          [middle + x, place.y, z],
        ]),
        [middle + x, bottom, z],
      );
      flush(column);
    }
    line(width).push([columnMiddle(width), below + 0.4, 0], [columnMiddle(width), below + 1.8, 0]);
    tie(place, width, 0);
    const [x, , z] = line(width).at(-1) ?? [middle, 0, 0];
    line(width).push([x, bottom, z]);
    flush(width);
    return {
      shapes,
      places,
      after,
      left: edges.left,
      right: edges.right,
      middle: (width * (columnMiddle(2) - columnMiddle(1))) / 2,
      tying: [width],
      neck: place.y,
      knotAt: () => place.y + ROW / 2,
      laid: (exit) => [exit, [middle, place.y - 1, -0.9], [middle, bottom - 1, -0.9]],
      bottom,
    };
  }
}
