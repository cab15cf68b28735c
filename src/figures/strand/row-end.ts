import { hangingBase, spreadOf } from './bundle.ts';
import { leaves } from './frame.ts';
import { hangingTurn } from './hitch.ts';
import { thereAndBackKeys } from './hitches.ts';
import type { Key } from './keys.ts';
import { drawUp } from './motion.ts';
import type { Path, Point } from './point.ts';
import { baseRod, forward } from './row-knot.ts';
import type { FreeEnd, Tying } from './tying.ts';

/**
 * The end of a row going right: from the knot beside it, whose string is at `neighbour` (left of 0), round the edge,
 * and back in front of that string. Its second bight hangs down, clear of the neighbour. `tight` is the neighbour's
 * knot, drawn up.
 */
function rowEndKeys(end: FreeEnd, tight: Path, neighbour: number): Key[] {
  const last = endOfKnot(tight);
  const rise = tight[last]?.[1] ?? 0;
  const done = tight
    .slice(0, last)
    .filter((_, i) => (last - i) % 2 === 1)
    .map(([x, y, z]): Point => [x + neighbour, y - rise, z]);
  const held: Path = [...done, [-5.6, 0, 0.6], [-4.4, 0, 0.1], [-3.2, 0, 0]];
  const z = 2;
  const x = neighbour - 3;
  const out: Path = [
    [-3.8, 6.5, 1.2],
    [-5.4, 4.9, 1.7],
    [-7, 3.5, z],
    [x + 1, leaves.knot, z],
    [x, leaves.knot, z],
    [x - 1, leaves.knot, z],
    [x - 1 - end.again, leaves.knot, z],
  ];
  return thereAndBackKeys(end, out, { held, on: [] }, hangingTurn);
}

/** Which point of a drawn-up forward knot is the first that has left its base. */
const endOfKnot = (tight: Path): number => tight.findLastIndex(([x]) => x < 0.6) + 1;

let keptForward: Path | undefined;
/** The line of a forward knot round a single base, drawn up: made once. */
function forwardDrawnUp(): Path {
  keptForward ??= drawUp(forward(1)).at(-1)?.[0] ?? [];
  return keptForward;
}

/** A row going right comes to its end: an ordinary knot, then the turning knot on the edge bundle. */
export const rowEnd = (strands: number): Tying => {
  const spread = spreadOf(strands);
  const neighbour = -7.4;
  const tight = forwardDrawnUp();
  return {
    moving: [{ id: 'leading', role: 'leading', from: 'start', heldAt: Math.ceil(endOfKnot(tight) / 2) - 1 }],
    still: [
      {
        id: 'neighbour',
        role: 'base',
        path: [
          [neighbour - spread.x, -14, 0],
          [neighbour - spread.x, 18, 0],
        ],
      },
      ...hangingBase(strands),
    ],
    keys: (end) => rowEndKeys(end, tight, neighbour),
    drawUp: { rods: [baseRod, { along: 'y', at: [neighbour, 0], radius: 0.5 }], steps: 300 },
    spread,
    frame: { left: neighbour - 3 - spread.x, right: 5.6 + spread.x, top: -6, bottom: 9 },
  };
};
