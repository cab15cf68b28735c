/** Slips of the knots themselves: which one is tied, and round what. */
export const KNOT_SLIPS = [
  'direction-not-swapped',
  'ordinary-knot-on-bundle',
  'turning-knots-swapped',
  'turning-knot-on-edge-strings',
] as const;
export type KnotSlip = (typeof KNOT_SLIPS)[number];
