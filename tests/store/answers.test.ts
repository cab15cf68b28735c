import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { answersOn, LONGEST_ANSWER, MOST_ANSWERS, NO_ANSWER } from '../../src/store/answers.ts';
import { noShelf, SharedShelf } from './shelf.ts';

const KEY = 'evenfold.answers';

describe('answers to exercises', () => {
  test('what was typed, checked and opened survives a reload, each exercise and seed by itself', () => {
    const device = new SharedShelf();
    const page = answersOn(device.page());
    page.save('sum-lantern', 7, { entered: { spare: '10' } });
    page.save('sum-lantern', 7, { entered: { onBar: '14' }, checked: true, hints: 1 });
    page.save('sum-lantern', 8, { solved: true });
    const again = answersOn(device.page());
    expect(again.load('sum-lantern', '7').value).toEqual({
      ...NO_ANSWER,
      entered: { spare: '10', onBar: '14' },
      checked: true,
      hints: 1,
    });
    expect(again.load('sum-lantern', 8).value).toEqual({ ...NO_ANSWER, solved: true });
    expect(again.load('sum-heron', 7)).toEqual({ value: NO_ANSWER, entered: false, keeping: { kept: true } });
  });

  test('answers of the first release still open', () => {
    const device = new SharedShelf();
    const released = readFileSync(new URL('fixtures/answers.v1.json', import.meta.url), 'utf8');
    device.texts.set(KEY, released);
    const page = answersOn(device.page());
    expect(page.load('sum-lantern', 7).value).toEqual(JSON.parse(released)['sum-lantern 7']);
    expect(page.load('mark-corners', 'tuesday').value.entered).toEqual({
      cells: [
        [1, 1],
        [1, 2],
      ],
    });
  });

  test(`of more than ${MOST_ANSWERS} answers those touched longest ago are dropped, even where seeds are numbers`, () => {
    const device = new SharedShelf();
    const page = answersOn(device.page());
    const full = Object.fromEntries(
      Array.from({ length: MOST_ANSWERS }, (_, seed) => [`sum ${seed}`, { entered: {}, hints: 1 }]),
    );
    device.texts.set(KEY, JSON.stringify({ version: 1, ...full }));
    page.save('sum', 0, { hints: 2 });
    page.save('sum', 'new', { hints: 3 });
    expect(page.load('sum', 0).value.hints).toBe(2);
    expect(page.load('sum', 'new').value.hints).toBe(3);
    expect(page.load('sum', 1).entered).toBe(false);
    expect(page.load('sum', 2).entered).toBe(true);
  });

  test('on a full device the older half makes room for what is new', () => {
    const device = new SharedShelf();
    const page = answersOn(device.page());
    for (let seed = 0; seed < 20; seed += 1) page.save('sum', seed, { entered: { spare: `${seed}` } });
    device.room = (device.texts.get(KEY) ?? '').length + 10;
    expect(page.save('sum', 'new', { entered: { spare: '10' }, checked: true })).toEqual({ kept: true });
    expect(page.load('sum', 'new').value.checked).toBe(true);
    expect(page.load('sum', 19).entered).toBe(true);
    expect(page.load('sum', 0).entered).toBe(false);
    device.room = 5;
    expect(page.save('sum', 'last', { hints: 1 })).toEqual({ kept: false, why: 'full' });
    expect(page.load('sum', 'last').value.hints).toBe(1);
  });

  test('an answer too long to be one is refused, and nothing else is touched', () => {
    const page = answersOn(new SharedShelf().page());
    page.save('say', 1, { entered: { sentence: 'Folds come in twos.' } });
    expect(page.save('say', 1, { entered: { sentence: 'x'.repeat(LONGEST_ANSWER) } })).toEqual({
      kept: false,
      why: 'refused',
    });
    expect(page.load('say', 1).value.entered).toEqual({ sentence: 'Folds come in twos.' });
  });

  test('two pages with different exercises keep both, and hear of each other', () => {
    const device = new SharedShelf();
    const [one, other] = [answersOn(device.page()), answersOn(device.page())];
    let heard = 0;
    const stop = one.subscribe(() => {
      heard += 1;
    });
    one.save('sum', 1, { hints: 1 });
    other.save('row', 1, { hints: 2 });
    expect(heard).toBe(2);
    stop();
    expect([one.load('row', 1).value.hints, other.load('sum', 1).value.hints]).toEqual([2, 1]);
  });

  test('one answer can be begun afresh, or all of them', () => {
    const device = new SharedShelf();
    const page = answersOn(device.page());
    page.save('sum', 1, { solved: true });
    page.save('sum', 2, { solved: true });
    page.forget('sum', 1);
    expect([page.load('sum', 1).entered, page.load('sum', 2).entered]).toEqual([false, true]);
    page.forgetAll();
    expect(device.texts.size).toBe(0);
  });

  test('what is kept but no answer is left out, and without storage answers stay on the page', () => {
    const device = new SharedShelf();
    device.texts.set(
      KEY,
      '{"version":1,"sum 1":7,"sum 2":{"entered":{"spare":{"a":1},"onBar":"14"},"hints":9},"sum 3":null}',
    );
    const page = answersOn(device.page());
    expect(page.load('sum', 1).entered).toBe(false);
    expect(page.load('sum', 2).value).toEqual({ ...NO_ANSWER, entered: { onBar: '14' } });
    const without = answersOn(noShelf);
    expect(without.save('sum', 1, { hints: 1 })).toEqual({ kept: false, why: 'no-storage' });
    expect(without.load('sum', 1)).toMatchObject({ value: { hints: 1 }, keeping: { kept: false, why: 'no-storage' } });
  });
});
