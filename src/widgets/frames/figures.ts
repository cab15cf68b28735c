import { pageShelf } from '../../store/shelf.ts';

/** What the two windows have in common of what is entered: the room’s figures, and whether they are read with. */
const KEYS = ['evenfold.own-figures', 'evenfold.preferences'] as const;

/** The kept forms of these, in the order of the keys; null for one that is not there. */
export type Kept = readonly (string | null)[];

/** What this window keeps of the room’s figures; nothing where storage is blocked. */
export function keptFigures(): Kept {
  try {
    return KEYS.map((key) => pageShelf()?.getItem(key) ?? null);
  } catch {
    return KEYS.map(() => null);
  }
}

export const isAlike = (one: Kept, other: Kept): boolean => KEYS.every((_, at) => one[at] === other[at]);

/** Takes over what the other window keeps. Whoever shows figures hears of it, as of a change in another tab. */
export function takeFigures(kept: Kept): void {
  try {
    for (const [at, key] of KEYS.entries()) {
      const text = kept[at];
      if (typeof text === 'string') pageShelf()?.setItem(key, text);
      else pageShelf()?.removeItem(key);
    }
  } catch {
    // Without storage each window goes on with the figures it has.
    return;
  }
  for (const key of KEYS) dispatchEvent(new StorageEvent('storage', { key }));
}
