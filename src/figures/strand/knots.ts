import { hangingBase, spreadOf } from './bundle.ts';
import { larksHead } from './larks-head.ts';
import { loneString } from './lone-string.ts';
import { edge, endOfKnot, forwardBackwardKeys, forwardKeys, gatheringKeys, halfHitchKeys, joiningKeys, overFloatKeys, rowEndKeys } from './row-knot.ts';
import { drawUp } from './motion.ts';
import { carryBehind, float, letOut, takeIn } from './moves.ts';
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
  | 'row-end-right'
  | 'row-end-left'
  | 'carry-behind'
  | 'float'
  | 'caught-float'
  | 'join'
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
  drawUp: { rods: [baseRod], steps: 170, snug: 0.7, pushedUpFrom: 1 },
});

/** A forward knot tied over a resting string as well as its base. */
const caughtFloat: Tying = {
  ...round(overFloatKeys, 200, 0.7)(1),
  moving: [
    { id: 'leading', role: 'leading', from: 'start' },
    { id: 'resting', role: 'resting', from: 'start' },
  ],
};

/** A forward knot tied with a new leading string, over its own tail and the old one's. */
const join: Tying = {
  ...round(joiningKeys, 200, 0.7)(1),
  moving: [
    { id: 'new', role: 'leading', from: 'start' },
    { id: 'old', role: 'resting', from: 'start' },
  ],
};

/** A row going right comes to its end: an ordinary knot, then the turning knot on the edge bundle. */
const rowEnd = (strands: number): Tying => {
  const spread = spreadOf(strands);
  const neighbour = -7.4;
  const tight = drawUp(round(forwardKeys, 200, 0.7)(1)).at(-1)?.[0] ?? [];
  return {
    moving: [{ id: 'leading', role: 'leading', from: 'start', heldAt: Math.ceil(endOfKnot(tight) / 2) - 1 }],
    still: [
      {
        id: 'neighbour',
        role: 'base',
        path: [
          [neighbour - spread.x, -14, 0],
          [neighbour - spread.x, 18, 0],
        ],
      },
      ...hangingBase(strands),
    ],
    keys: (end) => rowEndKeys(end, tight, neighbour),
    drawUp: { rods: [baseRod, { along: 'y', at: [neighbour, 0], radius: 0.5 }], steps: 300 },
    spread,
    frame: { left: neighbour - 3 - spread.x, right: 5.6 + spread.x, top: -6, bottom: 9 },
  };
};

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
  float: { bundled: false, tie: () => float },
  'caught-float': { bundled: false, tie: () => caughtFloat },
  join: { bundled: false, tie: () => join },
  'row-end-right': { bundled: true, tie: rowEnd },
  'row-end-left': { bundled: true, mirrorOf: 'row-end-right' },
  'let-out': { bundled: true, tie: (strands) => letOut(Math.max(2, strands)) },
  'take-in': { bundled: true, tie: (strands) => takeIn(Math.max(2, strands)) },
  'lone-string': { bundled: false, tie: () => loneString },
  'square-first-half': { bundled: true, tie: squareFirstHalf },
  'square-second-half': { bundled: true, mirrorOf: 'square-first-half' },
  'square-knot': { bundled: true, tie: squareKnot },
  'square-spiral': { bundled: true, tie: squareSpiral },
  'backward-forward': { bundled: true, mirrorOf: 'forward-backward' },
};
