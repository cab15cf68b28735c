import type { Tried } from '../../../src/store/progress/event.ts';
import type { Kept } from '../../../src/store/progress/log.ts';
import type { ToldNote } from '../../../src/store/progress/notes.ts';

export const DAY = 86_400_000;
/** A Monday in March, six in the evening by UTC. */
export const MONDAY = Date.UTC(2026, 2, 2, 18);

let count = 0;

/** A first try at widening, right and without help, unless something else is said. */
export function tried(at: number, change: Partial<Tried> = {}): Kept & Tried {
  count += 1;
  return {
    id: `try-${count}`,
    at,
    act: 'tried',
    lesson: 'widening',
    exercise: 'full-width',
    kind: 'number',
    level: 'alone',
    seed: String(count),
    skills: ['widening'],
    outcome: 'right',
    aided: false,
    day: new Date(at).toISOString().slice(0, 10),
    ...change,
  };
}

/** What the page of a lesson jots down of an exercise about the fitting sum. */
export const toldNote = (change: Partial<ToldNote> = {}): ToldNote => ({
  act: 'told',
  lesson: 'the-fitting-sum',
  ofLesson: ['fitting-sum'],
  zone: 0,
  exercise: 'sum-first',
  kind: 'sum',
  level: 'alone',
  seed: '7',
  problem: {
    kind: 'sum',
    width: 26,
    capacity: 16,
    oddMethod: null,
    startSide: 'left',
    fields: ['spare', 'onBar'],
  },
  outcome: 'right',
  aided: false,
  ...change,
});
