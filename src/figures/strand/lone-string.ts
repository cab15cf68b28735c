import { edge, leaves, leaving } from './frame.ts';
import { lower, twiceKeys } from './hitches.ts';
import type { Key } from './keys.ts';
import { bar, barRadius } from './larks-head.ts';
import type { Point } from './point.ts';
import { baseRod, flat } from './row-knot.ts';
import type { FreeEnd, Tying } from './tying.ts';

/** How much thicker than one cord the bar is, each way. */
const spread = { x: barRadius - 0.5, z: barRadius - 0.5 };

/** Two turns round a bar, each over its own earlier stroke; the tail goes behind, beside the hanging end. */
function twoTurnsKeys(end: FreeEnd): Key[] {
  const y = lower;
  const behind = leaving(leaves.knot, end.again).map(([x, down]): Point => [-x, down, -1]);
  return twiceKeys(end, [[-2.3, y + 1.2, 1.3], [-3, y + 1.5, 0.2], [-4.2, y + 1, -0.9], ...behind]);
}

/** One single string fixed to the bar: two turns round it, each over its own earlier stroke, the tail behind. */
export const loneString: Tying = {
  moving: [{ id: 'lone', role: 'base', from: 'start' }],
  still: [bar],
  keys: twoTurnsKeys,
  drawUp: { rods: [baseRod], steps: 200, snug: flat },
  spread,
  turned: true,
  frame: { left: -5, right: 9, top: -5.5, bottom: edge + spread.x },
};
