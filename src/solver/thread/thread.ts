import { choiceProblem, measureProblem, type Problem } from '../problem.ts';

/** Soft: floss and other thread that flattens. Firm: waxed or tightly laid cord. */
export type ThreadKind = 'soft' | 'firm';
export const THREAD_KINDS = ['soft', 'firm'] as const satisfies readonly ThreadKind[];

/** Figures of a swatch tied with the learner's own thread and hand; what is there replaces the estimate. */
export interface Measured {
  /** mm from one knotted column to the next, 0.1 to 100. */
  readonly columnPitch?: number | undefined;
  /** mm from one row to the next, 0.1 to 100. */
  readonly rowPitch?: number | undefined;
  /** mm of leading string in one knot on a single base, with its way to the next, 0.5 to 500. */
  readonly perKnot?: number | undefined;
  /** Seconds for one knot, 0.5 to 600. */
  readonly secondsPerKnot?: number | undefined;
}

export interface Thread {
  /** mm, 0.2 to 10: ten turns side by side round a pencil, divided by ten. */
  readonly diameter: number;
  readonly kind: ThreadKind;
  /** Thickness of the ring's bar in mm, 0.5 to 20; 2 when left out. */
  readonly barThickness?: number | undefined;
  /** Length of a working length of leading string in mm, 300 to 20 000; 2000 (a card's length) when left out. */
  readonly workingLength?: number | undefined;
  readonly measured?: Measured | undefined;
}

/** A thread with nothing left out. */
export interface ReadThread {
  readonly diameter: number;
  readonly kind: ThreadKind;
  readonly barThickness: number;
  readonly workingLength: number;
  readonly measured: Measured;
}

export const DIAMETERS = { low: 0.2, high: 10 } as const;
export const BAR_THICKNESSES = { low: 0.5, high: 20 } as const;
export const WORKING_LENGTHS = { low: 300, high: 20_000 } as const;
export const PITCHES = { low: 0.1, high: 100 } as const;
export const LENGTHS_PER_KNOT = { low: 0.5, high: 500 } as const;
export const SECONDS_PER_KNOT = { low: 0.5, high: 600 } as const;

const MEASURED_RANGES = {
  columnPitch: PITCHES,
  rowPitch: PITCHES,
  perKnot: LENGTHS_PER_KNOT,
  secondsPerKnot: SECONDS_PER_KNOT,
} as const satisfies Record<keyof Measured, { low: number; high: number }>;

/** A problem when a measured figure is there and not a number in its range, else null. */
export function measuredProblem(measured: Measured | null | undefined): Problem | null {
  for (const field of ['columnPitch', 'rowPitch', 'perKnot', 'secondsPerKnot'] as const) {
    const value = measured?.[field];
    const bad = value === undefined || value === null ? null : measureProblem(field, value, MEASURED_RANGES[field]);
    if (bad) return bad;
  }
  return null;
}

/** A problem when diameter or kind of a thread is missing or out of range, else null. */
export const cordProblem = (thread: Pick<Thread, 'diameter' | 'kind'> | null | undefined): Problem | null =>
  measureProblem('diameter', thread?.diameter, DIAMETERS) ?? choiceProblem('kind', thread?.kind, THREAD_KINDS);

/** The thread with its defaults filled in, or what is wrong with it. */
export function readThread(
  thread: Thread | null | undefined,
): { readonly ok: true; readonly thread: ReadThread } | { readonly ok: false; readonly problem: Problem } {
  const barThickness = thread?.barThickness ?? 2;
  const workingLength = thread?.workingLength ?? 2000;
  const problem =
    cordProblem(thread) ??
    measureProblem('barThickness', barThickness, BAR_THICKNESSES) ??
    measureProblem('workingLength', workingLength, WORKING_LENGTHS) ??
    measuredProblem(thread?.measured);
  if (problem || !thread)
    return { ok: false, problem: problem ?? { code: 'not-a-number', field: 'diameter', values: DIAMETERS } };
  return {
    ok: true,
    thread: {
      diameter: thread.diameter,
      kind: thread.kind,
      barThickness,
      workingLength,
      measured: thread.measured ?? {},
    },
  };
}
