import { finishSteps } from '../../solver/finish.ts';
import type { Bundles, Fit, SideName } from '../../solver/piece.ts';
import { spreadOf, widen } from '../strand/bundle.ts';
import { mirrored, type Path, type Point } from '../strand/point.ts';
import { columnMiddle, edgesOf } from './courses.ts';
import * as kept from './kept.ts';
import type { Ending, Part, PieceShape, Place } from './model-types.ts';
import { COLUMN, MOST_STRANDS, pack, ROW, standingPacked } from './packed.ts';
import { smooth } from './smooth.ts';

/** How far below the last row the first gathering knot is. */
const TOP = 1.9;
/** How far the core goes down from one gathering knot to the next, from one square knot to the next, and below them. */
const DROP = 1.7;
export const SQUARE = 4.7;
/** How far behind the middle of its bundle a leading string is laid, in d. */
const LAID = -0.9;
export const SQUARES = 2;
const TASSEL = 12;

/** What becomes of the strings below the last row. */
export interface Finishing {
  readonly shapes: Record<string, PieceShape>;
  readonly places: readonly Place[];
  /** For each base string by its column (0 and width + 1: a carried end) what it does after its course. */
  readonly after: ReadonlyMap<number, readonly Part[]>;
  /** The way of a leading string laid into a bundle, from where it leaves its last knot. */
  readonly laid: (exit: Point, order: number) => Path;
  readonly bottom: number;
}

const inPlace = ([x, y, z]: Point, place: Place): Point => {
  const [cosine, sine] = place.turn ?? [1, 0];
  return [place.x + x * cosine - y * sine, place.y + x * sine + y * cosine, z];
};

export function gatheringShape(side: SideName, strands: number): PieceShape {
  const spread = spreadOf(strands);
  const lead = widen(kept.gatheringRight.slice(kept.gatheringRight.findIndex(([, y]) => y > -1.4)), spread)
    .filter(([, y]) => y < 5.2)
    .map((point) => pack(point));
  const bases = standingPacked(strands).map(
    ([x, z]): Path => [
      [x, ROW * 0.05, z],
      [x, ROW * 0.95, z],
    ],
  );
  return { leads: [side === 'left' ? lead.map(mirrored) : lead], bases };
}

export function squareShape(strands: number): PieceShape {
  const spread = spreadOf(strands);
  const within = (line: Path): Path =>
    widen(
      line.filter(([x, y]) => y > -0.5 && (y < 4 || Math.abs(x) < 2.2)),
      spread,
    ).map((point) => pack(point));
  return {
    leads: [within(kept.squareLeft), within(kept.squareRight)],
    bases: standingPacked(strands).map(
      ([x, z]): Path => [
        [x, 0, z],
        [x, ROW + 1.4, z],
      ],
    ),
  };
}

interface FinishingInput {
  readonly fit: Fit;
  readonly bundles: Bundles;
  readonly startSide: SideName;
  /** How many instances of shapes the piece has before those of its finishing. */
  readonly from: number;
  readonly ending: Ending;
}

/**
 * Gathering, square knots and the trimmed tassel of a piece; with the ending `gathered` all strings hang on below their
 * bundles. Null where the solver knows no finish for it.
 */
