import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { preferencesOn, STARTING_PREFERENCES } from '../../src/store/preferences.ts';
import { blockedShelf, SharedShelf } from './shelf.ts';

describe('small choices', () => {
  test('lessons start with the example’s figures in centimetres', () => {
    expect(preferencesOn(new SharedShelf().page()).load().value).toEqual(STARTING_PREFERENCES);
  });

  test('a choice is there on the next page, and choices of the first release still open', () => {
    const device = new SharedShelf();
    preferencesOn(device.page()).save({ units: 'inches' });
    expect(preferencesOn(device.page()).load().value).toEqual({ ...STARTING_PREFERENCES, units: 'inches' });
    const released = readFileSync(new URL('fixtures/preferences.v1.json', import.meta.url), 'utf8');
    device.texts.set('evenfold.preferences', released);
    expect(preferencesOn(device.page()).load().value).toEqual(JSON.parse(released));
  });

  test('a choice nobody offers is not taken, and blocked storage keeps the choice on the page', () => {
    const device = new SharedShelf();
    device.texts.set('evenfold.preferences', '{"version":1,"units":"ells","figures":"mine"}');
    expect(preferencesOn(device.page()).load().value).toEqual({ version: 1, figures: 'mine', units: 'metric' });
    const blocked = preferencesOn(blockedShelf);
    expect(blocked.save({ figures: 'mine' })).toEqual({ kept: false, why: 'blocked' });
    expect(blocked.load().value.figures).toBe('mine');
  });
});
