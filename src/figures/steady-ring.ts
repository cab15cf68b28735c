import { type Alteration, altered, fromRowToRow } from './altered.ts';
import { cordWindow } from './cord-window.ts';
import { ACROSS, type Drawing, type Figure, type Shape, step } from './drawing.ts';
import { COLUMN, type PieceModel, pieceModel, ROW } from './piece/index.ts';
import { PAINTS, stretch, stretchesOf } from './piece/pen.ts';
import { type SmallPlan, smallPiece } from './small-piece.ts';
import type { Path, Point } from './strand/point.ts';

export interface SteadyRingOptions {
  /** Nothing holds the ring, so that it has turned while the rows were tied. */
  readonly turned?: boolean | undefined;
  readonly across?: number | undefined;
}

export type SteadyRingKey = 'steady-ring' | 'steady-ring-turned' | 'steady-ring-rows';

const MOST = 8;
const ROWS = 5;
/** How far the bar goes down for each d to the right, and how far the middle of each row has wandered, in d. */
const SLANT = 0.2;
const WANDERED = [1.2, -1.3, 1.5, -1.5, 1.1];
/** How far a pin is from the ring, and how a scrap string goes from there round the wire: along, aside and towards the viewer, in d. */
const OUT = 5.6;
const LOOP: Path = [
  [OUT, 0.3, 0.9],
  [2, 0.55, 1.3],
  [0, 0.6, 1.5],
  [-1.5, 0.5, 1],
  [-1.9, 0, 0],
  [-1.5, -0.5, -1],
  [0, -0.6, -1.5],
  [2, -0.55, -1.3],
  [OUT, -0.3, -0.9],
];
/** Between these heights above the first row its strings go over from the ring to it; and what is seen below the rows, in d. */
const GOES = { high: 2.2, low: 0.7 };
const BELOW = 4.4;

/** The ring turned about one end of its bar, what hangs on it along with it, and each row where it pulled the ring to. */
function turning({ width, rows, laid }: PieceModel): Alteration {
  const end = width * COLUMN;
  const slant = (x: number): number => (x - end) * SLANT;
  const wandered = (row: number): number => WANDERED[Math.max(0, Math.min(row, rows.length - 1))] ?? 0;
  const off = (y: number): number => fromRowToRow(y / laid.pitch - 0.5, wandered);
  /** From the ring to the first row: 0 where a string still goes with the one, 1 where it goes with the other. */
  const below = (y: number): number => Math.min(1, Math.max(0, (y + GOES.high) / (GOES.high - GOES.low)));
  return {
    line: ([x, y, z]) => [x + below(y) * off(y), y + (1 - below(y)) * slant(x), z],
    place: ({ x, y, knot }) => (knot ? { x: x + off(y + ROW / 2), y } : { x, y: y + slant(x) }),
  };
}

/** The ring itself, turned; what points up to the key stays round. */
function turnedRing({ ring, width }: PieceModel): PieceModel['ring'] {
  const end = width * COLUMN;
  const [, at] = ring.bar[0] ?? [0, 0];
  const size = Math.sqrt(1 + SLANT * SLANT);
  const turn = ([x, y, z]: Point): Point => [
    end + (x - end - (y - at) * SLANT) / size,
    at + (y - at + (x - end) * SLANT) / size,
    z,
  ];
  const [x, y] = turn([ring.key.x, ring.key.y, 0]);
  return { bar: ring.bar.map(turn), arch: ring.arch.map(turn), key: { ...ring.key, x, y } };
}

/** Scrap strings that hold the ring: each from its pin over the wire, through the ring, and back behind it to the pin. */
function scraps({ ring }: PieceModel): Path[] {
  const { arch, key } = ring;
  const left = arch.reduce((low, one) => (one[0] < low[0] ? one : low));
  const right = arch.reduce((high, one) => (one[0] > high[0] ? one : high));
  // The one that is pinned upwards goes beside the key.
  const beside = key.x - key.r - 0.6;
  const top = arch.reduce((best, one) =>
    one[1] < left[1] && Math.abs(one[0] - beside) < Math.abs(best[0] - beside) ? one : best,
  );
  const held = ([x, y]: Point, u: number, v: number): Path =>
    LOOP.map(([along, aside, z]): Point => [x + u * along - v * aside, y + v * along + u * aside, z]);
  return [held(left, -1, -0.1), held(top, -0.36, -0.93), held(right, 1, -0.1)];
}

/** Ring, rows and scrap strings as cord; the tests look at the same. */
export function steadyRingCords(
  plan: SmallPlan,
  { turned = false }: SteadyRingOptions = {},
): {
  readonly model: PieceModel;
  readonly scraps: readonly Path[];
} {
  const { fit, outline, rows } = smallPiece(plan, MOST, ROWS);
  const whole = pieceModel({ fit, bundles: outline, rows, ending: 'hanging' });
  return turned
    ? { model: { ...altered(whole, turning(whole)), ring: turnedRing(whole) }, scraps: [] }
    : { model: whole, scraps: scraps(whole) };
}

function draw(plan: SmallPlan, options: SteadyRingOptions = {}): Drawing<SteadyRingKey> {
  const { across = ACROSS } = options;
  const { model, scraps: held } = steadyRingCords(plan, options);
  const wide = model.width * COLUMN;
  const xs = model.ring.arch.map(([x]) => x);
  const far = OUT + 1;
  const seen = {
    left: Math.min(wide - Math.max(...xs), ...xs) - far,
    right: Math.max(wide - Math.min(...xs), ...xs) + far,
    top: Math.min(...model.ring.arch.map(([, y]) => y)) - far,
    bottom: ROWS * ROW + BELOW,
  };
  const cut = held.map((path) => stretchesOf(path, 0.4));
  const painted = (side: 'behind' | 'before'): string =>
    cut.flatMap((one) => one[side].map((path) => stretch(path, PAINTS.moved, 'cord'))).join('');
  const {
    shapes: cords,
    x,
    y,
    foot,
  } = cordWindow(
    {
      ...model,
      strings: [
        ...model.strings,
        ...held.map((path, i) => ({
          id: `scrap-${i}`,
          role: 'base' as const,
          colour: null,
          parts: [{ is: 'line' as const, what: 'tassel' as const, path }],
        })),
      ],
    },
    seen,
    { across, gutter: 6, top: 4, largest: 9 },
    { behind: painted('behind'), before: painted('before') },
  );
  const pins = held.map((path): Shape<SteadyRingKey> => {
    const [a, b] = [path[0] ?? [0, 0, 0], path.at(-1) ?? [0, 0, 0]];
    return { tag: 'circle', is: 'pin', cx: x((a[0] + b[0]) / 2), cy: y((a[1] + b[1]) / 2), r: 5 };
  });
  return { width: across, height: foot + 4, shapes: [...cords, ...pins] };
}

/** A ring that scrap strings hold in its place over straight rows, or one that has turned while the rows wandered. */
export const steadyRing: Figure<'steady-ring', SteadyRingOptions, SteadyRingKey, SmallPlan> = {
  name: 'steady-ring',
  draw,
  describe(plan, options = {}) {
    const { model, scraps: held } = steadyRingCords(plan, options);
    return [
      step<SteadyRingKey>(options.turned ? 'steady-ring-turned' : 'steady-ring', { scraps: held.length }),
      step<SteadyRingKey>('steady-ring-rows', {
        rows: model.rows.length,
        columns: model.width,
        turned: options.turned ? 1 : 0,
      }),
    ];
  },
};
