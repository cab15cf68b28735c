import type { Keeping } from '../../words/storage-words.ts';
import { concern, type Loaded } from '../concern.ts';
import { type Device, keepText, namesOnShelf } from '../safe-storage.ts';
import { forgetAside, setAside } from './aside.ts';
import type { Happening } from './event.ts';
import { EMPTY_LOG, isKept, type Log, mergeLogs, PROGRESS_MIGRATIONS, PROGRESS_VERSION } from './log.ts';
import { NOTES } from './notes.ts';
import { pageName } from './page-name.ts';

export interface Progress {
  /** Every event on this device, with those of this page that could not be kept. */
  readonly load: () => Loaded<Log>;
  /** Adds what happened, now. */
  readonly note: (happening: Happening) => Keeping;
  /** Adds the events of another log; those that are there already are there once. */
  readonly add: (log: Log) => Keeping;
  /** Takes every event away from this device, with notes not yet gathered and what was set aside unread. */
  readonly wipe: () => Keeping;
  readonly subscribe: (listener: (loaded: Loaded<Log>) => void) => () => void;
}

/** What was learned, on a device, as a log of events; `thisProgress` is that of this browser. */
export function progressOn(device?: Device, now: () => number = Date.now): Progress {
  const page = pageName();
  let noted = 0;
  const log = concern<Log, Log>(
    {
      name: 'progress',
      version: PROGRESS_VERSION,
      start: EMPTY_LOG,
      read: ({ events }) => ({ events: Array.isArray(events) ? events.filter(isKept) : [] }),
      merge: mergeLogs,
      migrations: PROGRESS_MIGRATIONS,
      setAside,
    },
    device,
  );
  const add: Progress['add'] = (other) => log.save(other);
  return {
    load: log.load,
    note(happening) {
      noted += 1;
      return add({ events: [{ ...happening, id: `${page}-${noted}`, at: now() }] });
    },
    add,
    wipe() {
      const keeping = log.forget();
      forgetAside(device);
      for (const notes of namesOnShelf(NOTES, device)) keepText(notes, null, device);
      return keeping;
    },
    subscribe: log.subscribe,
  };
}

export const thisProgress = progressOn();
