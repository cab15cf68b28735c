import { caughtFloat } from './caught-float.ts';
import { gathering } from './gathering.ts';
import { join } from './join.ts';
import { larksHead } from './larks-head.ts';
import { loneString } from './lone-string.ts';
import { carryBehind, float, letOut, takeIn } from './moves.ts';
import { rowEnd } from './row-end.ts';
import { forward, forwardBackward, halfHitch } from './row-knot.ts';
import { sideFold } from './side-fold.ts';
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
  | 'side-fold'
  | 'gathering-right'
  | 'gathering-left'
  | 'row-end-right'
  | 'row-end-left'
  | 'carry-behind'
  | 'carry-behind-right'
  | 'float'
  | 'caught-float'
  | 'join'
  | 'let-out'
  | 'let-out-right'
  | 'take-in'
  | 'take-in-right'
  | 'square-first-half'
  | 'square-second-half'
  | 'square-knot'
  | 'square-spiral';

/**
 * How a knot is tied round a base of so many strings; `mirrorOf` names the knot it is the
 * mirror image of, `bundled` says whether the number of strings is the maker's to choose, and
 * `least` how many of them it takes at least, where one will not do. Moves at an edge are named for
 * the left one; those at the right one end in `-right`.
 */
export type Pattern = { readonly bundled: boolean; readonly least?: number } & (
  | { readonly tie: (strands: number) => Tying }
  | { readonly mirrorOf: KnotName }
);

/** Every knot of the house by its trade name. */
export const knots: Record<KnotName, Pattern> = {
  'forward-half-hitch': { bundled: true, tie: halfHitch },
  'backward-half-hitch': { bundled: true, mirrorOf: 'forward-half-hitch' },
  forward: { bundled: true, tie: forward },
  backward: { bundled: true, mirrorOf: 'forward' },
  'forward-backward': { bundled: true, tie: forwardBackward },
  'larks-head': { bundled: false, tie: () => larksHead },
  'gathering-right': { bundled: true, tie: gathering },
  'gathering-left': { bundled: true, mirrorOf: 'gathering-right' },
  'carry-behind': { bundled: false, tie: () => carryBehind },
  'carry-behind-right': { bundled: false, mirrorOf: 'carry-behind' },
  float: { bundled: false, tie: () => float },
  'caught-float': { bundled: false, tie: () => caughtFloat },
  join: { bundled: false, tie: () => join },
  'row-end-right': { bundled: true, tie: rowEnd },
  'row-end-left': { bundled: true, mirrorOf: 'row-end-right' },
  'let-out': { bundled: true, least: 2, tie: letOut },
  'let-out-right': { bundled: true, least: 2, mirrorOf: 'let-out' },
  'take-in': { bundled: true, least: 2, tie: takeIn },
  'take-in-right': { bundled: true, least: 2, mirrorOf: 'take-in' },
  'lone-string': { bundled: false, tie: () => loneString },
  'side-fold': { bundled: false, tie: () => sideFold },
  'square-first-half': { bundled: true, tie: squareFirstHalf },
  'square-second-half': { bundled: true, mirrorOf: 'square-first-half' },
  'square-knot': { bundled: true, tie: squareKnot },
  'square-spiral': { bundled: true, tie: squareSpiral },
  'backward-forward': { bundled: true, mirrorOf: 'forward-backward' },
};

/** The craft, section 3: more strings than these no longer pass the ring or the knot. */
const MOST_STRANDS = 8;

/** How many strings a knot may be tied round, both ends included: [1, 1] where that is not the maker's to choose. */
export function basesFor(knot: KnotName): readonly [least: number, most: number] {
  const { bundled, least = 1 } = knots[knot];
  return bundled ? [least, MOST_STRANDS] : [1, 1];
}
