import { type Concern, concern } from './concern.ts';
import type { Device } from './safe-storage.ts';

/** What was offered once and need not be said again. */
export interface Offers {
  /** To save the progress to a file, since this browser may clear it. */
  readonly file: boolean;
}

/** What was offered on a device; `offers` are those of this browser. */
export const offersOn = (device?: Device): Concern<Offers, Partial<Offers>> =>
  concern<Offers, Partial<Offers>>(
    {
      name: 'offers',
      version: 1,
      start: { file: false },
      read: ({ file }) => (file === true ? { file } : {}),
      merge: (value, change) => ({ ...value, ...change }),
    },
    device,
  );

export const offers = offersOn();
