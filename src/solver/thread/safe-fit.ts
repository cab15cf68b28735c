import { type FitInput, type FitResult, fitPiece } from '../fit.ts';
import type { Fit } from '../piece.ts';
import type { Spread } from './figure.ts';

export interface SafeFitInput extends Omit<FitInput, 'capacity'> {
  /** Strings, as `capacityRange` gives them: whole numbers, low ≤ likely ≤ high. */
  readonly capacity: Spread;
}

export interface SafeFit {
  readonly ok: true;
  /** The plan for the likely capacity. */
  readonly likely: Fit;
  /** Whether that plan can be tied on every capacity of the range. */
  readonly safe: boolean;
  /** The plan for the low capacity where `likely` is not safe, which may be that there is none; null where it is. */
  readonly low: FitResult | null;
}

/**
 * Whether the plan for the likely capacity is safe: no more strings on the bar than its low capacity takes
 * (bundles within the most are part of every fit). Where it is not, the plan for the low capacity stands
 * beside it (craft, section 9).
 *
 * @returns the plan or plans; or `fitPiece`'s problem with the likely capacity. A smaller capacity only makes
 *   bundles bigger, so where the likely one gives no plan the low one gives none either.
 */
export function safeFit(input: SafeFitInput): SafeFit | Extract<FitResult, { ok: false }> {
  const { capacity, ...rest } = input ?? {};
  const likely = fitPiece({ ...rest, capacity: capacity?.likely });
  if (!likely.ok) return likely;
  const safe = likely.fit.onBar <= capacity.low;
  return { ok: true, likely: likely.fit, safe, low: safe ? null : fitPiece({ ...rest, capacity: capacity.low }) };
}
