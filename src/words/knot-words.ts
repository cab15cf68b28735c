import type { Knot } from '../solver/piece.ts';

/** Every knot of the craft: the four of a row, and those at the ring and at the end. */
export type KnotName = Knot | 'larks-head' | 'lone-string' | 'square-knot';

interface KnotWords {
  readonly name: string;
  /** How it is tied, in a line. */
  readonly how: string;
}

const KNOTS: Readonly<Record<KnotName, KnotWords>> = {
  forward: {
    name: 'forward knot',
    how: 'Two forward half hitches. The leading string comes from the left and ends on the right.',
  },
  backward: {
    name: 'backward knot',
    how: 'Two backward half hitches. The leading string comes from the right and ends on the left.',
  },
  'forward-backward': {
    name: 'forward-backward knot',
    how: 'One forward half hitch, then one backward. The leading string comes from the left and goes back to the left.',
  },
  'backward-forward': {
    name: 'backward-forward knot',
    how: 'One backward half hitch, then one forward. The leading string comes from the right and goes back to the right.',
  },
  'larks-head': {
    name: 'lark’s head',
    how: 'Hang the loop of a fold down behind the bar. Bring both ends down in front of the bar and through the loop.',
  },
  'lone-string': {
    name: 'lone string',
    how: 'Two turns of one single string round the bar, each over its own earlier stroke. The tail stays at the back.',
  },
  'square-knot': {
    name: 'square knot',
    how: 'Left string over the core and under the right string, right string under the core and up through the left loop. Then the mirror image.',
  },
};

export const knotName = (knot: KnotName): string => KNOTS[knot].name;
export const knotHow = (knot: KnotName): string => KNOTS[knot].how;
