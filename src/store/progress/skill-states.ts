import { LEVELS, type Level } from '../../solver/exercises/level.ts';
import { SKILLS, type Skill } from '../../solver/exercises/skills.ts';
import type { ProgressEvent, Stamp, Tried } from './event.ts';

/** Days with a right first try after which a skill is steady. */
export const DAYS_TO_STEADY = 3;

/**
 * - `new`: never tried
 * - `learning`: tried
 * - `steady`: a first try was right, with no help, on three different days of the learner's calendar; it stays so
 */
export interface SkillState {
  readonly state: 'new' | 'learning' | 'steady';
  /** Days on which a first try was right. */
  readonly rightDays: number;
  /** What the next exercise of it should be like. */
  readonly level: Level;
}

/** Whether a first try shows that its skill was there: right, and with no help. */
export const isRightAtOnce = ({ aided, outcome }: Tried): boolean => !aided && outcome === 'right';

/** The tries that tell something of a skill: the first with each set of figures of an exercise, on any device. */
export function firstTries(events: readonly ProgressEvent[], skill: Skill): readonly (Tried & Stamp)[] {
  const met = new Set<string>();
  const tries: (Tried & Stamp)[] = [];
  for (const event of events) {
    if (event.act !== 'tried' || !event.skills.includes(skill)) continue;
    const figures = `${event.exercise} ${event.seed}`;
    if (!met.has(figures)) tries.push(event);
    met.add(figures);
  }
  return tries;
}

/**
 * One level on from the one that was right, and one back from the one that was not. It never falls behind a level that
 * was right since; a try at a higher level than asked for counts as that level.
 */
function levelAfter(tries: readonly Tried[]): Level {
  let rung = 0;
  for (const each of tries) {
    const at = LEVELS.indexOf(each.level);
    rung = isRightAtOnce(each) ? Math.max(rung, at) + 1 : Math.min(rung, at) - 1;
    rung = Math.min(LEVELS.length - 1, Math.max(0, rung));
  }
  return LEVELS[rung] ?? 'worked';
}

export function skillState(events: readonly ProgressEvent[], skill: Skill): SkillState {
  const tries = firstTries(events, skill);
  const rightDays = new Set(tries.filter(isRightAtOnce).map(({ day }) => day)).size;
  return {
    state: tries.length === 0 ? 'new' : rightDays >= DAYS_TO_STEADY ? 'steady' : 'learning',
    rightDays,
    level: levelAfter(tries),
  };
}

export const skillStates = (events: readonly ProgressEvent[]): Readonly<Record<Skill, SkillState>> =>
  Object.fromEntries(SKILLS.map((skill) => [skill, skillState(events, skill)])) as Record<Skill, SkillState>;

/** The skills a learner said were met elsewhere, and did not take back. */
export function chosenSkills(events: readonly ProgressEvent[]): ReadonlySet<Skill> {
  const chosen = new Set<Skill>();
  for (const event of events) {
    if (event.act !== 'chosen') continue;
    if (event.on) chosen.add(event.skill);
    else chosen.delete(event.skill);
  }
  return chosen;
}
