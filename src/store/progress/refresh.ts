import { gather } from './gather.ts';
import { standingOf } from './lesson-states.ts';
import { thisProgress } from './progress.ts';
import { eventsIn } from './read-event.ts';
import { dueTimes, type LessonSkills } from './schedule.ts';
import { keepStanding } from './standing.ts';
import { askToStay } from './stay.ts';

/** Gathers the notes, works out how far each lesson has got and what is due, and keeps that for the next page. */
export function refreshStanding(lessons: LessonSkills): void {
  gather(thisProgress);
  const { value, keeping } = thisProgress.load();
  const events = eventsIn(value);
  keepStanding(standingOf(value, dueTimes(events, lessons)));
  if (keeping.kept && events.some(({ act }) => act === 'tried')) askToStay();
}
