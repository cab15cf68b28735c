import { downInside, downWide, hangingTurn, outInside, outWide, stroke, turn, under } from './hitch.ts';
import { type Key, key } from './keys.ts';
import { mirrored, type Path, type Point } from './point.ts';
import type { FreeEnd } from './tying.ts';
import { down, freeAfter, mirror, type Route, towards } from './route.ts';

/** Half the width of the picture round a single base, in d: cords enter and leave here. */
export const edge = 7;
/** How far down the piece the leading string leaves the picture after a whole knot, and after one half hitch. */
export const leaves = { knot: 3, half: 3.4 } as const;

const lifted = (x: number, y: number): Point => towards(x, y, 0.8);
const outToLeft = towards(-0.75, -0.1, 0.65);
/** Steeply, so that it passes in front of the loop it comes out of. */
const outInsideToLeft = towards(-0.3, -0.2, 0.9);
const arriving: Path = [
  [-edge, 0, 0],
  [-6, 0, 0],
  [-4.8, 0, 0],
  [-3.2, 0, 0],
];
/** How far out a bight reaches: closed round the base, still in view, and out of sight. */
const closed = 1.8;
const shown = 4.2;
/** A swinging end is laid out longer than it is, so that its own far turn never comes into the picture. */
const beyond = 1.6;
const atOnce = 1e-3;

/** Where hanging cords leave a picture of a single knot. */
export const bottom = 9;

/** Straight down out of the picture at `x`. */
export const hanging = (x: number, free: number): Path => [
  [x, bottom - 1, 0],
  [x, bottom, 0],
  [x, bottom + 1, 0],
  [x, bottom + 1 + free, 0],
];

/** Straight out of the picture at height `y`: nothing that happens in the picture moves it there. */
const leaving = (y: number, free: number): Point[] => [
  [edge - 1, y, 0],
  [edge, y, 0],
  [edge + 1, y, 0],
  [edge + 1 + free, y, 0],
];

/** How the leading string comes to the first hitch: where it is held, and on from there. */
interface Arrival {
  readonly held: Path;
  readonly on: Path;
  /** How much farther behind the base the first hitch passes, to leave room for cords laid there; 0 by default. */
  readonly deeper?: number;
}

const fromSide: Arrival = { held: arriving, on: [] };

const firstHitch = (bight: number, { held, on, deeper = 0 }: Arrival = fromSide): Path[] => [
  held,
  [...on, ...stroke(0)],
  sunk(turn(0, bight), deeper),
  sunk(under(0), deeper),
  sunk(outWide(0), deeper),
  downWide(0),
];

const sunk = (path: Path, by: number): Path => path.map(([x, y, z]): Point => [x, y, z < -0.5 ? z - by : z]);

/** From rest until the end hangs at the left, brought out in front of its own stroke; `then` is what follows. */
function tieFirst(free: number, then: Route, arrival: Arrival = fromSide): Key[] {
  const at = (bight: number): Route => [...firstHitch(bight, arrival), ...then];
  return [
    key(freeAfter(at(free * beyond), 1, down), 'at-rest'),
    key(freeAfter(at(free * beyond), 1, lifted(0.5, 0.4))),
    key(freeAfter(at(free * beyond), 5, outToLeft), 'laid-over'),
    key(freeAfter(at(free), 5, outToLeft), undefined, atOnce),
    key(freeAfter(at(shown), 5, outToLeft), 'passed-behind', 2),
    key(freeAfter(at(closed), 5, outToLeft)),
    key(freeAfter(at(closed), 5, lifted(-0.5, 0.5))),
    key(freeAfter(at(closed), 6, down), then.length > 1 ? 'brought-through' : undefined),
  ];
}

/**
 * The leading string's control lines through a forward half hitch round a single base at x = 0, key by key.
 */
export function halfHitchKeys({ first }: FreeEnd): Key[] {
  const out: Path = [[-3.4, 2.6, 0.5], [-4.6, leaves.half, 0.2], ...mirror(leaving(leaves.half, first))];
  return [...tieFirst(first, [out]), key([...firstHitch(closed), out].flat(), 'brought-through')];
}

