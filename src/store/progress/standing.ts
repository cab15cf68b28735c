import type { Skill } from '../../solver/exercises/skills.ts';
import { type Device, keepText, readText } from '../safe-storage.ts';

export const STANDING_KEY = 'evenfold.standing';

/** When each skill is next due, in ms since 1970. */
export type DueTimes = Readonly<Partial<Record<Skill, number>>>;

/**
 * What a page shows of the progress before anything is drawn; lines in the page itself read it
 * (`src/components/standing-paint.ts`). All of it can be worked out from the log, so nothing is lost when it goes.
 */
export interface Standing {
  /** What was done in each lesson, as words with spaces: `opened`, `read` to its end, `worked` in. */
  readonly lessons: Readonly<Record<string, string>>;
  /** The checks of each lesson that are ticked. */
  readonly ticks: Readonly<Record<string, readonly string[]>>;
  readonly due: DueTimes;
}

/** What is kept, with empty parts where there is nothing or it can't be read. */
export function loadStanding(device?: Device): Standing {
  const found = readText(STANDING_KEY, device);
  let kept: Partial<Standing> | null = null;
  try {
    kept = 'text' in found ? JSON.parse(found.text ?? '{}') : null;
  } catch {
    // It is worked out anew the next time the log is read.
  }
  return { lessons: {}, ticks: {}, due: {}, ...kept };
}

export const keepStanding = (standing: Standing, device?: Device): void => {
  keepText(STANDING_KEY, JSON.stringify(standing), device);
};
