import { skillsOf } from '../../solver/exercises/skills.ts';
import { type Device, keepText, namesOnShelf, readText } from '../safe-storage.ts';
import { dayAt } from './day.ts';
import type { Happening, Stamp } from './event.ts';
import { isKept, type Kept } from './log.ts';
import { NOTES, type Note, type ToldNote } from './notes.ts';
import type { Progress } from './progress.ts';

/** What a note says of an exercise, as it stands in the log: with the skills that its figures asked for. */
export function happeningOf(told: ToldNote, at: number): Happening | null {
  const { lesson, ofLesson, exercise, kind, level, seed, problem, outcome, slips, aided = false, zone } = told;
  if (outcome === undefined) return slips ? { act: 'slipped', exercise, seed, slips } : null;
  const skills = skillsOf(kind, problem, ofLesson);
  return { act: 'tried', lesson, exercise, kind, level, seed, skills, outcome, aided, day: dayAt(at, zone) };
}

function eventOf({ id, at, ...note }: Note & Stamp): Kept | null {
  const happening = note.act === 'told' ? happeningOf(note, at) : note;
  return happening && { ...happening, id, at };
}

/** The events in the notes of a page; null where the text can't be read. */
function eventsIn(text: string): readonly Kept[] | null {
  try {
    const { notes } = JSON.parse(text) as { notes: readonly (Note & Stamp)[] };
    return notes.filter(isKept).flatMap((note) => eventOf(note as Note & Stamp) ?? []);
  } catch {
    return null;
  }
}

/**
 * Brings the notes of all pages into the log, and takes away those that are safe in it. Notes that can't be read, or
 * that the log can't take, stay where they are.
 */
export function gather(progress: Progress, device?: Device): void {
  const found = namesOnShelf(NOTES, device).flatMap((name) => {
    const read = readText(name, device);
    const text = 'text' in read ? read.text : null;
    const events = text === null ? null : eventsIn(text);
    return events ? [{ name, text, events }] : [];
  });
  if (found.length === 0) return;
  const { kept } = progress.add({ events: found.flatMap(({ events }) => events) });
  if (!kept) return;
  for (const { name, text } of found) {
    const now = readText(name, device);
    // A page that jotted something down in the meantime keeps its notes for the next time.
    if ('text' in now && now.text === text) keepText(name, null, device);
  }
}
