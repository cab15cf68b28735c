import type { Keeping, NotKept } from '../words/storage-words.ts';
import { pageShelf } from './shelf.ts';

/** The part of a browser's storage that is used. */
export type Shelf = Pick<Storage, 'getItem' | 'setItem' | 'removeItem' | 'key' | 'length'>;

/** What other pages of the workbook write on this device, as it happens: the key, or null for all of them. */
export type Watch = (changed: (key: string | null) => void) => () => void;

/** Where things are kept. `shelf` may throw or give null: both mean that nothing can be kept. */
export interface Device {
  readonly shelf: () => Shelf | null | undefined;
  readonly watch: Watch;
}

/** This browser's own storage. Reading the global alone may throw where it is blocked, so it is asked for each time. */
export const thisDevice: Device = {
  shelf: pageShelf,
  watch: (changed) => {
    if (typeof addEventListener !== 'function') return () => {};
    const heard = (event: StorageEvent): void => changed(event.key);
    addEventListener('storage', heard);
    return () => removeEventListener('storage', heard);
  },
};

export type Read = { readonly text: string | null } | { readonly why: NotKept };

/** Runs `act` on the shelf; never throws. */
function onShelf<T>(device: Device, act: (shelf: Shelf) => T, failed: NotKept): T | NotKept {
  let shelf: Shelf | null | undefined;
  try {
    shelf = device.shelf();
  } catch {
    return 'blocked';
  }
  if (!shelf) return 'no-storage';
  try {
    return act(shelf);
  } catch {
    return failed;
  }
}

/** What is kept under `key`: its text, null where there is none, or why it can't be read. Never throws. */
export function readText(key: string, device: Device = thisDevice): Read {
  const found = onShelf(device, (shelf) => ({ text: shelf.getItem(key) }), 'blocked');
  return typeof found === 'string' ? { why: found } : found;
}

/** The keys that begin so; none where nothing can be read. Never throws. */
export function namesOnShelf(beginning: string, device: Device = thisDevice): readonly string[] {
  const found = onShelf(
    device,
    (shelf) => Array.from({ length: shelf.length }, (_, place) => shelf.key(place) ?? ''),
    'blocked',
  );
  return typeof found === 'string' ? [] : found.filter((name) => name.startsWith(beginning));
}

/** Keeps a text, or takes it away where it is null. Never throws; what was kept before stays when there is no room. */
export function keepText(key: string, text: string | null, device: Device = thisDevice): Keeping {
  const why = onShelf(
    device,
    (shelf) => {
      if (text === null) shelf.removeItem(key);
      else shelf.setItem(key, text);
      return null;
    },
    'full',
  );
  return why === null ? { kept: true } : { kept: false, why };
}
