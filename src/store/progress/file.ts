import type { FileProblem } from '../../words/progress-words.ts';
import { dayOf } from './day.ts';
import { EMPTY_LOG, isKept, type Log, mergeLogs, PROGRESS_MIGRATIONS, PROGRESS_VERSION } from './log.ts';
import { mistakeIn } from './read-event.ts';

/** What the first field of a progress file says. */
const FILE_SAYS = 'progress of an Evenfold learner';
/** Most characters of a file that is read: some hundred thousand tries. */
export const LONGEST_FILE = 30_000_000;

export type FileReading =
  | { readonly ok: true; readonly log: Log }
  | { readonly ok: false; readonly problem: FileProblem };

/** The whole log as a text to keep: plain JSON, an event on each line, no name in it. */
export function formatProgress({ events }: Log, now: Date = new Date()): string {
  const head = { says: FILE_SAYS, version: PROGRESS_VERSION, saved: dayOf(now) };
  const lines = events.map((event) => `    ${JSON.stringify(event)}`);
  const list = lines.length > 0 ? `[\n${lines.join(',\n')}\n  ]` : '[]';
  return `{\n${Object.entries(head)
    .map(([name, value]) => `  ${JSON.stringify(name)}: ${JSON.stringify(value)},\n`)
    .join('')}  "events": ${list}\n}\n`;
}

/** The name of the saved file: the day, and nothing of the learner. */
export const fileName = (now: Date = new Date()): string => `evenfold-progress-${dayOf(now)}.json`;

type Raw = Readonly<Record<string, unknown>>;
const isRaw = (value: unknown): value is Raw => typeof value === 'object' && value !== null && !Array.isArray(value);

/** Line and column of a place in a text; a browser tells the place as one or the other. */
function placeIn(text: string, error: unknown): { line: number | null; column: number | null } {
  const message = String(error);
  const told = /line (\d+) column (\d+)/.exec(message);
  if (told) return { line: Number(told[1]), column: Number(told[2]) };
  const position = /position (\d+)/.exec(message)?.[1] ?? (/end of/i.test(message) ? text.length : null);
  if (position === null) return { line: null, column: null };
  const lines = text.slice(0, Number(position)).split('\n');
  return { line: lines.length, column: (lines.at(-1)?.length ?? 0) + 1 };
}

/** The line an entry stands on, where each stands on one of its own, as `formatProgress` writes them. */
function lineOf(text: string, entry: number, count: number): number | null {
  const lines = text
    .split('\n')
    .flatMap((line, at) => (/^\s*(\{.*\}|"[^"]*"|[\w.+-]+),?\s*$/.test(line) ? [at + 1] : []));
  return lines.length === count ? (lines[entry - 1] ?? null) : null;
}

/**
 * Reads a saved file. Nothing is taken from a file with a mistake in it: its learner can mend it, or take an older one.
 *
 * @param migrations from the form of each earlier version to that of the next
 */
export function readProgressFile(
  text: string,
  migrations: Readonly<Record<number, (raw: Raw) => Raw>> = PROGRESS_MIGRATIONS,
  version: number = PROGRESS_VERSION,
): FileReading {
  const refused = (problem: FileProblem): FileReading => ({ ok: false, problem });
  if (text.length > LONGEST_FILE) return refused({ code: 'too-long' });
  let raw: unknown;
  try {
    raw = JSON.parse(text.replace(/^\uFEFF/, ''));
  } catch (error) {
    return refused({ code: 'not-json', ...placeIn(text, error) });
  }
  if (!isRaw(raw) || raw['says'] !== FILE_SAYS) return refused({ code: 'not-ours' });
  let found = raw['version'];
  if (typeof found !== 'number' || !Number.isInteger(found) || found < 1) return refused({ code: 'not-ours' });
  if (found > version) return refused({ code: 'newer', version: found });
  for (; found < version; found += 1) {
    const step = migrations[found];
    if (!step) return refused({ code: 'not-ours' });
    raw = step(raw as Raw);
  }
  const events = (raw as Raw)['events'];
  if (!Array.isArray(events)) return refused({ code: 'not-ours' });
  for (const [place, event] of events.entries()) {
    const kept = isKept(event);
    const mistake = kept ? mistakeIn(event) : null;
    if (kept && mistake === null) continue;
    return refused({ code: 'entry', entry: place + 1, line: lineOf(text, place + 1, events.length), mistake });
  }
  return { ok: true, log: mergeLogs(EMPTY_LOG, { events }) };
}
