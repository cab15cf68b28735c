import { edge } from './frame.ts';
import { type Arrival, onwards, twiceKeys } from './hitches.ts';
import type { Key } from './keys.ts';
import type { Path, Point } from './point.ts';
import { flat, round } from './row-knot.ts';
import { slanting } from './slanting.ts';
import type { FreeEnd, Tying } from './tying.ts';

/**
 * A new leading string joined: its tail and the old one's lie behind the base, and the knot is tied over both:
 * [new, old].
 */
function joiningKeys(end: FreeEnd): Key[] {
  const tail = [...slanting(-2.25)].reverse().map(([x, y, z]): Point => [x, y - 0.6, z]);
  const fresh: Arrival = {
    held: [
      [5.6, 0.4, -2.2],
      [4.2, 0.4, -2.25],
      ...tail,
      [-4.4, -3.6, -1.9],
      [-5.6, -3, -1.5],
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
    [3, 0.9, -1.15],
    [3.1, 0.9, -1.15],
    [3.2, 0.9, -1.15],
    [3.2 + end.length, 0.9, -1.15],
  ];
  return twiceKeys(end, onwards(end.again), fresh).map((one) => ({ ...one, lines: [...one.lines, old] }));
}

/** A forward knot tied with a new leading string, over its own tail and the old one's. */
export const join: Tying = {
  ...round(joiningKeys, 200, flat)(1),
  moving: [
    { id: 'new', role: 'leading', from: 'start' },
    { id: 'old', role: 'resting', from: 'start' },
  ],
};
