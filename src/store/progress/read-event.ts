import { LEVELS } from '../../solver/exercises/level.ts';
import { isSkill } from '../../solver/exercises/skills.ts';
import type { EventMistake, Expected } from '../../words/progress-words.ts';
import type { Happening, ProgressEvent } from './event.ts';
import type { Kept, Log } from './log.ts';

type Check = (value: unknown) => boolean;
const isText =
  (longest: number): Check =>
  (value) =>
    typeof value === 'string' && value.length > 0 && value.length <= longest;
const listOf =
  (check: Check): Check =>
  (value) =>
    Array.isArray(value) && value.length <= 20 && value.every(check);

const CHECKS: Readonly<Record<Exclude<Expected, 'act'>, Check>> = {
  name: (value) => typeof value === 'string' && /^[a-z0-9][a-z0-9-]{0,79}$/.test(value),
  text: isText(1000),
  'yes-or-no': (value) => typeof value === 'boolean',
  skill: isSkill,
  skills: listOf(isSkill),
  names: listOf(isText(80)),
  level: (value) => LEVELS.some((level) => level === value),
  outcome: (value) => value === 'right' || value === 'not-right',
  day: (value) => typeof value === 'string' && /^\d{4,6}-\d\d-\d\d$/.test(value),
};

type Act = Happening['act'];
type Fields<A extends Act> = Readonly<
  Record<Exclude<keyof Extract<Happening, { act: A }>, 'act'>, Exclude<Expected, 'act'>>
>;

const FIELDS: { readonly [A in Act]: Fields<A> } = {
  opened: { lesson: 'name' },
  read: { lesson: 'name' },
  ticked: { lesson: 'name', check: 'name', on: 'yes-or-no' },
  tried: {
    lesson: 'name',
    exercise: 'name',
    // A kind is not looked up: one that a later version adds is read here all the same.
    kind: 'name',
    level: 'level',
    seed: 'text',
    skills: 'skills',
    outcome: 'outcome',
    aided: 'yes-or-no',
    day: 'day',
  },
  slipped: { exercise: 'name', seed: 'text', slips: 'names' },
  chosen: { skill: 'skill', on: 'yes-or-no' },
};

const isAct = (value: unknown): value is Act => typeof value === 'string' && value in FIELDS;

/** The first mistake in an event; null where it can be read. */
export function mistakeIn(event: Kept): EventMistake | null {
  const { act } = event;
  if (!isAct(act)) return { field: 'act', stands: act, works: 'act' };
  for (const [field, works] of Object.entries<Exclude<Expected, 'act'>>(FIELDS[act]))
    if (!CHECKS[works](event[field])) return { field, stands: event[field], works };
  return null;
}

/** Whether this version can read it. */
export const isEvent = (event: Kept): event is Kept & ProgressEvent => mistakeIn(event) === null;

/**
 * The events of a log that this version can read, in their order. Of two that carry one id, as after a change by hand,
 * the first counts.
 */
export function eventsIn(log: Log): readonly ProgressEvent[] {
  const ids = new Set<string>();
  return log.events.filter(isEvent).filter(({ id }) => !ids.has(id) && ids.add(id));
}
