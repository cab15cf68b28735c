import { hangingBase, spreadOf } from './bundle.ts';
import { larksHead } from './larks-head.ts';
import { loneString } from './lone-string.ts';
import { edge, forwardBackwardKeys, forwardKeys, gatheringKeys, halfHitchKeys } from './row-knot.ts';
import { carryBehind, letOut, takeIn } from './moves.ts';
import { squareFirstHalf, squareKnot, squareSpiral } from './square-knot.ts';
import type { Tying } from './tying.ts';

export type KnotName =
  | 'forward-half-hitch'
  | 'backward-half-hitch'
  | 'forward'
  | 'backward'
  | 'forward-backward'
  | 'backward-forward'
  | 'larks-head'
  | 'lone-string'
  | 'gathering-right'
  | 'gathering-left'
  | 'carry-behind'
  | 'let-out'
  | 'take-in'
  | 'square-first-half'
  | 'square-second-half'
  | 'square-knot'
  | 'square-spiral';

/**
 * How a knot is tied round a base of so many strings; `mirrorOf` names the knot it is the
 * mirror image of, `bundled` says whether the number of strings is the maker's to choose.
 */
export type Pattern = { readonly bundled: boolean } & (
  | { readonly tie: (strands: number) => Tying }
  | { readonly mirrorOf: KnotName }
);

const baseRod = { along: 'y', at: [0, 0], radius: 0.5 } as const;

const round =
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
      frame: { left: -out, right: out, top: -5, bottom: 9 },
    };
  };

const gathering = (strands: number): Tying => ({
  ...round(gatheringKeys, 200, 0.7)(strands),
  moving: [{ id: 'single', role: 'tying', from: 'start' }],
});

/** Every knot of the house by its trade name. */
export const knots: Record<KnotName, Pattern> = {
  'forward-half-hitch': { bundled: true, tie: round(halfHitchKeys, 160, 0.7) },
  'backward-half-hitch': { bundled: true, mirrorOf: 'forward-half-hitch' },
  forward: { bundled: true, tie: round(forwardKeys, 200, 0.7) },
  backward: { bundled: true, mirrorOf: 'forward' },
  'forward-backward': { bundled: true, tie: round(forwardBackwardKeys, 300, 0) },
  'larks-head': { bundled: false, tie: () => larksHead },
  'gathering-right': { bundled: true, tie: gathering },
  'gathering-left': { bundled: true, mirrorOf: 'gathering-right' },
  'carry-behind': { bundled: false, tie: () => carryBehind },
  'let-out': { bundled: true, tie: (strands) => letOut(Math.max(2, strands)) },
  'take-in': { bundled: true, tie: (strands) => takeIn(Math.max(2, strands)) },
  'lone-string': { bundled: false, tie: () => loneString },
  'square-first-half': { bundled: true, tie: squareFirstHalf },
  'square-second-half': { bundled: true, mirrorOf: 'square-first-half' },
  'square-knot': { bundled: true, tie: squareKnot },
  'square-spiral': { bundled: true, tie: squareSpiral },
  'backward-forward': { bundled: true, mirrorOf: 'forward-backward' },
};
