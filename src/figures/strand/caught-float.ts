import { edge, leaving } from './frame.ts';
import { fromSide, onwards, twiceKeys } from './hitches.ts';
import type { Key } from './keys.ts';
import type { Path } from './point.ts';
import { flat, round } from './row-knot.ts';
import { slanting } from './slanting.ts';
import type { FreeEnd, Tying } from './tying.ts';

/** A forward knot with a resting string along the back that the knot is tied over: [leading, resting]. */
function overFloatKeys(end: FreeEnd): Key[] {
  const float: Path = [[-edge, -2.8, -0.8], [-5, -3.1, -1], ...slanting(-1.15), [4, 1, -1], ...leaving(1, end.length)];
  return twiceKeys(end, onwards(end.again), { ...fromSide, deeper: 1.1 }).map((one) => ({
    ...one,
    lines: [...one.lines, float],
  }));
}

/** A forward knot tied over a resting string as well as its base. */
export const caughtFloat: Tying = {
  ...round(overFloatKeys, 200, flat)(1),
  moving: [
    { id: 'leading', role: 'leading', from: 'start' },
    { id: 'resting', role: 'resting', from: 'start' },
  ],
};
