import type { Path } from './point.ts';

/** A cord that lies behind the base, slanting down to the right, so that the first hitch closes round it. */
export const slanting = (depth: number): Path => [
  [-3.2, -3.3, depth],
  [-1.8, -3.1, depth],
  [-0.7, -2.1, depth],
  [0.3, -0.6, depth],
  [1.6, 0.5, depth],
  [2.8, 0.9, depth],
];
