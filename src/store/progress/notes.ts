import type { Skill } from '../../solver/exercises/skills.ts';
import type { Keeping } from '../../words/storage-words.ts';
import { type Device, keepText } from '../safe-storage.ts';
import type { LessonMet, Stamp, Ticked } from './event.ts';
import { pageName } from './page-name.ts';
import type { Told } from './told.ts';

/** Begins the key of each page's notes; the page's own name follows. */
export const NOTES = 'evenfold.notes.';

/** What an exercise told, where it stands, and by how many minutes UTC is ahead of the device's clock. */
export interface ToldNote extends Told {
  readonly act: 'told';
  readonly lesson: string;
  readonly ofLesson: readonly Skill[];
  readonly zone: number;
}
export type Note = LessonMet | Ticked | ToldNote;

/**
 * What happens on the page of a lesson, jotted down as it is, so that a lesson needs hardly any script for it. Each page
 * that is opened has notes under a key of its own, which nobody else writes: two tabs can't overwrite each other.
 * Whoever reads the log gathers the notes into it first (`gather.ts`). A page whose notes were gathered writes all of
 * them again with its next one; each has an id, so it is in the log once.
 */
export function notesOn(device?: Device, now: () => number = Date.now): (note: Note) => Keeping {
  const page = pageName();
  const notes: (Note & Stamp)[] = [];
  return (note) => {
    notes.push({ ...note, id: `${page}-${notes.length}`, at: now() });
    return keepText(NOTES + page, JSON.stringify({ version: 1, notes }), device);
  };
}