/** As `halfHitchKeys`, for a forward knot: two forward half hitches, the second below the first. */
export const forwardKeys = (end: FreeEnd): Key[] => twiceKeys(end, onwards(end.again));

/** Two turns round a bar, each over its own earlier stroke; the tail goes behind, beside the hanging end. */
export function twoTurnsKeys(end: FreeEnd): Key[] {
  const y = lower;
  const behind = leaving(leaves.knot, end.again).map(([x, down]): Point => [-x, down, -1]);
  return twiceKeys(end, [[-2.3, y + 1.2, 1.3], [-3, y + 1.5, 0.2], [-4.2, y + 1, -0.9], ...behind]);
}

/** A forward knot tied with a single string that hangs beside the bundle and is taken into it. */
export function gatheringKeys(end: FreeEnd): Key[] {
  const y = lower;
  const beside: Arrival = {
    held: [
      [-5.4, -9, 0],
      [-5.4, -6, 0],
      [-5.4, -3.2, 0],
    ],
    on: [
      [-5.3, -1, 0],
      [-4.4, -0.1, 0],
    ],
  };
  const joins: Path = [
    [-1.4, y + 1.4, 1.5],
    [-0.5, y + 1.6, 1.3],
    [0.7, y + 1.7, 1.3],
    [1.6, y + 2.4, 0.8],
    [1.7, y + 3.6, 0.1],
    ...hanging(1.3, end.again),
  ];
  return twiceKeys(end, joins, beside);
}

/** Straight on after a forward knot, out of the picture at the right. */
const onwards = (free: number): Path => [
  [-1.4, lower + 1.4, 1.5],
  [-0.5, lower + 1.6, 1.3],
  [0.7, lower + 1.6, 1.3],
  [2, lower + 1.4, 0.6],
  [4, 4, 0],
  ...leaving(leaves.knot, free),
];

/** A cord that lies behind the base, slanting down to the right, so that the first hitch closes round it. */
const slanting = (depth: number): Path => [
  [-3.2, -3.3, depth],
  [-1.8, -3.1, depth],
  [-0.7, -2.1, depth],
  [0.3, -0.6, depth],
  [1.6, 0.5, depth],
  [2.8, 0.9, depth],
];

/** As `forwardKeys`, with a resting string along the back that the knot is tied over: [leading, resting]. */
export function overFloatKeys(end: FreeEnd): Key[] {
  const float: Path = [[-edge, -2.8, -0.8], [-5, -3.1, -1], ...slanting(-1.15), [4, 1, -1], ...leaving(1, end.length)];
  return twiceKeys(end, onwards(end.again), { ...fromSide, deeper: 1.1 }).map((one) => ({ ...one, lines: [...one.lines, float] }));
}

/**
 * A new leading string joined: its tail and the old one's lie behind the base, and the knot is tied over both:
 * [new, old].
 */
export function joiningKeys(end: FreeEnd): Key[] {
  const tail = [...slanting(-2.25)].reverse();
  const fresh: Arrival = {
    held: [
      [5.6, 1, -2.2],
      [4.2, 1, -2.25],
      ...tail,
      [-4.4, -3.1, -1.9],
      [-5.6, -2.6, -1.5],
      [-6, -1.3, -0.6],
      [-5.5, -0.2, -0.1],
      [-4.4, 0, 0],
      [-3.2, 0, 0],
    ],
    on: [],
    deeper: 2.2,
  };
  const old: Path = [
    [-edge, -4, -0.6],
    [-5, -3.8, -0.9],
    ...slanting(-1.15),
    [3.4, 1, -1.1],
    [3.8, 1, -1.1],
    [4.2, 1, -1.1],
    [4.2 + end.length, 1, -1.1],
  ];
  return twiceKeys(end, onwards(end.again), fresh).map((one) => ({ ...one, lines: [...one.lines, old] }));
}

/** How far the second of two hitches lies below the first while both are loose. */
const lower = 3.6;

