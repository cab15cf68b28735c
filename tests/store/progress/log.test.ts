import { array, assert, constantFrom, integer, property, record } from 'fast-check';
import { describe, expect, test } from 'vitest';
import { EMPTY_LOG, isKept, type Kept, type Log, mergeLogs } from '../../../src/store/progress/log.ts';
import { tries } from '../../seed.ts';

/** Few ids and few moments, so that logs overlap and ids clash. */
const kept = record({
  id: constantFrom('a-1', 'a-2', 'b-1', 'b-2', 'c-1'),
  at: integer({ min: 0, max: 3 }),
  act: constantFrom('opened', 'read'),
  lesson: constantFrom('widening', 'closing-in'),
});
const log = array(kept, { maxLength: 6 }).map((events): Log => mergeLogs(EMPTY_LOG, { events }));

describe('two logs merge', () => {
  test('in any order with the same result', () => {
    assert(
      property(log, log, (one, other) => {
        expect(mergeLogs(one, other)).toEqual(mergeLogs(other, one));
      }),
      tries(),
    );
  });

  test('twice as once', () => {
    assert(
      property(log, log, (one, other) => {
        const merged = mergeLogs(one, other);
        expect(mergeLogs(merged, other)).toEqual(merged);
        expect(mergeLogs(merged, merged)).toEqual(merged);
      }),
      tries(),
    );
  });

  test('grouped any way with the same result', () => {
    assert(
      property(log, log, log, (one, two, three) => {
        expect(mergeLogs(mergeLogs(one, two), three)).toEqual(mergeLogs(one, mergeLogs(two, three)));
      }),
      tries(),
    );
  });

  test('and lose no event, nor make one up', () => {
    assert(
      property(log, log, (one, other) => {
        const ids = ({ events }: Log) => events.map(({ id }) => id);
        expect([...ids(mergeLogs(one, other))].sort()).toEqual([...new Set([...ids(one), ...ids(other)])].sort());
      }),
      tries(),
    );
  });

  test('into the order of their moments', () => {
    const event = (id: string, at: number): Kept => ({ id, at });
    const merged = mergeLogs({ events: [event('z', 5)] }, { events: [event('b', 5), event('a', 9), event('c', 1)] });
    expect(merged.events.map(({ id }) => id)).toEqual(['c', 'b', 'z', 'a']);
  });
});

test.each([
  ['no id', { at: 3 }],
  ['an id that could be anything', { id: '<b>', at: 3 }],
  ['no moment', { id: 'a-1' }],
  ['a moment before any calendar', { id: 'a-1', at: -1 }],
  ['a moment after the last', { id: 'a-1', at: 1e16 }],
  ['half a millisecond', { id: 'a-1', at: 0.5 }],
])('%s is no stamp of an event', (_, value) => {
  expect(isKept(value)).toBe(false);
});

test('an id and a moment are a stamp, whatever stands beside them', () => {
  expect(isKept({ id: 'k3v9q2-12', at: 1772474400000, act: 'sung' })).toBe(true);
});
