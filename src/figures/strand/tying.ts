import type { Spread } from './bundle.ts';
import type { Key, Stop } from './keys.ts';
import type { Path } from './point.ts';
import type { Tightening } from './tighten.ts';

export type Role = 'leading' | 'base' | 'bar' | 'resting' | 'tying' | 'freed';

/** One cord of a figure, apart from where it runs. */
export interface Cord {
  readonly id: string;
  readonly role: Role;
}

export interface MovingCord extends Cord {
  /** Which point of the cord its length is measured from: its first, or both ways from the middle of a fold. */
  readonly from: 'start' | 'middle';
  /** The control point where it is held while it is drawn up; what comes before stays as it is. Default the first. */
  readonly heldAt?: number;
}

export interface StillCord extends Cord {
  readonly path: Path;
  /** Radius in d; 0.5 unless it is a bar. */
  readonly radius?: number;
}

/** Everything a knot needs to be drawn at any moment: who moves how, what stays, and how it is drawn up. */
export interface Tying {
  readonly moving: readonly MovingCord[];
  readonly still: readonly StillCord[];
  /** Key moments up to the loose knot, which is the last of them. */
  readonly keys: (free: FreeEnd) => readonly Key[];
  /** What the cords are drawn up against; null where nothing is drawn up. */
  readonly drawUp: Omit<Tightening, 'cords'> | null;
  /** Lines are laid and drawn up round one cord and then widened by this; 0 where they run as they are. */
  readonly spread: Spread;
  /** Laid as if the base hung, then turned a quarter, so that left becomes down: for knots on a bar. */
  readonly turned?: true;
  readonly frame: Frame;
}

/** A cord's length, and how much of its end is still to come through, in d: the bight that follows it is that big at first. */
export interface FreeEnd {
  /** The whole cord, ends included. */
  readonly length: number;
  /** Once the cord is laid over the base, */
  readonly first: number;
  /** and once it is laid over again for a second half. */
  readonly again: number;
}

export interface Frame {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

export interface NamedMoment {
  readonly name: Stop;
  /** 0 to 1, both included. */
  readonly t: number;
}
