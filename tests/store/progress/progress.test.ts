import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { textAside } from '../../../src/store/progress/aside.ts';
import { gather } from '../../../src/store/progress/gather.ts';
import { isDone, standingOf } from '../../../src/store/progress/lesson-states.ts';
import { NOTES, notesOn } from '../../../src/store/progress/notes.ts';
import { progressOn } from '../../../src/store/progress/progress.ts';
import { eventsIn } from '../../../src/store/progress/read-event.ts';
import { keepStanding, loadStanding, STANDING_KEY } from '../../../src/store/progress/standing.ts';
import { blockedShelf, noShelf, SharedShelf } from '../shelf.ts';
import { MONDAY, toldNote, tried } from './events.ts';

const KEY = 'evenfold.progress';
const released = readFileSync(new URL('../fixtures/progress.v1.json', import.meta.url), 'utf8');
const notesReleased = readFileSync(new URL('../fixtures/notes.v1.json', import.meta.url), 'utf8');

describe('the log on a device', () => {
  test('of the first release still opens, every event of it', () => {
    const device = new SharedShelf();
    device.texts.set(KEY, released);
    const { value, keeping } = progressOn(device.page()).load();
    expect(keeping).toEqual({ kept: true });
    expect(value.events).toEqual(JSON.parse(released).events);
    expect(eventsIn(value)).toHaveLength(value.events.length);
  });

  test('two open tabs add to it in turn, and nothing is overwritten', () => {
    const device = new SharedShelf();
    const [one, other] = [progressOn(device.page()), progressOn(device.page())];
    for (let turn = 0; turn < 5; turn += 1) {
      one.note({ act: 'opened', lesson: `one-${turn}` });
      other.note({ act: 'opened', lesson: `other-${turn}` });
    }
    const all = progressOn(device.page()).load().value.events;
    expect(all).toHaveLength(10);
    expect(new Set(all.map(({ id }) => id)).size).toBe(10);
    expect(one.load().value).toEqual(other.load().value);
  });

  test('an event of a later version is kept as it is, though it can’t be read here', () => {
    const device = new SharedShelf();
    const strange = { id: 'later-1', at: MONDAY, act: 'sung', song: 'a shanty' };
    device.texts.set(KEY, JSON.stringify({ version: 1, events: [strange] }));
    const progress = progressOn(device.page());
    progress.note({ act: 'opened', lesson: 'widening' });
    expect(JSON.parse(device.texts.get(KEY) ?? '').events).toContainEqual(strange);
    expect(eventsIn(progress.load().value).map(({ act }) => act)).toEqual(['opened']);
  });

  test('what can’t be read is said, set aside before anything is written, and each such text with it', () => {
    const device = new SharedShelf();
    for (const broken of ['{"version":1,"events":[{', 'not at all']) {
      device.texts.set(KEY, broken);
      const progress = progressOn(device.page());
      expect(progress.load().keeping).toEqual({ kept: false, why: 'unreadable' });
      expect(progress.note({ act: 'opened', lesson: 'widening' })).toEqual({ kept: true });
    }
    expect(textAside(device.page())).toBe('{"version":1,"events":[{\nnot at all');
  });

  test('where there is no room to set it aside, nothing is written over it', () => {
    const device = new SharedShelf();
    device.texts.set(KEY, 'x'.repeat(60));
    device.room = 100;
    const progress = progressOn(device.page());
    expect(progress.note({ act: 'opened', lesson: 'widening' })).toEqual({ kept: false, why: 'full' });
    expect(device.texts.get(KEY)).toBe('x'.repeat(60));
    expect(progress.load().value.events).toHaveLength(1);
  });

  test('a log of a later version is left alone', () => {
    const device = new SharedShelf();
    const later = JSON.stringify({ version: 9, events: [], more: true });
    device.texts.set(KEY, later);
    expect(progressOn(device.page()).note({ act: 'opened', lesson: 'widening' })).toEqual({
      kept: false,
      why: 'newer',
    });
    expect(device.texts.get(KEY)).toBe(later);
  });

  test.each([
    ['no storage', noShelf, 'no-storage'],
    ['storage that is refused', blockedShelf, 'blocked'],
  ] as const)('with %s the page still knows what happened on it, and says why it is not kept', (_, device, why) => {
    const progress = progressOn(device);
    expect(progress.note({ act: 'opened', lesson: 'widening' })).toEqual({ kept: false, why });
    expect(progress.load().value.events).toHaveLength(1);
  });

  test('a full device keeps what it had, says so, and takes the rest once there is room', () => {
    const device = new SharedShelf();
    const progress = progressOn(device.page());
    progress.note({ act: 'opened', lesson: 'widening' });
    const before = device.texts.get(KEY) ?? '';
    device.room = before.length;
    expect(progress.note({ act: 'read', lesson: 'widening' })).toEqual({ kept: false, why: 'full' });
    expect(device.texts.get(KEY)).toBe(before);
    device.room = Number.POSITIVE_INFINITY;
    expect(progress.note({ act: 'opened', lesson: 'closing-in' })).toEqual({ kept: true });
    expect(progressOn(device.page()).load().value.events).toHaveLength(3);
  });

  test('is wiped with notes and what was set aside, and comes back from what the page still holds', () => {
    const device = new SharedShelf();
    device.texts.set(KEY, 'broken');
    const progress = progressOn(device.page());
    progress.note({ act: 'opened', lesson: 'widening' });
    notesOn(device.page())({ act: 'opened', lesson: 'closing-in' });
    const { value } = progress.load();
    progress.wipe();
    expect([...device.texts.keys()]).toEqual([]);
    expect(progress.load().value.events).toEqual([]);
    progress.add(value);
    expect(progressOn(device.page()).load().value).toEqual(value);
  });
});

