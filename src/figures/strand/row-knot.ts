import { hangingBase, spreadOf } from './bundle.ts';
import { bottom, edge, leaves, leaving } from './frame.ts';
import { turn } from './hitch.ts';
import { fromSide, onceKeys, onwards, thereAndBackKeys, twiceKeys } from './hitches.ts';
import { mirror } from './route.ts';
import type { Tying } from './tying.ts';

/** A base round which a knot is drawn up; lines are widened for a bundle afterwards. */
export const baseRod = { along: 'y', at: [0, 0], radius: 0.5 } as const;
/** How far to both sides of the base a pass in front lies flat on it, in d. */
export const flat = 0.7;

/** A knot of the leading string round a hanging base; `steps` is how far it is drawn up. */
export const round =
  (keys: Tying['keys'], steps: number, snug: number) =>
  (strands: number): Tying => {
    const spread = spreadOf(strands);
    const out = edge + spread.x;
    return {
      moving: [{ id: 'leading', role: 'leading', from: 'start' }],
      still: hangingBase(strands),
      keys,
      drawUp: { rods: [baseRod], steps, snug },
      spread,
      frame: { left: -out, right: out, top: -5, bottom },
    };
  };

/** One forward half hitch. */
export const halfHitch = round(
  (end) => onceKeys(end, [[-3.4, 2.6, 0.5], [-4.6, leaves.half, 0.2], ...mirror(leaving(leaves.half, end.first))]),
  70,
  flat,
);

/** Two forward half hitches. */
export const forward = round((end) => twiceKeys(end, onwards(end.again)), 200, flat);

/**
 * A forward half hitch, then a backward one. Drawn up, its loop at the far side comes over to the near side: nothing
 * holds the passes flat, so that it can.
 */
export const forwardBackward = round(
  (end) => thereAndBackKeys(end, [[-4, 5, 0], ...mirror(leaving(leaves.knot, end.again))], fromSide, turn),
  300,
  0,
);
