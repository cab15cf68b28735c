import { afterEach, describe, expect, test, vi } from 'vitest';
import { concern } from '../../src/store/concern.ts';
import { keepText, readText, thisDevice } from '../../src/store/safe-storage.ts';
import { SharedShelf } from './shelf.ts';

interface Swatch {
  readonly rows: number;
  readonly pitch: number | null;
}

const kind = {
  name: 'swatch',
  version: 3,
  start: { rows: 0, pitch: null } as Swatch,
  read: ({ rows, pitch }: Readonly<Record<string, unknown>>): Partial<Swatch> => ({
    ...(typeof rows === 'number' ? { rows } : {}),
    ...(typeof pitch === 'number' ? { pitch } : {}),
  }),
  merge: (value: Swatch, change: Partial<Swatch>): Swatch => ({ ...value, ...change }),
  migrations: {
    1: (raw: Readonly<Record<string, unknown>>) => ({ lines: raw['height'] }),
    2: (raw: Readonly<Record<string, unknown>>) => ({ rows: raw['lines'] }),
  },
};

function kept(text: string, of: typeof kind = kind) {
  const device = new SharedShelf();
  device.texts.set('evenfold.swatch', text);
  return concern<Swatch, Partial<Swatch>>(of, device.page());
}

describe('what is kept in an older form', () => {
  test.each([
    ['the first', { version: 1, height: 12 }],
    ['the second', { version: 2, lines: 12 }],
    ['this', { version: 3, rows: 12 }],
  ])('%s form opens, step by step', (_, raw) => {
    expect(kept(JSON.stringify(raw)).load()).toEqual({
      value: { rows: 12, pitch: null },
      entered: true,
      keeping: { kept: true },
    });
  });

  test('a form whose step is missing, or whose step fails, opens with what there is', () => {
    const none = { ...kind, migrations: {} as typeof kind.migrations };
    expect(kept('{"version":1,"rows":4}', none).load().value).toEqual(kind.start);
    const failing = {
      ...kind,
      migrations: {
        ...kind.migrations,
        1: () => {
          throw new TypeError('no height');
        },
      },
    };
    expect(kept('{"version":1}', failing).load().keeping).toEqual({ kept: false, why: 'unreadable' });
  });

  test('a listener that unsubscribes while it is told does not disturb the others', () => {
    const own = concern<Swatch, Partial<Swatch>>(kind, new SharedShelf().page());
    const heard: string[] = [];
    const stop = own.subscribe(() => {
      heard.push('one');
      stop();
    });
    own.subscribe(() => heard.push('two'));
    own.save({ rows: 1 });
    own.save({ rows: 2 });
    expect(heard).toEqual(['one', 'two', 'two']);
  });
});

describe('this browser', () => {
  afterEach(() => vi.unstubAllGlobals());

  test('without storage, as on a page that is only being built, nothing throws', () => {
    vi.stubGlobal('localStorage', undefined);
    expect(readText('evenfold.x')).toEqual({ why: 'no-storage' });
    expect(keepText('evenfold.x', 'text')).toEqual({ kept: false, why: 'no-storage' });
    thisDevice.watch(() => {})();
  });

  test('with storage, texts are kept, read, taken away and heard of', () => {
    const texts = new Map<string, string>();
    vi.stubGlobal('localStorage', {
      getItem: (key: string) => texts.get(key) ?? null,
      setItem: (key: string, text: string) => texts.set(key, text),
      removeItem: (key: string) => texts.delete(key),
    });
    const events = new EventTarget();
    vi.stubGlobal('addEventListener', events.addEventListener.bind(events));
    vi.stubGlobal('removeEventListener', events.removeEventListener.bind(events));
    expect(keepText('evenfold.x', 'text')).toEqual({ kept: true });
    expect(readText('evenfold.x')).toEqual({ text: 'text' });
    expect(keepText('evenfold.x', null)).toEqual({ kept: true });
    expect(readText('evenfold.x')).toEqual({ text: null });
    const heard: (string | null)[] = [];
    const stop = thisDevice.watch((key) => heard.push(key));
    events.dispatchEvent(Object.assign(new Event('storage'), { key: 'evenfold.x' }));
    stop();
    events.dispatchEvent(Object.assign(new Event('storage'), { key: 'evenfold.y' }));
    expect(heard).toEqual(['evenfold.x']);
  });

  test('storage that throws when read is blocked, when written is full', () => {
    const refuse = () => {
      throw new DOMException('no', 'SecurityError');
    };
    vi.stubGlobal('localStorage', { getItem: refuse, setItem: refuse, removeItem: refuse });
    expect(readText('evenfold.x')).toEqual({ why: 'blocked' });
    expect(keepText('evenfold.x', 'text')).toEqual({ kept: false, why: 'full' });
  });
});
