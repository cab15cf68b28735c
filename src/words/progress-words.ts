import type { Level } from '../solver/exercises/contract.ts';
import { SKILLS } from '../solver/exercises/skills.ts';
import { capital, count, list, numberWord, times } from './numbers.ts';

/** How far a skill has got, in words that stand behind its name. */
export const SKILL_STATES = {
  new: 'not tried yet',
  learning: 'learning',
  steady: 'steady',
} as const;

/** What *steady* means, for those who meet the word. */
export const steadyMeans = (days: number): string =>
  `A skill is steady once your first try was right, with no hint, on ${numberWord(days)} different days.`;

/** When a slip is spoken of no more. */
export const slipsGo = (tries: number): string =>
  `A slip leaves this list once you were right ${times(tries)} at the first try in the same part of the craft.`;

/** How much of an exercise is left to the learner. */
export const LEVEL_NAMES: Readonly<Record<Level, string>> = {
  worked: 'a case worked through first',
  'half-worked': 'one step is left to you',
  alone: 'all steps are yours',
  mixed: 'any piece, odd numbers too',
};

/** When a skill comes up again; `days` is counted by the calendar, 0 for today, and `now` says that it is due. */
export function dueWords(days: number, now: boolean): string {
  if (now) return 'due now';
  if (days <= 0) return 'comes back later today';
  if (days === 1) return 'comes back tomorrow';
  if (days < 14) return `comes back in ${count(days, 'day')}`;
  if (days < 60) return `comes back in about ${count(Math.round(days / 7), 'week')}`;
  return `comes back in about ${count(Math.round(days / 30), 'month')}`;
}

/** What may stand in a field of an event. */
export type Expected =
  | 'act'
  | 'name'
  | 'text'
  | 'yes-or-no'
  | 'skill'
  | 'skills'
  | 'names'
  | 'level'
  | 'outcome'
  | 'day';

const WORKS: Readonly<Record<Expected, string>> = {
  act: 'One of opened, read, ticked, tried, slipped and chosen',
  name: 'A name in small letters and hyphens',
  text: 'Some text',
  'yes-or-no': 'One of true and false',
  skill: `One of ${list([...SKILLS], 'or')}`,
  skills: `A list of some of ${list([...SKILLS], 'or')}`,
  names: 'A list of names',
  level: 'One of worked, half-worked, alone and mixed',
  outcome: 'One of right and not-right',
  day: 'A day such as 2026-03-09',
};

/** The first field of an event that can't be read: its name, what stands there, and what would do. */
export interface EventMistake {
  readonly field: string;
  readonly stands: unknown;
  readonly works: Expected;
}

/**
 * Why a file was not taken. Lines, columns and entries count from 1.
 * - `too-long`: more characters than any learner's progress has
 * - `not-json`: it breaks off, or is no JSON; line and column where the browser says them
 * - `not-ours`: JSON, but no progress file
 * - `newer`: from a later version of the workbook
 * - `entry`: an event can't be read; without a mistake, its stamp is what is wrong
 * - `unreadable`: the browser could not open it
 */
export type FileProblem =
  | { readonly code: 'too-long' | 'not-ours' | 'unreadable' }
  | { readonly code: 'not-json'; readonly line: number | null; readonly column: number | null }
  | { readonly code: 'newer'; readonly version: number }
  | {
      readonly code: 'entry';
      readonly entry: number;
      readonly line: number | null;
      readonly mistake: EventMistake | null;
    };

const place = (line: number | null, column: number | null = null): string =>
  line === null ? '' : column === null ? ` in line ${line}` : ` in line ${line}, column ${column}`;

const stands = (value: unknown): string => {
  if (value === undefined) return 'is missing';
  const text = JSON.stringify(value).replaceAll(/"([^"]*)"/g, '“$1”');
  return `says ${text.length > 60 ? `${text.slice(0, 60)}…` : text}`;
};

function reason(problem: FileProblem): string {
  switch (problem.code) {
    case 'too-long':
      return 'This file is too long to be a progress file.';
    case 'not-ours':
      return 'This is not a progress file of the workbook.';
    case 'unreadable':
      return 'Your browser could not open this file.';
    case 'not-json':
      return `This file is damaged or breaks off${place(problem.line, problem.column)}.`;
    case 'newer':
      return 'This file is from a later version of the workbook. Load the page again to get that version, then read the file.';
    case 'entry': {
      const { entry, line, mistake } = problem;
      const at = `Entry ${entry}${place(line)} can’t be read`;
      return mistake
        ? `${at}: “${mistake.field}” ${stands(mistake.stands)}. ${WORKS[mistake.works]} would do.`
        : `${at}: its “id” or its “at” is missing or damaged.`;
    }
  }
}

/** Why a file was refused, and that nothing has changed. */
export const fileProblemWords = (problem: FileProblem): string =>
  `${reason(problem)} Nothing was taken from it, and your progress here is as it was.`;

/** What a file brought: events that were not here before, of all that stand in it. */
export const broughtWords = (fresh: number, all: number): string =>
  fresh === 0
    ? `The file is read. Everything in it was here already.`
    : `The file is read: ${count(fresh, 'new entry', 'new entries')} of ${count(all, 'entry', 'entries')} in it ${fresh === 1 ? 'was' : 'were'} added.`;

/** The skills that are due, in a sentence. */
export const dueSentence = (names: readonly string[]): string =>
  names.length === 0 ? 'Nothing is due now.' : `Due now: ${list(names)}.`;

/** The skill that comes up next, in a sentence. */
export const nextSentence = (name: string, days: number): string => `${capital(name)} ${dueWords(days, false)}.`;
