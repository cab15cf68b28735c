import { readdirSync, readFileSync } from 'node:fs';
import { exerciseBank } from '../../src/entries/exercise-bank.ts';
import { readLesson } from '../../src/entries/mistakes.ts';
import { readFileName } from '../../src/entries/slug.ts';
import type { BankEntry } from '../../src/store/progress/practice.ts';

const folder = new URL('../../content/lessons/', import.meta.url);

/** The lessons as they are written: their names, their texts and their skills. */
export const LESSONS = readdirSync(folder)
  .filter((name) => name.endsWith('.mdx'))
  .sort()
  .map((name) => {
    const body = readFileSync(new URL(name, folder), 'utf8');
    const read = readLesson(body);
    if (!read.ok) throw new Error(`${name} can’t be read`);
    return { id: readFileName(name)?.slug ?? name, body, data: read.lesson };
  });

/** Every exercise of the workbook, as practice asks it. */
export const bank = exerciseBank(LESSONS) as readonly BankEntry[];
export const LESSON_SKILLS = Object.fromEntries(LESSONS.map(({ id, data }) => [id, data.skills]));
