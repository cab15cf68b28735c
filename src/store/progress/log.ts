import type { Stamp } from './event.ts';

/** An event as it is kept. What else stands in it is read where it is needed, and kept even where it can't be. */
export type Kept = Stamp & Readonly<Record<string, unknown>>;

/** All events in the order of their moments; of one moment, in the order of their ids. */
export interface Log {
  readonly events: readonly Kept[];
}
export const EMPTY_LOG: Log = { events: [] };

/** Of the kept log and of the file that is saved from it. */
export const PROGRESS_VERSION = 1;

/** From the form of each earlier version to that of the next. */
export const PROGRESS_MIGRATIONS: Readonly<Record<number, (raw: Raw) => Raw>> = {};

type Raw = Readonly<Record<string, unknown>>;
const isRecord = (value: unknown): value is Raw => typeof value === 'object' && value !== null && !Array.isArray(value);

/** The last moment that a date can hold. */
const LAST_MOMENT = 8.64e15;

/** Whether a value carries the stamp of an event: an id of 1 to 40 plain characters, and a moment. */
export const isKept = (value: unknown): value is Kept =>
  isRecord(value) &&
  typeof value['id'] === 'string' &&
  /^[\w-]{1,40}$/.test(value['id']) &&
  Number.isInteger(value['at']) &&
  Number(value['at']) >= 0 &&
  Number(value['at']) <= LAST_MOMENT;

/** Of two events that carry one id, as after a change by hand, the same one whichever comes first. */
function chosenOf(one: Kept, other: Kept): Kept {
  return JSON.stringify(one) <= JSON.stringify(other) ? one : other;
}

const byMoment = (one: Kept, other: Kept): number => one.at - other.at || (one.id < other.id ? -1 : 1);

/** Everything that stands in either: in any order, twice, grouped in any way, the result is the same. */
export function mergeLogs(one: Log, other: Log): Log {
  const events = new Map(one.events.map((event) => [event.id, event]));
  for (const event of other.events) {
    const there = events.get(event.id);
    events.set(event.id, there ? chosenOf(there, event) : event);
  }
  return { events: [...events.values()].sort(byMoment) };
}