export function finishingOf({ fit, bundles, startSide, from, ending }: FinishingInput): Finishing | null {
  const finish = finishSteps({ fit, bundles, startSide });
  if (!finish.ok) return null;
  const { width } = fit;
  const height = bundles.left.length;
  const left = bundles.left.at(-1) ?? 1;
  const right = bundles.right.at(-1) ?? 1;
  const edges = edgesOf(fit, left, right);
  const below = height * ROW;
  const middle = (width * COLUMN) / 2;
  const shapes: Record<string, PieceShape> = {};
  const places: Place[] = [];
  const after = new Map<number, Part[]>();
  const way = new Map<number, Point[]>();
  const line = (column: number): Point[] => {
    const known = way.get(column) ?? [];
    way.set(column, known);
    return known;
  };
  const flush = (column: number): Part[] => {
    const parts = after.get(column) ?? [];
    const path = way.get(column) ?? [];
    const [before] = path;
    if (before && path.length > 1) parts.push({ is: 'line', what: 'core', path: smooth(path) });
    way.delete(column);
    after.set(column, parts);
    return parts;
  };
  const tied = width >= 4;
  /** The way through the middle of either bundle, and through every knot that is tied round it. */
  const inside: Record<SideName, Point[]> = { left: [], right: [] };
  /** A leading string is laid into the bundle nearest to it, each a little beside the others, and so is gathered with it. */
  const laidInto = (exit: Point, order: number): { readonly path: Point[]; readonly outwards: number } => {
    const side = exit[0] < middle ? 'left' : 'right';
    const [edge] = inside[side];
    const beside = (order - 1.5) * 0.3;
    const way = inside[side].map(([x, y, z]): Point => [x + beside, y, z]);
    const over: Point[] = edge && Math.abs(edge[0] - exit[0]) > 4 ? [[(edge[0] + exit[0]) / 2, below + 0.6, -1.2]] : [];
    return { path: [exit, ...over, ...way], outwards: side === 'left' ? -1 : 1 };
  };

  const cores = (['left', 'right'] as const).map((side) => {
    const outwards = side === 'left' ? 1 : -1;
    inside[side].push([edges[side], below + 0.9, LAID]);
    const core =
      side === 'left'
        ? Array.from({ length: edges.leftStrands }, (_, i) => left - edges.leftStrands + 1 + i)
        : Array.from({ length: edges.rightStrands }, (_, i) => width - right + 1 + i);
    const size = Math.sqrt(COLUMN * COLUMN + DROP * DROP);
    const turn = [DROP / size, (-outwards * COLUMN) / size] as const;
    for (let i = 0; i < finish.perSide; i += 1) {
      const single = side === 'left' ? left + 1 + i : width - right - i;
      const strands = core.length;
      const shape = `gathering-${side} ${Math.min(MOST_STRANDS, strands)}`;
      shapes[shape] ??= gatheringShape(side, Math.min(MOST_STRANDS, strands));
      const at: Point = [columnMiddle(single) - outwards * 0.7, below + TOP + i * DROP, 0];
      inside[side].push([at[0], at[1], LAID]);
      const origin = { shape, colour: null, turn, x: at[0] + turn[1] * (ROW / 2), y: at[1] - turn[0] * (ROW / 2) };
      const stands = standingPacked(strands);
      for (const [j, column] of core.entries()) {
        const [x, z] = stands[j] ?? [0, 0];
        for (const y of [0.05, 0.95]) line(column).push(inPlace([x, ROW * y, z], origin));
      }
      const lead = shapes[shape].leads[0] ?? [];
      line(single).push(inPlace(lead[0] as Point, origin));
      const parts = flush(single);
      parts.push({ is: 'shape', place: from + places.length, lead: 0 });
      line(single).push(inPlace(lead.at(-1) as Point, origin));
      if (side === 'left') core.push(single);
      else core.unshift(single);
      places.push(origin);
    }
    return core;
  });
  const [leftCore = [], rightCore = []] = cores;
  const neck = below + (finish.perSide > 0 ? TOP + 1.1 + finish.perSide * DROP : 2.4);
  const squares = tied ? SQUARES : 0;
  const loose = neck + squares * SQUARE + 0.7;
  const bottom = loose + TASSEL;
  const firstMiddle = left + finish.perSide + 1;
  const lastMiddle = width - right - finish.perSide;
  const between = Array.from({ length: Math.max(0, lastMiddle - firstMiddle + 1) }, (_, i) => firstMiddle + i);
  const tying = tied ? [firstMiddle, lastMiddle] : [];
  if (ending === 'gathered') {
    const ends = cores.map((core, side) => {
      const stands = standingPacked(core.length);
      const low = line(core[side === 0 ? core.length - 1 : 0] ?? 0).at(-1);
      const at: Point = low && finish.perSide > 0 ? low : [side === 0 ? edges.left : edges.right, below, 0];
      for (const [j, column] of core.entries()) {
        const [x, z] = stands[j] ?? [0, 0];
        if (line(column).length === 0) line(column).push([at[0] + x, below + 0.4, z]);
        line(column).push([at[0] + x, at[1] + 3, z], [at[0] + x, bottom + 1, z]);
        flush(column);
      }
      return at;
    });
    for (const column of between) {
      line(column).push([columnMiddle(column), below + 0.4, 0], [columnMiddle(column), bottom + 1, 0]);
      flush(column);
    }
    return {
      shapes,
      places,
      after,
      laid: (exit, order) => {
        const { path } = laidInto(exit, order);
        const [x, y] = ends[exit[0] < middle ? 0 : 1] ?? exit;
        const beside = (order - 1.5) * 0.3;
        return smooth([...path, [x + beside, y + 3, LAID], [x + beside, bottom - 1 - order, LAID]]);
      },
      bottom,
    };
  }
  const core = [...leftCore, ...between.filter((column) => !tying.includes(column)), ...rightCore];
  const stands = standingPacked(Math.max(1, core.length));
  const shape = `square-knot ${Math.min(MOST_STRANDS, core.length)}`;
  if (tied) shapes[shape] = squareShape(Math.min(MOST_STRANDS, core.length));
  const knots = Array.from(
    { length: squares },
    (_, i): Place => ({ shape, x: middle, y: neck + i * SQUARE, colour: null }),
  );
  const firstSquare = from + places.length;
  places.push(...knots);
  const fan = 1.6 + (width * 0.34) / Math.max(1, standingPacked(Math.min(MOST_STRANDS, core.length)).at(-1)?.[0] ?? 1);
  const tassel = (x: number, z: number, order: number): Point[] => [
    [middle + x * 1.5, loose + 1.5, z],
    [middle + x * (1 + fan * 0.5), loose + TASSEL * 0.5, z],
    [middle + x * fan + (order % 3) * 0.1 - 0.1, bottom - 0.35 * ((order * 7) % 3), z],
  ];
  for (const [j, column] of core.entries()) {
    const [x, z] = stands[j] ?? [0, 0];
    line(column).push([middle + x, neck - 0.3, z], [middle + x, loose - 0.6, z]);
    flush(column).push({
      is: 'line',
      what: 'tassel',
      path: smooth([[middle + x, loose - 0.6, z], ...tassel(x, z, j)]),
    });
  }
  for (const [which, column] of tying.entries()) {
    const outwards = which === 0 ? -1 : 1;
    const reach = (stands.at(-1)?.[0] ?? 0) + 1.6;
    line(column).push([columnMiddle(column), below + 0.4, -0.8], [middle + outwards * reach, neck - 1.6, -1.6]);
    for (const [i, knot] of knots.entries()) {
      const lead = shapes[shape]?.leads[which] ?? [];
      line(column).push(inPlace(lead[0] as Point, knot));
      flush(column).push({ is: 'shape', place: firstSquare + i, lead: which });
      line(column).push(inPlace(lead.at(-1) as Point, knot));
    }
    const [start] = line(column);
    way.delete(column);
    after.get(column)?.push({
      is: 'line',
      what: 'tassel',
      path: smooth([start as Point, ...tassel(outwards * (reach - 1.2), 0.4, which + 1)]),
    });
  }
  return {
    shapes,
    places,
    after,
    laid: (exit, order) => {
      const { path, outwards } = laidInto(exit, order);
      const x = outwards * (0.5 + 0.3 * order);
      return smooth([
        ...path,
        [middle + x, neck + 0.4, LAID],
        [middle + x, loose - 0.6, LAID],
        ...tassel(x, -0.5, order + 1),
      ]);
    },
    bottom,
  };
}
