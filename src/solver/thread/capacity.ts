import { measureProblem, type Range, type Refusal, refuse } from '../problem.ts';
import { columnsOn } from './columns.ts';
import type { Spread } from './figure.ts';
import { PITCHES } from './thread.ts';

export const BAR_WIDTHS: Range = { low: 1, high: 1000 };

export interface CapacityInput {
  /** Inner width of the bar in mm, 1 to 1000. */
  readonly barWidth: number;
  /** mm, 0.1 to 100 each; low ≤ likely ≤ high. */
  readonly columnPitch: Spread;
}

/**
 * How many knotted columns the bar takes, ⌊bar width ÷ column pitch⌋, as a range (craft, section 9).
 * The widest pitch gives the low end. The trial row decides.
 *
 * @returns strings, which may be 0 or 1 on a very short bar; or a problem for a bar outside 1 to 1000 mm or
 *   pitches that are no range.
 */
export function capacityRange(input: CapacityInput): ({ readonly ok: true } & Spread) | Refusal {
  const { barWidth, columnPitch } = input ?? {};
  const problem =
    measureProblem('barWidth', barWidth, BAR_WIDTHS) ??
    measureProblem('columnPitch', columnPitch?.low, PITCHES) ??
    measureProblem('columnPitch', columnPitch?.likely, { low: columnPitch?.low, high: PITCHES.high }) ??
    measureProblem('columnPitch', columnPitch?.high, { low: columnPitch?.likely, high: PITCHES.high });
  if (problem) return refuse(problem);
  return {
    ok: true,
    low: columnsOn(barWidth, columnPitch.high),
    likely: columnsOn(barWidth, columnPitch.likely),
    high: columnsOn(barWidth, columnPitch.low),
  };
}
