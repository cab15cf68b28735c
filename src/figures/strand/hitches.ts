import { edge, leaves, leaving } from './frame.ts';
import { downInside, downWide, outInside, outWide, stroke, turn, under } from './hitch.ts';
import { type Key, key } from './keys.ts';
import { mirrored, type Path, type Point } from './point.ts';
import { down, freeAfter, mirror, type Route, towards } from './route.ts';
import type { FreeEnd } from './tying.ts';

const lifted = (x: number, y: number): Point => towards(x, y, 0.8);
const outToLeft = towards(-0.75, -0.1, 0.65);
/** Steeply, so that it passes in front of the loop it comes out of. */
const outInsideToLeft = towards(-0.3, -0.2, 0.9);
/** How far out a bight reaches: closed round the base, still in view, and out of sight. */
const closed = 1.8;
const shown = 4.2;
/** A swinging end is laid out longer than it is, so that its own far turn never comes into the picture. */
const beyond = 1.6;
const atOnce = 1e-3;

const arriving: Path = [
  [-edge, 0, 0],
  [-6, 0, 0],
  [-4.8, 0, 0],
  [-3.2, 0, 0],
];
/** How the leading string comes to the first hitch: where it is held, and on from there. */
export interface Arrival {
  readonly held: Path;
  readonly on: Path;
  /** How much farther behind the base the first hitch passes, to leave room for cords laid there; 0 by default. */
  readonly deeper?: number;
}

export const fromSide: Arrival = { held: arriving, on: [] };

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

/** One half hitch and out, as `out` says. */
export function onceKeys({ first }: FreeEnd, out: Path): Key[] {
  return [...tieFirst(first, [out]), key([...firstHitch(closed), out].flat(), 'brought-through')];
}

/** How far the second of two hitches lies below the first while both are loose. */
export const lower = 3.6;

/** Straight on after a forward knot, out of the picture at the right. */
export const onwards = (free: number): Path => [
  [-1.4, lower + 1.4, 1.5],
  [-0.5, lower + 1.6, 1.3],
  [0.7, lower + 1.6, 1.3],
  [2, lower + 1.4, 0.6],
  [4, 4, 0],
  ...leaving(leaves.knot, free),
];

/** Two half hitches, the second below the first, and out as `out` says. */
export function twiceKeys({ first, again }: FreeEnd, out: Path, arrival: Arrival = fromSide): Key[] {
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

/** A half hitch, then its mirror image: the string comes back to the side it came from. */
export function thereAndBackKeys(
  { first, again }: FreeEnd,
  out: Path,
  arrival: Arrival,
  secondTurn: typeof turn,
): Key[] {
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
    [[1.4, y + 1.4, 1.5], [0.5, y + 1.6, 1.3], [-0.7, y + 1.6, 1.3], [-2, y + 1.4, 0.6], ...out],
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
