import { compact } from './compact.ts';
import type { Stamp } from './event.ts';

/** An event as it is kept. What else stands in it is read where it is needed, and kept even where it can't be. */
export type Kept = Stamp & Readonly<Record<string, unknown>>;

/** Events in the order of their moments; of one moment, in the order of their ids. */
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

/** In the order of their moments; of one moment, of their ids, and last of all that stands in them. */
const byMoment = ([one, text]: Told, [other, otherText]: Told): number =>
  one.at - other.at || (one.id === other.id ? (text < otherText ? -1 : 1) : one.id < other.id ? -1 : 1);
type Told = readonly [event: Kept, text: string];

/**
 * Everything in either that some figure of the progress is read from: in any order, twice, grouped in any way, the result
 * is the same. What is alike to the letter is there once. Two events of one id that differ, as after a change by hand,
 * both stay: whoever reads them decides.
 */
export function mergeLogs(one: Log, other: Log): Log {
  const all = new Map<string, Kept>();
  for (const event of [...one.events, ...other.events]) {
    const text = JSON.stringify(event);
    if (!all.has(text)) all.set(text, event);
  }
  const told = [...all].map(([text, event]): Told => [event, text]);
  return { events: compact(told.sort(byMoment).map(([event]) => event)) };
}
