import type { Skill } from '../../solver/exercises/skills.ts';
import { SLIPS_KEPT } from './compact.ts';
import type { ProgressEvent } from './event.ts';
import { firstTries, isRightAtOnce } from './skill-states.ts';

const DAY = 86_400_000;
/** What *lately* and *this week* mean, in ms. */
const LATELY = 28 * DAY;
const WEEK = 7 * DAY;
/** Right first tries of its skill after which a slip is no longer spoken of. */
export const TRIES_TO_MEND = 2;

/** A slip that came up lately. */
export interface SlipSeen {
  readonly slip: string;
  /** How often in the last seven days, and in the last four weeks; at most `SLIPS_KEPT`. */
  readonly week: number;
  readonly month: number;
  /** ms since 1970. */
  readonly last: number;
  /** The exercise and the skill it was made in, the last time. */
  readonly exercise: string;
  readonly skill: Skill;
}

/** The skill that a set of figures asked for foremost; null where it was never tried, as on another device. */
function skillOf(events: readonly ProgressEvent[], exercise: string, seed: string): Skill | null {
  for (const event of events)
    if (event.act === 'tried' && event.exercise === exercise && event.seed === seed) return event.skills[0] ?? null;
  return null;
}

/**
 * The slips of the last four weeks, the newest first. One is left out once its skill was right twice at the first try since.
 *
 * @param now ms since 1970
 */
export function recentSlips(events: readonly ProgressEvent[], now: number): readonly SlipSeen[] {
  const seen = new Map<string, SlipSeen>();
  for (const event of events) {
    if (event.act !== 'slipped' || event.at <= now - LATELY) continue;
    const skill = skillOf(events, event.exercise, event.seed);
    if (skill === null) continue;
    for (const slip of new Set(event.slips)) {
      const { week = 0, month = 0 } = seen.get(slip) ?? {};
      const isThisWeek = event.at > now - WEEK;
      seen.set(slip, {
        slip,
        week: Math.min(SLIPS_KEPT, week + (isThisWeek ? 1 : 0)),
        month: Math.min(SLIPS_KEPT, month + 1),
        last: event.at,
        exercise: event.exercise,
        skill,
      });
    }
  }
  const isMended = ({ skill, last }: SlipSeen): boolean =>
    firstTries(events, skill).filter((tried) => tried.at > last && isRightAtOnce(tried)).length >= TRIES_TO_MEND;
  return [...seen.values()].filter((slip) => !isMended(slip)).sort((one, other) => other.last - one.last);
}
