import type { Keeping } from '../../words/storage-words.ts';
import { type Device, keepText, readText, thisDevice } from '../safe-storage.ts';

/** Where a log that could not be read is set aside. */
const ASIDE = 'evenfold.progress.aside';

/** What was set aside, each text that could not be read on lines of its own; null where all could be. */
export function textAside(device: Device = thisDevice): string | null {
  const found = readText(ASIDE, device);
  return 'text' in found ? found.text : null;
}

/** Puts what is kept under `key` aside, behind what is there. */
export function setAside(key: string, device: Device): Keeping {
  const found = readText(key, device);
  if ('why' in found || found.text === null) return { kept: true };
  const earlier = textAside(device);
  return keepText(ASIDE, earlier === null ? found.text : `${earlier}\n${found.text}`, device);
}

export const forgetAside = (device: Device = thisDevice): Keeping => keepText(ASIDE, null, device);
