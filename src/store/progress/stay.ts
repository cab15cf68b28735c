import { type Device, keepText, readText, thisDevice } from '../safe-storage.ts';

/** Says that the browser was asked, whatever it answered. */
const ASKED = 'evenfold.asked-to-stay';

/**
 * Asks the browser, once on each device and after something was kept, not to clear it when it wants room. Some browsers
 * put that question to the reader, so it is never asked again.
 */
export function askToStay(device: Device = thisDevice, storage = globalThis.navigator?.storage): void {
  const asked = readText(ASKED, device);
  if ('why' in asked || asked.text !== null || !keepText(ASKED, 'yes', device).kept) return;
  void storage?.persist?.().catch(() => false);
}
