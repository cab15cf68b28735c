import { readFileSync } from 'node:fs';
import { expect, test, vi } from 'vitest';
import { offersOn } from '../../../src/store/offers.ts';
import { askToStay } from '../../../src/store/progress/stay.ts';
import { noShelf, SharedShelf } from '../shelf.ts';

const browser = (answer: () => Promise<boolean>) => {
  const persist = vi.fn(answer);
  return { persist, storage: { persist } as unknown as StorageManager };
};

test('a browser is asked once to keep things, by whichever page is first, and a no is a no', () => {
  const device = new SharedShelf();
  const { persist, storage } = browser(async () => false);
  for (let page = 0; page < 3; page += 1) askToStay(device.page(), storage);
  expect(persist).toHaveBeenCalledTimes(1);
});

test('one that keeps nothing is not asked, and one that answers with an error disturbs nobody', () => {
  const none = browser(async () => true);
  askToStay(noShelf, none.storage);
  expect(none.persist).not.toHaveBeenCalled();
  const failing = browser(() => Promise.reject(new TypeError('not here')));
  askToStay(new SharedShelf().page(), failing.storage);
  expect(failing.persist).toHaveBeenCalledTimes(1);
});

test('what was offered in the first release is not offered again', () => {
  const device = new SharedShelf();
  expect(offersOn(device.page()).load().value).toEqual({ file: false });
  device.texts.set('evenfold.offers', readFileSync(new URL('../fixtures/offers.v1.json', import.meta.url), 'utf8'));
  expect(offersOn(device.page()).load().value).toEqual({ file: true });
});
