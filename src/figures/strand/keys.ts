import type { Path } from './point.ts';

/** Named stopping points on the way through a knot; those with `again` belong to its second half. */
export type Stop =
  | 'at-rest'
  | 'laid-over'
  | 'passed-behind'
  | 'brought-through'
  | 'laid-over-again'
  | 'passed-behind-again'
  | 'brought-through-again'
  | 'drawn-up';

/** A moment of the tying: one control line for every cord that moves, and its name where it has one. */
export interface Key {
  readonly lines: readonly Path[];
  readonly stop?: Stop;
  /** Share of the time that the way to this key takes; 1 where nothing is said. */
  readonly pace?: number;
}

/** A key of a tying in which one cord moves. */
export const key = (line: Path, stop?: Stop, pace?: number): Key => keys([line], stop, pace);

/** A key of a tying in which several do. */
export const keys = (lines: readonly Path[], stop?: Stop, pace?: number): Key => ({
  lines,
  ...(stop ? { stop } : {}),
  ...(pace ? { pace } : {}),
});