function twiceKeys({ first, again }: FreeEnd, out: Path, arrival: Arrival = fromSide): Key[] {
  const y = lower;
  const second = (bight: number): Route => [stroke(y), turn(y, bight), under(y), outInside(y), downInside(y), out];
  const at = (bight: number): Route => [...firstHitch(closed, arrival), ...second(bight)];
  const inFront = lifted((out.at(-1)?.[0] ?? 0) < 0 ? -0.5 : 0.5, 0.5);
  return [
    ...tieFirst(first, second(again * beyond), arrival),
    key(freeAfter(at(again * beyond), 6, lifted(0.5, 0.5))),
    key(freeAfter(at(again * beyond), 10, outInsideToLeft), 'laid-over-again'),
    key(freeAfter(at(again), 10, outInsideToLeft), undefined, atOnce),
    key(freeAfter(at(shown), 10, outInsideToLeft), 'passed-behind-again', 2),
    key(freeAfter(at(closed), 10, outInsideToLeft)),
    key(freeAfter(at(closed), 10, lifted(0, 0.25))),
    key(freeAfter(at(closed), 11, down)),
    key(freeAfter(at(closed), 11, inFront)),
    key(at(closed).flat(), 'brought-through-again'),
  ];
}

/** As `halfHitchKeys`, for forward, then backward: the leading string comes back to the side it came from. */
export function forwardBackwardKeys(end: FreeEnd): Key[] {
  const out: Path = [[-4, 5, 0], ...mirror(leaving(leaves.knot, end.again))];
  return thereAndBackKeys(end, out, fromSide, turn);
}

/**
 * The end of a row going right: from the knot beside it, whose string is at `neighbour` (left of 0), round the edge,
 * and back in front of that string. Its second bight hangs down, clear of the neighbour. `tight` is the neighbour's
 * knot, drawn up.
 */
export function rowEndKeys(end: FreeEnd, tight: Path, neighbour: number): Key[] {
  const last = endOfKnot(tight);
  const rise = tight[last]?.[1] ?? 0;
  const done = tight.slice(0, last).filter((_, i) => (last - i) % 2 === 1).map(([x, y, z]): Point => [x + neighbour, y - rise, z]);
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
export const endOfKnot = (tight: Path): number => tight.findLastIndex(([x]) => x < 0.6) + 1;

function thereAndBackKeys({ first, again }: FreeEnd, out: Path, arrival: Arrival, secondTurn: typeof turn): Key[] {
  const over = 2.2;
  const y = 5;
  const second = (back: number, bight: number): Route => [
    stroke(over),
    [
      [2.2 + back, over, 1],
      [3.2 + back, over + 0.4, 0.9],
      [3.4 + back, over + 1.2, 0.7],
      [3.2 + back, over + 2.4, 0.3],
    ],
    mirror(stroke(y)),
    mirror(secondTurn(y, bight)),
    mirror(under(y)),
    mirror(outInside(y)),
    mirror(downInside(y)),
    [
      [1.4, y + 1.4, 1.5],
      [0.5, y + 1.6, 1.3],
      [-0.7, y + 1.6, 1.3],
      [-2, y + 1.4, 0.6],
      ...out,
    ],
  ];
  const at = (bight: number): Route => [...firstHitch(closed, arrival), ...second(0, bight)];
  const far = (reach: number): Route => [...firstHitch(closed, arrival), ...second(reach, again * beyond)];
  const outInsideToRight = mirrored(outInsideToLeft);
  return [
    ...tieFirst(first, second(again * beyond, again * beyond), arrival),
    key(freeAfter(far(again * beyond), 6, lifted(0.5, 0.5))),
    key(far(again * beyond).flat()),
    key(far(again).flat(), undefined, atOnce),
    key(freeAfter(at(again), 12, outInsideToRight), 'laid-over-again', 2),
    key(freeAfter(at(shown), 12, outInsideToRight), 'passed-behind-again', 2),
    key(freeAfter(at(closed), 12, outInsideToRight)),
    key(freeAfter(at(closed), 12, lifted(0.4, 0.5))),
    key(freeAfter(at(closed), 13, down)),
    key(freeAfter(at(closed), 13, lifted(-0.5, 0.5))),
    key(at(closed).flat(), 'brought-through-again'),
  ];
}
