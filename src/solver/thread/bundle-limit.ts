import { measureProblem, type Range, type Refusal, refuse } from '../problem.ts';
import { wholeDown } from './figure.ts';
import { DIAMETERS } from './thread.ts';

export const GAPS: Range = { low: 0.1, high: 200 };
/** More strands than this make one knot too thick to stand as one cell, however wide the gap (craft, section 3). */
const MOST_STRANDS = 8;
/** The part of the gap's square that round strands really fill. */
const FILLED = 0.7;

export interface BundleLimitInput {
  /** mm between the end of the bar and the ring, 0.1 to 200. */
  readonly gap: number;
  /** Cord diameter in mm, 0.2 to 10. */
  readonly diameter: number;
}

/**
 * The most strands of a side bundle: what passes the gap between the bar's end and the ring, about
 * 0.7 · (gap ÷ d)², and 8 at most (craft, section 3).
 *
 * @returns strands, 0 to 8 (below 2 no bundle passes); or a problem for a figure out of range.
 */
export function bundleLimit(input: BundleLimitInput): { readonly ok: true; readonly limit: number } | Refusal {
  const { gap, diameter } = input ?? {};
  const problem = measureProblem('gap', gap, GAPS) ?? measureProblem('diameter', diameter, DIAMETERS);
  if (problem) return refuse(problem);
  return { ok: true, limit: Math.min(MOST_STRANDS, wholeDown(FILLED * (gap / diameter) ** 2)) };
}
