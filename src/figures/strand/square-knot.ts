import { hangingBase, spreadOf } from './bundle.ts';
import { edge } from './frame.ts';
import { type Key, keys, type Stop } from './keys.ts';
import { mirrored, type Path, type Point } from './point.ts';
import { down, freeAfter, mirror, type Route, towards } from './route.ts';
import type { FreeEnd, Tying } from './tying.ts';

/** One half, `y` down the core, as it is tied with the cord at the left going over the core. */
const overFromLeft = (y: number): Path => [
  [-2.8, y - 1.4, 0],
  [-3.5, y, 0.1],
  [-3.1, y + 1.3, 0.2],
  [-1.6, y + 1.6, 0.8],
  [-0.6, y + 1.4, 1.3],
  [0.6, y + 1, 1.3],
  [1.4, y + 0.8, 0.6],
  [2.4, y + 0.6, -0.4],
];
/** The other cord comes down over it, `bight` down, and back up to the core. */
const downOver = (y: number, bight: number): Path => [
  [2.5, y - 0.8, 0.5],
  [2.5, y + 0.6, 1],
  [2.5, y + bight, 0.6],
  [2, y + bight + 0.7, -0.4],
  [1.5, y + bight, -1.2],
];
const behindCore = (y: number): Path => [
  [0.6, y + 1.2, -1.4],
  [-0.6, y + 0.5, -1.3],
  [-1.4, y, -0.7],
  [-2, y - 0.1, 0.4],
];
/** Up through the loop that the first cord makes, and over it. */
const upThrough = (y: number): Path => [
  [-2.8, y, 1.5],
  [-3.8, y + 0.3, 1.3],
  [-4.6, y + 0.8, 0.6],
];
const fromAbove = (x: number): Path => [
  [x, -8, 0],
  [x, -6, 0],
  [x, -4, 0],
];
/** Straight out of the picture at the right. */
const leavingRight = (y: number, free: number): Path => [
  [edge - 1, y, 0],
  [edge, y, 0],
  [edge + 1, y, 0],
  [edge + 1 + free, y, 0],
];

const closed = 1.9;
const shown = 4;
const atRight = towards(1, 0.1, -0.05);
const atLeft = towards(-1, 0.1, -0.05);
/** Held up out of the way while the other cord is laid beneath. */
const heldUp = towards(0.5, 0.1, 0.9);
const throughLoop = towards(-0.55, -0.05, 0.85);
const lifted = towards(0.4, 0.4, 0.8);

/** What one cord runs through before and after a half. */
interface Runs {
  readonly before: Path;
  readonly after: Path;
}

type Names = readonly [Stop | undefined, Stop, Stop, Stop | undefined];

/**
 * One half: the cord at the left over the core and under the one at the right; that one behind the core and up
 * through the loop of the first. `turned` mirrors it: then the cord at the right goes over.
 */
function halfKeys(y: number, over: Runs, under: Runs, far: number, names: Names, turned = false): Key[] {
  const way = turned ? mirror : (path: Path): Path => path;
  const to = (direction: Point): Point => (turned ? mirrored(direction) : direction);
  const first: Route = [over.before, way(overFromLeft(y)), over.after];
  const second = (bight: number): Route => [
    under.before,
    way(downOver(y, bight)),
    way(behindCore(y)),
    way(upThrough(y)),
    under.after,
  ];
  const rest = freeAfter(first, 1, down);
  const laid = freeAfter(first, 2, to(atRight));
  const aside = freeAfter(second(far), 1, to(heldUp));
  return [
    keys([rest, freeAfter(second(far), 1, down)], names[0]),
    keys([rest, aside]),
    keys([freeAfter(first, 1, to(lifted)), aside]),
    keys([laid, aside], names[1]),
    keys([laid, freeAfter(second(far), 3, to(throughLoop))]),
    keys([laid, freeAfter(second(shown), 3, to(throughLoop))], names[2], 2),
    keys([laid, freeAfter(second(closed), 3, to(throughLoop))]),
    keys([laid, freeAfter(second(closed), 4, to(atLeft))], names[3]),
  ];
}

