import { coreSpread } from './core.ts';
import { type Figure, figureOf, measuredFigure } from './figure.ts';
import type { Pitches } from './pitch.ts';
import type { ReadThread } from './thread.ts';

/** mm of leading string in one half hitch round a core: one turn, climbing by its own thickness (craft, section 9). */
export const halfHitchLength = (core: number, diameter: number): number =>
  Math.hypot(Math.PI * (core + diameter), diameter);

function estimated(strands: number, thread: ReadThread, column: Figure): Figure {
  const core = coreSpread(strands, thread);
  // Every knot of the four is two half hitches.
  return figureOf('estimate', (bound) => 2 * halfHitchLength(core[bound], thread.diameter) + column[bound]);
}

/**
 * mm of leading string in one knot over `strands` strands, with its way to the next column (craft, section 9).
 * A length measured on single bases replaces the estimate there; over a bundle it grows as the estimate does.
 */
export function knotLength(strands: number, thread: ReadThread, { column }: Pitches): Figure {
  const estimate = estimated(strands, thread, column);
  const { perKnot } = thread.measured;
  if (typeof perKnot !== 'number') return estimate;
  if (strands === 1) return measuredFigure(perKnot);
  const single = estimated(1, thread, column);
  return figureOf('measured', (bound) => (perKnot * estimate[bound]) / single[bound]);
}
