import type { Spread } from './figure.ts';
import type { ThreadKind } from './thread.ts';

/**
 * Diameter of the smallest circle round n circles of unit diameter, n = 0 to 8: the published optima of
 * packing equal circles in a circle (craft, section 9).
 */
const SMALLEST_CIRCLE = [0, 1, 2, 2.155, 2.414, 2.701, 3, 3, 3.305] as const;

/** How far a bundle of strands is pressed together, as a part of its round diameter (craft, section 9). */
export const FLATTENING: Readonly<Record<ThreadKind, Spread>> = {
  soft: { low: 0.65, likely: 0.8, high: 1 },
  firm: { low: 0.9, likely: 1, high: 1.1 },
};

/**
 * K(n): the diameter of a round core of n strands, in strand diameters. Beyond eight strands 1.15 √n, which
 * is within 5 % (craft, section 9).
 *
 * @param strands a whole number from 0; anything else counts as no strand, which gives 0.
 */
export function coreDiameter(strands: number): number {
  if (!Number.isInteger(strands) || strands < 0) return 0;
  return SMALLEST_CIRCLE[strands] ?? 1.15 * Math.sqrt(strands);
}

/** Diameter in mm of a core of n strands of this cord, as it lies flattened in a knot. */
export function coreSpread(
  strands: number,
  { diameter, kind }: { readonly diameter: number; readonly kind: ThreadKind },
): Spread {
  const round = diameter * coreDiameter(strands);
  const flattening = FLATTENING[kind];
  return { low: round * flattening.low, likely: round * flattening.likely, high: round * flattening.high };
}
