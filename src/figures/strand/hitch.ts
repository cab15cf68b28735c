import { type Point, plus } from './point.ts';

/**
 * The places a leading string runs through in a forward half hitch round a base at x = 0, its stroke `y` down
 * the piece, still loose. A backward one is the mirror image. Figures in d; they leave at least 1 d of air
 * everywhere, which the tests of clearance prove.
 */
export const stroke = (y: number): Point[] => [
  [-1.7, y, 0.3],
  [-0.7, y, 1.3],
  [0.7, y, 1.3],
];
/** The turn on the far side of the base, from front to back; `bight` is how far out it still reaches. */
export const turn = (y: number, bight = 1.8): Point[] => [
  [bight, y - 0.2, 0.9],
  [bight + 0.7, y - 0.75, 0],
  [bight, y - 1.3, -0.9],
];
/** The same turn with its bight hanging down and back instead of reaching out, where there is no room beside. */
export const hangingTurn = (y: number, bight = 1.8): Point[] => {
  const out: Point = [2.4, y + 0.4, 0.5];
  const back: Point = [2.4, y - 0.7, -0.9];
  const hangs: Point = [0, 0.853, -0.522];
  const hang = bight - 1.8;
  return [
    [1.7, y, 0.9],
    out,
    plus(out, hangs, hang),
    plus([2.6, y - 0.15, -0.2], hangs, hang + 0.7),
    plus(back, hangs, hang),
    back,
    [1.6, y - 1.3, -1.2],
  ];
};
export const under = (y: number): Point[] => [
  [0.7, y - 1.5, -1.3],
  [-0.7, y - 1.5, -1.3],
];
/** Out to the front through the gap, the first time: wide, so that the second hitch finds room inside. */
export const outWide = (y: number): Point[] => [
  [-1.6, y - 1.5, -0.6],
  [-2.6, y - 1.4, 0.6],
];
export const downWide = (y: number): Point[] => [
  [-3.2, y - 0.6, 1.5],
  [-3.2, y + 0.4, 1.6],
  [-3.3, y + 2, 0.6],
];
/** Out to the front inside an earlier loop of the same cord. */
export const outInside = (y: number): Point[] => [
  [-1.4, y - 1.5, -0.7],
  [-1.8, y - 1.5, 0.4],
];
export const downInside = (y: number): Point[] => [
  [-1.9, y - 0.7, 2],
  [-1.9, y + 0.4, 2.2],
];
