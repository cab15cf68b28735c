import { createEmptyCard, fsrs, Rating } from 'ts-fsrs';
import { SKILLS, type Skill } from '../../solver/exercises/skills.ts';
import type { ProgressEvent } from './event.ts';
import { chosenSkills, firstTries, isRightAtOnce } from './skill-states.ts';
import type { DueTimes } from './standing.ts';

/** Default settings: how reviews are spaced matters far less than that they are. Nothing in them is left to chance. */
const scheduler = fsrs();

/** Which skills the lessons practise, by the lesson's name. */
export type LessonSkills = Readonly<Record<string, readonly Skill[]>>;

/** When a skill was first met: tried, named by the learner, or at the end of a lesson about it; null where it was not. */
function metAt(events: readonly ProgressEvent[], skill: Skill, lessons: LessonSkills): number | null {
  const chosen = chosenSkills(events).has(skill);
  const met = events.find(
    (event) =>
      (event.act === 'tried' && event.skills.includes(skill)) ||
      (event.act === 'read' && lessons[event.lesson]?.includes(skill)) ||
      (chosen && event.act === 'chosen' && event.skill === skill),
  );
  return met?.at ?? null;
}

/**
 * When each skill that was met is next due, in ms since 1970, by FSRS over all first tries: right without help is
 * “good”, everything else “again”. What was met and never tried is due since then. The same events give the same times
 * on every device.
 */
export function dueTimes(events: readonly ProgressEvent[], lessons: LessonSkills): DueTimes {
  const due: Partial<Record<Skill, number>> = {};
  for (const skill of SKILLS) {
    const met = metAt(events, skill, lessons);
    if (met === null) continue;
    let card = createEmptyCard(new Date(met));
    for (const tried of firstTries(events, skill))
      card = scheduler.next(card, new Date(tried.at), isRightAtOnce(tried) ? Rating.Good : Rating.Again).card;
    due[skill] = card.due.getTime();
  }
  return due;
}