describe('notes of lesson pages', () => {
  test('of the first release still come into the log', () => {
    const device = new SharedShelf();
    device.texts.set(`${NOTES}k3v9q2`, notesReleased);
    const page = device.page();
    const progress = progressOn(page);
    gather(progress, page);
    expect(eventsIn(progress.load().value)).toEqual([
      { id: 'k3v9q2-1', at: 1772474400000, act: 'opened', lesson: 'the-fitting-sum' },
      {
        id: 'k3v9q2-2',
        at: 1772474460000,
        act: 'tried',
        lesson: 'the-fitting-sum',
        exercise: 'sum-first',
        kind: 'sum',
        level: 'alone',
        seed: 'sum-first',
        skills: ['fitting-sum'],
        outcome: 'not-right',
        aided: false,
        day: '2026-03-02',
      },
      {
        id: 'k3v9q2-3',
        at: 1772474460500,
        act: 'slipped',
        exercise: 'sum-first',
        seed: 'sum-first',
        slips: ['one-borrowed'],
      },
    ]);
    expect([...device.texts.keys()]).toEqual([KEY]);
  });

  test('of two tabs are all gathered, once each, however often a tab writes its own again', () => {
    const device = new SharedShelf();
    const page = device.page();
    const progress = progressOn(page);
    const [one, other] = [notesOn(device.page()), notesOn(device.page())];
    one({ act: 'opened', lesson: 'widening' });
    other({ act: 'opened', lesson: 'closing-in' });
    gather(progress, page);
    one(toldNote());
    other({ act: 'read', lesson: 'closing-in' });
    gather(progress, page);
    gather(progress, page);
    expect(eventsIn(progress.load().value).map(({ act }) => act)).toHaveLength(4);
  });

  test('stay where they are while the log can’t take them', () => {
    const device = new SharedShelf();
    const page = device.page();
    notesOn(device.page())(toldNote());
    device.room = [...device.texts.values()].join('').length;
    gather(progressOn(page), page);
    expect([...device.texts.keys()]).toHaveLength(1);
    device.room = Number.POSITIVE_INFINITY;
    gather(progressOn(page), page);
    expect([...device.texts.keys()]).toEqual([KEY]);
  });

  test('that can’t be read stay too', () => {
    const device = new SharedShelf();
    const page = device.page();
    device.texts.set(`${NOTES}x`, '{"notes":');
    gather(progressOn(page), page);
    expect(device.texts.get(`${NOTES}x`)).toBe('{"notes":');
  });

  test('say the skill that the figures ask for, and the day on the learner’s own calendar', () => {
    const device = new SharedShelf();
    const page = device.page();
    const evening = Date.UTC(2026, 2, 2, 23, 30);
    const jot = notesOn(device.page(), () => evening);
    const odd = { ...toldNote().problem, width: 21, capacity: 15 } as ReturnType<typeof toldNote>['problem'];
    jot(toldNote({ problem: odd, zone: -60 }));
    const progress = progressOn(page);
    gather(progress, page);
    expect(eventsIn(progress.load().value)).toMatchObject([{ skills: ['odd-numbers'], day: '2026-03-03' }]);
  });
});

describe('how far a lesson has got', () => {
  const events = [
    { id: 'a', at: 1, act: 'opened', lesson: 'widening' },
    { id: 'b', at: 2, act: 'read', lesson: 'widening' },
    { id: 'c', at: 3, act: 'ticked', lesson: 'closing-in', check: 'even', on: true },
  ];
  const doneIn = (lesson: string, log = events) => isDone(standingOf({ events: log }, {}).lessons[lesson]);

  test('reading alone does not make it done, nor does a tick alone', () => {
    expect(doneIn('widening')).toBe(false);
    expect(doneIn('closing-in')).toBe(false);
    expect(standingOf({ events }, {}).lessons['measuring']).toBeUndefined();
  });

  test('read to the end with one exercise right it is done', () => {
    expect(doneIn('widening', [...events, tried(4)])).toBe(true);
    expect(doneIn('widening', [...events, tried(4, { outcome: 'not-right' })])).toBe(false);
  });

  test('of a check ticked and unticked the last change counts', () => {
    const off = { id: 'd', at: 9, act: 'ticked', lesson: 'closing-in', check: 'even', on: false };
    expect(standingOf({ events }, {}).ticks).toEqual({ 'closing-in': ['even'] });
    expect(standingOf({ events: [...events, off] }, {}).ticks).toEqual({ 'closing-in': [] });
  });

  test('what pages show before they are drawn may be anything at all, and is then worked out anew', () => {
    const device = new SharedShelf();
    const page = device.page();
    for (const text of ['', 'null', '[]', '{"lessons":{"a":"opened"}}', '{']) {
      device.texts.set(STANDING_KEY, text);
      expect(loadStanding(page).due).toEqual({});
    }
    const standing = standingOf({ events }, { widening: 5 });
    keepStanding(standing, page);
    expect(loadStanding(page)).toEqual(standing);
  });
});