const once: Names = ['at-rest', 'laid-over', 'passed-behind', 'brought-through'];
const again: Names = [undefined, 'laid-over-again', 'passed-behind-again', undefined];
const alone: Names = ['at-rest', 'laid-over', 'passed-behind', undefined];
const outAt = 2.2;

/** First half alone; both cords leave the picture at their new sides. */
function firstHalf({ length }: FreeEnd): Key[] {
  const over = { before: fromAbove(-2.5), after: leavingRight(outAt, length) };
  const under = { before: fromAbove(2.5), after: mirror(leavingRight(outAt, length)) };
  const done = [
    [over.before, overFromLeft(0), over.after].flat(),
    [under.before, downOver(0, closed), behindCore(0), upThrough(0), under.after].flat(),
  ];
  return [...halfKeys(0, over, under, length * 1.3, alone), keys(done, 'brought-through')];
}

/** From the first half round to the second, which lies `lower` down: the left cord is now at the right. */
const lower = 5.4;
const roundRight: Path = [
  [3.6, 1.2, -0.3],
  [4.4, 2.2, 0],
];
const roundLeft: Path = [
  [-5.1, 1.8, 0.2],
  [-4.7, 3, 0],
];

/** Two halves: mirror images of each other (`square`), or the same half twice, which spirals. */
function twoHalves({ length }: FreeEnd, square: boolean): Key[] {
  const far = length * 1.3;
  const out = 7.6;
  const goes = square ? mirror : (path: Path): Path => path;
  const overOut = goes(leavingRight(out, length));
  const underOut = goes(mirror(leavingRight(out, length)));
  const second = (bight: number): [over: Path, under: Path] => [
    [...goes(overFromLeft(lower)), ...overOut],
    [...goes(downOver(lower, bight)), ...goes(behindCore(lower)), ...goes(upThrough(lower)), ...underOut],
  ];
  const [nextOver, nextUnder] = second(far);
  const [leftNext, rightNext] = square ? [nextOver, nextUnder] : [nextUnder, nextOver];
  const left: Runs = { before: fromAbove(-2.5), after: [...roundRight, ...leftNext] };
  const right: Runs = { before: fromAbove(2.5), after: [...roundLeft, ...rightNext] };
  const leftBefore = [...left.before, ...overFromLeft(0), ...roundRight];
  const rightBefore = [...right.before, ...downOver(0, closed), ...behindCore(0), ...upThrough(0), ...roundLeft];
  const [overBefore, underBefore] = square ? [leftBefore, rightBefore] : [rightBefore, leftBefore];
  const later = halfKeys(
    lower,
    { before: overBefore, after: overOut },
    { before: underBefore, after: underOut },
    far,
    again,
    square,
  );
  const [overDone, underDone] = second(closed);
  const done = [
    [...overBefore, ...overDone],
    [...underBefore, ...underDone],
  ];
  const asLeftAndRight = (key: Key): Key => (square ? key : { ...key, lines: [...key.lines].reverse() });
  return [
    ...halfKeys(0, left, right, far, once),
    ...[...later, keys(done, 'brought-through-again')].map(asLeftAndRight),
  ];
}

const roundCore =
  (tie: Tying['keys'], steps: number) =>
  (strands: number): Tying => {
    const spread = spreadOf(strands);
    return {
      moving: [
        { id: 'left-cord', role: 'tying', from: 'start' },
        { id: 'right-cord', role: 'resting', from: 'start' },
      ],
      still: hangingBase(strands),
      keys: tie,
      drawUp: { rods: [{ along: 'y', at: [0, 0], radius: 0.5 }], steps },
      spread,
      frame: { left: -edge - spread.x, right: edge + spread.x, top: -5, bottom: tie === firstHalf ? 9 : 12 },
    };
  };

export const squareFirstHalf = roundCore(firstHalf, 160);
export const squareKnot = roundCore((end) => twoHalves(end, true), 220);
/** The fault: the same half twice. */
export const squareSpiral = roundCore((end) => twoHalves(end, false), 220);
