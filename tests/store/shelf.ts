import type { Device, Shelf } from '../../src/store/safe-storage.ts';

type Heard = (key: string | null) => void;

/** One device in memory, on which several pages of the workbook can be open. */
export class SharedShelf {
  readonly texts = new Map<string, string>();
  /** Characters there is room for. */
  room = Number.POSITIVE_INFINITY;
  private readonly pages = new Map<object, Set<Heard>>();

  /** A page of its own: it hears what other pages write, never what it writes itself, as a browser has it. */
  page(): Device {
    const page = {};
    this.pages.set(page, new Set());
    const told = (key: string | null): void => {
      for (const [other, heard] of this.pages) if (other !== page) for (const each of [...heard]) each(key);
    };
    const { texts } = this;
    const shelf: Shelf = {
      getItem: (key) => this.texts.get(key) ?? null,
      setItem: (key, text) => {
        const others = [...this.texts].filter(([name]) => name !== key).reduce((sum, [, one]) => sum + one.length, 0);
        if (others + text.length > this.room) throw new DOMException('no room', 'QuotaExceededError');
        this.texts.set(key, text);
        told(key);
      },
      removeItem: (key) => {
        this.texts.delete(key);
        told(key);
      },
      key: (place) => [...this.texts.keys()][place] ?? null,
      get length() {
        return texts.size;
      },
    };
    return {
      shelf: () => shelf,
      watch: (changed) => {
        const heard = this.pages.get(page);
        heard?.add(changed);
        return () => heard?.delete(changed);
      },
    };
  }

  /** The browser's own settings clear everything. */
  wipe(): void {
    this.texts.clear();
    for (const heard of this.pages.values()) for (const each of [...heard]) each(null);
  }

  get listening(): number {
    return [...this.pages.values()].reduce((sum, heard) => sum + heard.size, 0);
  }
}

const watch: Device['watch'] = () => () => {};

/** A browser that keeps nothing. */
export const noShelf: Device = { shelf: () => null, watch };

/** A browser that refuses even to be asked. */
export const blockedShelf: Device = {
  shelf: () => {
    throw new DOMException('not for this page', 'SecurityError');
  },
  watch,
};
