import { bar, barRadius } from './larks-head.ts';
import { edge, twoTurnsKeys } from './row-knot.ts';
import type { Tying } from './tying.ts';

/** How much thicker than one cord the bar is, each way. */
const spread = { x: barRadius - 0.5, z: barRadius - 0.5 };

/** One single string fixed to the bar: two turns round it, each over its own earlier stroke, the tail behind. */
export const loneString: Tying = {
  moving: [{ id: 'lone', role: 'base', from: 'start' }],
  still: [bar],
  keys: twoTurnsKeys,
  drawUp: { rods: [{ along: 'y', at: [0, 0], radius: 0.5 }], steps: 200, snug: 0.7 },
  spread,
  turned: true,
  frame: { left: -5, right: 9, top: -5.5, bottom: edge + spread.x },
};
