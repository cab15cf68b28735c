import type { KnotName } from './knots.ts';
import type { StrandModel } from './model.ts';
import { mirrored } from './point.ts';

const otherHand: Partial<Record<KnotName, KnotName>> = {
  forward: 'backward',
  backward: 'forward',
  'forward-backward': 'backward-forward',
  'backward-forward': 'forward-backward',
  'row-end-right': 'row-end-left',
  'row-end-left': 'row-end-right',
  'gathering-right': 'gathering-left',
  'gathering-left': 'gathering-right',
  'square-first-half': 'square-second-half',
  'square-second-half': 'square-first-half',
  'let-out': 'let-out-right',
  'let-out-right': 'let-out',
  'take-in': 'take-in-right',
  'take-in-right': 'take-in',
  'carry-behind': 'carry-behind-right',
  'carry-behind-right': 'carry-behind',
  'forward-half-hitch': 'backward-half-hitch',
  'backward-half-hitch': 'forward-half-hitch',
};

/** The knot that a left-handed maker ties with the same motion: forward and backward change places. */
export const mirrorKnot = (knot: KnotName): KnotName => otherHand[knot] ?? knot;

/** Left and right change places in a name, and strings are again counted from the left. */
export function mirrorId(id: string, strands: number): string {
  const counted = /^(base-)(\d+)$/.exec(id);
  if (counted) return `base-${strands + 1 - Number(counted[2])}`;
  return id.replace(/left|right/g, (side) => (side === 'left' ? 'right' : 'left'));
}

/**
 * The same figure seen in a mirror, in structure: every line, id, side and knot name. Depth stays, so over stays
 * over. Mirroring twice gives the figure back.
 */
export function mirrorModel<M extends Omit<StrandModel, 'crossings'>>(model: M): M {
  const bases = model.strands.filter(({ id }) => /^base-\d+$/.test(id)).length;
  return {
    ...model,
    knot: mirrorKnot(model.knot),
    strands: [...model.strands]
      .map((strand) => ({ ...strand, id: mirrorId(strand.id, bases), path: strand.path.map(mirrored) }))
      .sort((a, b) => model.order.indexOf(a.id) - model.order.indexOf(b.id)),
    frame: { ...model.frame, left: -model.frame.right, right: -model.frame.left },
  };
}
