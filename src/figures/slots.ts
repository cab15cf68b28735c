/** A range of slots that is left out, its first slot and the first one after it. */
export type Cut = readonly [from: number, to: number];

export interface Slots {
  readonly pitch: number;
  /** The left edge of a slot. */
  readonly edge: (slot: number) => number;
  /** The middle of a slot. */
  readonly mid: (slot: number) => number;
  /** Whether a slot is drawn. */
  readonly shown: (slot: number) => boolean;
  /** Where each cut is. */
  readonly tears: readonly number[];
}

/** A cut takes the room of this many slots. */
export const CUT = 2;

/** Slots saved between `from` and `to` by the cuts that lie there. */
export const saved = (cuts: readonly Cut[], from: number, to: number): number =>
  cuts.reduce((sum, [a, b]) => (a >= from && b <= to ? sum + b - a - CUT : sum), 0);

/** Slots from `low` to `high` (the first one after) side by side, centred across a drawing. */
export function slots(low: number, high: number, cuts: readonly Cut[], pitch: number, across: number): Slots {
  const origin = (across - (high - low - saved(cuts, low, high)) * pitch) / 2;
  const edge = (slot: number): number => origin + (slot - low - saved(cuts, low, slot)) * pitch;
  return {
    pitch,
    edge,
    mid: (slot) => edge(slot) + pitch / 2,
    shown: (slot) => cuts.every(([from, to]) => slot < from || slot >= to),
    tears: cuts.map(([from]) => edge(from) + (CUT * pitch) / 2),
  };
}
