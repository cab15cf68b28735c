import { type Refusal, refuse } from '../problem.ts';
import { type Figure, figureOf, measuredFigure, type Spread } from './figure.ts';
import { cordProblem, type Measured, measuredProblem, type ThreadKind } from './thread.ts';

/** Column pitch in cord diameters (craft, section 9): knots of firm cord stand wider than knots of floss. */
const COLUMN_PITCH: Readonly<Record<ThreadKind, Spread>> = {
  soft: { low: 1.8, likely: 2, high: 2.3 },
  firm: { low: 2.4, likely: 2.7, high: 3 },
};
/** Row pitch in cord diameters (craft, section 9), for both kinds. */
const ROW_PITCH: Spread = { low: 1.8, likely: 2.1, high: 2.4 };

export interface PitchInput {
  /** mm, 0.2 to 10. */
  readonly diameter: number;
  readonly kind: ThreadKind;
  readonly measured?: Measured | undefined;
}

export interface Pitches {
  /** mm from one column to the next. */
  readonly column: Figure;
  /** mm from one row to the next. */
  readonly row: Figure;
}

/** Pitches of a thread already known to be good. */
export function pitchesOf({ diameter, kind, measured }: PitchInput): Pitches {
  const { columnPitch, rowPitch } = measured ?? {};
  const times = (factor: Spread): Figure => figureOf('estimate', (bound) => factor[bound] * diameter);
  return {
    column: typeof columnPitch === 'number' ? measuredFigure(columnPitch) : times(COLUMN_PITCH[kind]),
    row: typeof rowPitch === 'number' ? measuredFigure(rowPitch) : times(ROW_PITCH),
  };
}

/**
 * How far apart columns and rows of knots stand (craft, section 9): factors of the cord's diameter until a
 * swatch is measured, then the swatch.
 *
 * @returns both pitches in mm, each with its source; or a problem for a diameter outside 0.2 to 10 mm, an
 *   unknown kind, or a measured pitch outside 0.1 to 100 mm.
 */
export function pitches(input: PitchInput): ({ readonly ok: true } & Pitches) | Refusal {
  const problem = cordProblem(input) ?? measuredProblem(input.measured);
  return problem ? refuse(problem) : { ok: true, ...pitchesOf(input) };
}
