import type { Keeping } from '../words/storage-words.ts';
import { type Concern, concern, type Loaded } from './concern.ts';
import type { Device } from './safe-storage.ts';

/** What stands in one field: text as typed, or what was marked, chosen or put in order. */
export type Entry = string | number | boolean | null | readonly Entry[];

/** How far one exercise with one seed has got. */
export interface Answer {
  readonly entered: Readonly<Record<string, Entry>>;
  /** Whether what is entered has been checked, so that its feedback is shown again. */
  readonly checked: boolean;
  /** Hints opened, 0 to 3. */
  readonly hints: number;
  readonly solved: boolean;
  readonly solutionSeen: boolean;
}

/** Answers by exercise and seed, the one touched longest ago first. */
type Answers = Readonly<Record<string, Answer>>;
type AnswersChange = Readonly<Record<string, Answer | null>>;

export const NO_ANSWER: Answer = { entered: {}, checked: false, hints: 0, solved: false, solutionSeen: false };

/** Most answers kept, and the most characters of one of them. */
export const MOST_ANSWERS = 300;
export const LONGEST_ANSWER = 20_000;

/** The space keeps the name from being a whole number, which an object would sort to its front. */
const nameOf = (id: string, seed: string | number): string => `${id} ${seed}`;

type Raw = Readonly<Record<string, unknown>>;
const isRaw = (value: unknown): value is Raw => typeof value === 'object' && value !== null && !Array.isArray(value);

const isEntry = (value: unknown): value is Entry =>
  Array.isArray(value)
    ? value.every(isEntry)
    : value === null || ['string', 'number', 'boolean'].includes(typeof value);

/** The answer in a kept value, with what can't be read left out; null where it is too long or none at all. */
function readAnswer(value: unknown): Answer | null {
  if (!isRaw(value) || JSON.stringify(value).length > LONGEST_ANSWER) return null;
  const { entered, checked, hints, solved, solutionSeen } = value;
  const fields = isRaw(entered)
    ? Object.entries(entered).filter((field): field is [string, Entry] => isEntry(field[1]))
    : [];
  return {
    entered: Object.fromEntries(fields),
    checked: checked === true,
    hints: hints === 1 || hints === 2 || hints === 3 ? hints : 0,
    solved: solved === true,
    solutionSeen: solutionSeen === true,
  };
}

const read = (raw: Raw): AnswersChange =>
  Object.fromEntries(
    Object.entries(raw)
      .filter(([name]) => name !== 'version')
      .map(([name, value]) => [name, readAnswer(value)]),
  );

/** Puts what changed last, and drops the oldest beyond the most. */
function merge(answers: Answers, change: AnswersChange): Answers {
  const kept = Object.entries(answers).filter(([name]) => !(name in change));
  const changed = Object.entries(change).filter((entry): entry is [string, Answer] => entry[1] !== null);
  return Object.fromEntries([...kept, ...changed].slice(-MOST_ANSWERS));
}

/** The newer half, for a device with no more room. */
function shrink(answers: Answers): Answers | null {
  const entries = Object.entries(answers);
  return entries.length < 2 ? null : Object.fromEntries(entries.slice(entries.length >> 1));
}

/** What is entered in exercises, on a device; the functions below are those of this browser. */
export function answersOn(device?: Device) {
  const all: Concern<Answers, AnswersChange> = concern<Answers, AnswersChange>(
    { name: 'answers', version: 1, start: {}, read, merge, shrink },
    device,
  );
  return {
    /** How far this exercise with this seed has got; `NO_ANSWER` where it was not begun. */
    load: (id: string, seed: string | number): Loaded<Answer> => {
      const { value, keeping } = all.load();
      const answer = value[nameOf(id, seed)];
      return { value: answer ?? NO_ANSWER, entered: answer !== undefined, keeping };
    },
    /** Changes the parts that are there; `entered` is changed field by field. An answer that is too long is refused. */
    save: (id: string, seed: string | number, change: Partial<Answer>): Keeping => {
      const name = nameOf(id, seed);
      const before = all.load().value[name] ?? NO_ANSWER;
      const answer = readAnswer({ ...before, ...change, entered: { ...before.entered, ...change.entered } });
      return answer === null ? { kept: false, why: 'refused' } : all.save({ [name]: answer });
    },
    forget: (id: string, seed: string | number): Keeping => all.save({ [nameOf(id, seed)]: null }),
    forgetAll: all.forget,
    /** Calls `listener` when any answer may have changed, on this page or another. */
    subscribe: (listener: () => void): (() => void) => all.subscribe(listener),
  };
}

const here = answersOn();
export const loadAnswer = here.load;
export const saveAnswer = here.save;
