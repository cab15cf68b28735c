import { measureProblem, type Problem, type Range, type Refusal, refuse, wholeNumberProblem } from '../problem.ts';
import { eachOf } from './columns.ts';
import { type Measured, measuredProblem } from './thread.ts';

/** A swatch as it was tied and measured. Whatever was not measured is left out (or null). */
export interface Swatch {
  /** Knots side by side, 1 to 400. */
  readonly columns?: number | null | undefined;
  /** mm they take, 0.5 to 5000. */
  readonly width?: number | null | undefined;
  /** Rows, 1 to 1000. */
  readonly rows?: number | null | undefined;
  /** mm they take, 0.5 to 5000. */
  readonly height?: number | null | undefined;
  /** Knots for which string and time were taken, 1 to 100 000. */
  readonly knots?: number | null | undefined;
  /** mm of leading string they used, 1 to 1 000 000. */
  readonly used?: number | null | undefined;
  /** Seconds they took, 1 to 1 000 000. */
  readonly seconds?: number | null | undefined;
}

const SIZES: Range = { low: 0.5, high: 5000 };
const AMOUNTS: Range = { low: 1, high: 1_000_000 };

type Check = (field: string, value: unknown, range: Range) => Problem | null;
const PARTS: Readonly<Record<keyof Swatch, readonly [check: Check, range: Range]>> = {
  columns: [wholeNumberProblem, { low: 1, high: 400 }],
  width: [measureProblem, SIZES],
  rows: [wholeNumberProblem, { low: 1, high: 1000 }],
  height: [measureProblem, SIZES],
  knots: [wholeNumberProblem, { low: 1, high: 100_000 }],
  used: [measureProblem, AMOUNTS],
  seconds: [measureProblem, AMOUNTS],
};

const isThere = (value: number | null | undefined): value is number => value !== undefined && value !== null;

/**
 * Turns a measured swatch into the figures that replace estimates (craft, section 9). A figure whose parts
 * are not all there is left out.
 *
 * @returns mm per column, mm per row, mm of leading string per knot, seconds per knot; or a problem for the
 *   first part that is out of range, or for a figure that no cord gives (its field names the figure).
 */
export function calibrate(swatch: Swatch): ({ readonly ok: true } & Measured) | Refusal {
  const { columns, width, rows, height, knots, used, seconds } = swatch ?? {};
  const parts = { columns, width, rows, height, knots, used, seconds };
  for (const field of Object.keys(PARTS) as (keyof Swatch)[]) {
    const [check, range] = PARTS[field];
    const problem = isThere(parts[field]) ? check(field, parts[field], range) : null;
    if (problem) return refuse(problem);
  }
  const measured: Measured = {
    ...(isThere(columns) && isThere(width) ? { columnPitch: eachOf(columns, width) } : {}),
    ...(isThere(rows) && isThere(height) ? { rowPitch: eachOf(rows, height) } : {}),
    ...(isThere(knots) && isThere(used) ? { perKnot: used / knots } : {}),
    ...(isThere(knots) && isThere(seconds) ? { secondsPerKnot: seconds / knots } : {}),
  };
  const problem = measuredProblem(measured);
  return problem ? refuse(problem) : { ok: true, ...measured };
}
