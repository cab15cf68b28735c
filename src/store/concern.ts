import type { Keeping } from '../words/storage-words.ts';
import { type Device, keepText, readText, thisDevice } from './safe-storage.ts';

type Raw = Readonly<Record<string, unknown>>;

/** One thing that is kept on this device, under one key, with its own version. */
export interface ConcernKind<T extends object, Change> {
  /** After the workbook's own prefix. */
  readonly name: string;
  /** Of the kept form, from 1. */
  readonly version: number;
  /** What is there before anything was entered. */
  readonly start: T;
  /** The good fields of a kept form of this version; the others are left as they start. */
  readonly read: (raw: Raw) => Change;
  /** Adds a change to a value. */
  readonly merge: (value: T, change: Change) => T;
  /** The part of a change that can be kept; null where all of it can. */
  readonly goodPart?: (change: Change) => Change | null;
  /** From the form of the version in the key to that of the next. */
  readonly migrations?: Readonly<Record<number, (raw: Raw) => Raw>>;
  /** A smaller value to keep where there is no room; null where it can't be smaller. */
  readonly shrink?: (value: T) => T | null;
  /** Puts what can't be read in safety, before anything is kept in its place; where that fails, nothing is. */
  readonly setAside?: (key: string, device: Device) => Keeping;
}

export interface Loaded<T> {
  readonly value: T;
  /** Whether anything was ever entered. */
  readonly entered: boolean;
  /** Whether what is in `value` is also kept on this device. */
  readonly keeping: Keeping;
}

export interface Concern<T, Change> {
  /** What is kept, with what was changed on this page since; never throws. */
  readonly load: () => Loaded<T>;
  /** Changes the fields in `change` and no others, and keeps the whole. What can't be kept stays on this page. */
  readonly save: (change: Change) => Keeping;
  /** Takes everything away, on the device and on this page. */
  readonly forget: () => Keeping;
  /** Calls `listener` after every change on this page or another; gives a function that ends that. */
  readonly subscribe: (listener: (loaded: Loaded<T>) => void) => () => void;
}

const PREFIX = 'evenfold.';

const KEPT: Keeping = { kept: true };
const isRaw = (value: unknown): value is Raw => typeof value === 'object' && value !== null && !Array.isArray(value);

/** The record in a text, brought up to this version; null where there is none in it. */
function recordIn(
  text: string,
  { version, migrations = {} }: Pick<ConcernKind<object, unknown>, 'version' | 'migrations'>,
): Raw | null {
  try {
    let raw: unknown = JSON.parse(text);
    for (;;) {
      const found = isRaw(raw) ? raw['version'] : null;
      if (!isRaw(raw) || typeof found !== 'number' || !Number.isInteger(found) || found < 1) return null;
      if (found >= version) return raw;
      // A migration that is missing, or leaves the version as it is, would go on for ever.
      raw = { ...migrations[found]?.(raw), version: found + 1 };
    }
  } catch {
    return null;
  }
}

/** Makes the functions of one concern. Changes of two pages are merged by what each changed, the last one counting. */
export function concern<T extends object, Change extends object>(
  kind: ConcernKind<T, Change>,
  device: Device = thisDevice,
): Concern<T, Change> {
  const key = PREFIX + kind.name;
  const listeners = new Set<(loaded: Loaded<T>) => void>();
  let unwatch: (() => void) | null = null;
  /** Changes of this page that could not be kept. */
  let pending: Change[] = [];

  const withPending = (value: T): T => pending.reduce(kind.merge, value);

  function kept(): Loaded<T> {
    const found = readText(key, device);
    const start = { value: kind.start, entered: false };
    if ('why' in found) return { ...start, keeping: { kept: false, why: found.why } };
    if (found.text === null) return { ...start, keeping: KEPT };
    const raw = recordIn(found.text, kind);
    if (raw === null) return { ...start, keeping: { kept: false, why: 'unreadable' } };
    const value = kind.merge(kind.start, kind.read(raw));
    const newer = raw['version'] !== kind.version;
    return { value, entered: true, keeping: newer ? { kept: false, why: 'newer' } : KEPT };
  }

  let lastKeeping: Keeping = KEPT;

  function load(): Loaded<T> {
    const { value, entered, keeping } = kept();
    if (pending.length === 0) return { value, entered, keeping };
    return { value: withPending(value), entered: true, keeping: keeping.kept ? lastKeeping : keeping };
  }

  function tell(): void {
    const loaded = load();
    for (const listener of listeners) listener(loaded);
  }

  function write(value: T): Keeping {
    let next: T | null = value;
    let keeping: Keeping = KEPT;
    while (next !== null) {
      keeping = keepText(key, JSON.stringify({ ...next, version: kind.version }), device);
      if (keeping.kept || keeping.why !== 'full') break;
      next = kind.shrink?.(next) ?? null;
    }
    return keeping;
  }

  function save(change: Change): Keeping {
    const good = kind.goodPart?.(change) ?? null;
    pending = [...pending, good ?? change];
    const before = kept();
    const { keeping: found } = before;
    const ready = found.kept || found.why !== 'unreadable' ? found : (kind.setAside?.(key, device) ?? KEPT);
    const keeping = ready.kept ? write(withPending(before.value)) : ready;
    if (keeping.kept) pending = [];
    lastKeeping = keeping;
    tell();
    return good !== null && keeping.kept ? { kept: false, why: 'refused' } : keeping;
  }

  function forget(): Keeping {
    pending = [];
    const keeping = keepText(key, null, device);
    tell();
    return keeping;
  }

  function subscribe(listener: (loaded: Loaded<T>) => void): () => void {
    listeners.add(listener);
    unwatch ??= device.watch((changed) => {
      if (changed === null || changed === key) tell();
    });
    return () => {
      listeners.delete(listener);
      if (listeners.size > 0) return;
      unwatch?.();
      unwatch = null;
    };
  }

  return { load, save, forget, subscribe };
}
