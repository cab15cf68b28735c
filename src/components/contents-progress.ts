import type { Skill } from '../solver/exercises/skills.ts';
import { STANDING_CHANGED } from './standing-paint.ts';

/** The scheduler is fetched only where there is something to schedule, once the list stands there. */
async function refresh(): Promise<void> {
  const lines = [...document.querySelectorAll<HTMLElement>('.contents [data-of]')];
  const lessons = Object.fromEntries(
    lines.map(({ dataset: { of = '', skills = '' } }) => [of, skills.split(' ') as Skill[]]),
  );
  const { refreshStanding } = await import('../store/progress/refresh.ts');
  refreshStanding(lessons);
  dispatchEvent(new Event(STANDING_CHANGED));
}

if (document.querySelector('.contents [data-standing]:not([data-standing=""])')) void refresh();
