import type { Kept, Log } from './log.ts';
import type { DueTimes, Standing } from './standing.ts';

/**
 * What was done in each lesson, as words with spaces. A lesson is done when it was read to its end (`read`) and
 * something in it was done (`worked`): an exercise was right, or a check at the bench was ticked. Scrolling alone is not
 * enough. Done stays done.
 */
function lessonStates(events: readonly Kept[]): Readonly<Record<string, string>> {
  const states = new Map<string, Set<string>>();
  for (const { act, lesson, outcome, on } of events) {
    if (typeof lesson !== 'string') continue;
    const words = states.get(lesson) ?? new Set(['opened']);
    states.set(lesson, words);
    if (act === 'read') words.add('read');
    if (outcome === 'right' || (act === 'ticked' && on === true)) words.add('worked');
  }
  return Object.fromEntries([...states].map(([lesson, words]) => [lesson, [...words].join(' ')]));
}

export const isDone = (words: string | undefined): boolean => /read/.test(words ?? '') && /worked/.test(words ?? '');

/** The checks that are ticked now, by lesson: of each the last change counts. */
function ticksIn(events: readonly Kept[]): Readonly<Record<string, readonly string[]>> {
  const ticks: Record<string, readonly string[]> = {};
  for (const { act, lesson, check, on } of events) {
    if (act !== 'ticked' || typeof lesson !== 'string' || typeof check !== 'string') continue;
    const others = (ticks[lesson] ?? []).filter((one) => one !== check);
    ticks[lesson] = on === true ? [...others, check] : others;
  }
  return ticks;
}

/** All that pages show before anything is drawn, from the log and what the scheduler says. */
export const standingOf = ({ events }: Log, due: DueTimes): Standing => ({
  lessons: lessonStates(events),
  ticks: ticksIn(events),
  due,
});
