import type { Path, Point } from './point.ts';

/** Half the width of the picture round a single base, in d: cords enter and leave here. */
export const edge = 7;
/** How far down the piece the leading string leaves the picture after a whole knot, and after one half hitch. */
export const leaves = { knot: 3, half: 3.4 } as const;

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
export const leaving = (y: number, free: number): Point[] => [
  [edge - 1, y, 0],
  [edge, y, 0],
  [edge + 1, y, 0],
  [edge + 1 + free, y, 0],
];
