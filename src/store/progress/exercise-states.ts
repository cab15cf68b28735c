import type { ProgressEvent } from './event.ts';

export interface ExerciseState {
  /** Sets of figures it was tried with. */
  readonly seeds: ReadonlySet<string>;
  /** Whether it was right with any of them. */
  readonly solved: boolean;
  /** Moment of the last try, in ms since 1970. */
  readonly last: number;
}

/** How far each exercise has got; one that was never tried is missing. */
export function exerciseStates(events: readonly ProgressEvent[]): ReadonlyMap<string, ExerciseState> {
  const states = new Map<string, ExerciseState>();
  for (const event of events) {
    if (event.act !== 'tried') continue;
    const before = states.get(event.exercise);
    states.set(event.exercise, {
      seeds: new Set([...(before?.seeds ?? []), event.seed]),
      solved: event.outcome === 'right' || before?.solved === true,
      last: event.at,
    });
  }
  return states;
}
