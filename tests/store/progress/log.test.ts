import { array, assert, boolean, constant, constantFrom, integer, oneof, property, record, tuple } from 'fast-check';
import { describe, expect, test } from 'vitest';
import { SLIPS_KEPT } from '../../../src/store/progress/compact.ts';
import { exerciseStates } from '../../../src/store/progress/exercise-states.ts';
import { standingOf } from '../../../src/store/progress/lesson-states.ts';
import { EMPTY_LOG, isKept, type Kept, type Log, mergeLogs } from '../../../src/store/progress/log.ts';
import { eventsIn } from '../../../src/store/progress/read-event.ts';
import { dueTimes, type LessonSkills } from '../../../src/store/progress/schedule.ts';
import { chosenSkills, skillStates } from '../../../src/store/progress/skill-states.ts';
import { recentSlips } from '../../../src/store/progress/slip-states.ts';
import { tries } from '../../seed.ts';
import { DAY, MONDAY, tried } from './events.ts';

const at = integer({ min: 0, max: 40 }).map((days) => MONDAY + days * (DAY / 3));
/** Few ids, few moments and few names, so that logs overlap, ids clash and everything is repeated. */
const stamp = { id: constantFrom('a-1', 'a-2', 'a-3', 'b-1', 'b-2', 'c-1', 'c-2'), at };
const lesson = constantFrom('widening', 'closing-in');
const skills = constantFrom(['widening'], ['closing', 'widening'], ['closing']);
const happening = oneof(
  record({ act: constantFrom('opened', 'read'), lesson }),
  record({ act: constant('ticked'), lesson, check: constantFrom('one', 'two'), on: boolean() }),
  record({ act: constant('chosen'), skill: constantFrom('widening', 'closing'), on: boolean() }),
  record({
    act: constant('tried'),
    lesson,
    exercise: constantFrom('full-width', 'closing-mark'),
    kind: constant('number'),
    level: constantFrom('worked', 'alone'),
    seed: constantFrom('1', '2', '3'),
    skills,
    outcome: constantFrom('right', 'not-right'),
    aided: boolean(),
    day: constantFrom('2026-03-02', '2026-03-03', '2026-03-04', '2026-03-05'),
  }),
  record({
    act: constant('slipped'),
    exercise: constantFrom('full-width', 'closing-mark'),
    seed: constantFrom('1', '2'),
    slips: constantFrom(['row-late'], ['row-early'], ['row-late', 'row-early']),
  }),
  // Of a later version.
  record({ act: constant('sung'), song: constantFrom('low', 'high') }),
);
const clashing = tuple(record(stamp), happening).map(([stamped, what]): Kept => ({ ...stamped, ...what }));
const log = array(clashing, { maxLength: 14 }).map((events): Log => mergeLogs(EMPTY_LOG, { events }));
/** Events as devices write them: no two of one id. */
const written = array(tuple(at, happening), { maxLength: 90 }).map((all) =>
  all.map(([moment, what], place): Kept => ({ id: `d-${place}`, at: moment, ...what })),
);

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

  test('as if everything that ever happened had been brought together first', () => {
    assert(
      property(written, written, (here, there) => {
        const apart = there.map((event): Kept => ({ ...event, id: `e${event.id}` }));
        const merged = mergeLogs(mergeLogs(EMPTY_LOG, { events: here }), mergeLogs(EMPTY_LOG, { events: apart }));
        expect(merged).toEqual(mergeLogs(EMPTY_LOG, { events: [...apart, ...here] }));
        const all = new Set([...here, ...apart].map((event) => JSON.stringify(event)));
        for (const event of merged.events) expect(all.has(JSON.stringify(event))).toBe(true);
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

const LESSONS: LessonSkills = { widening: ['widening', 'row-knots'], 'closing-in': ['closing'] };
const NOW = MONDAY + 14 * DAY;

/** Every figure that pages show of a progress. */
function figuresOf(log: Log) {
  const events = eventsIn(log);
  const due = dueTimes(events, LESSONS);
  return {
    standing: standingOf(log, due),
    skills: skillStates(events),
    chosen: [...chosenSkills(events)].sort(),
    exercises: [...exerciseStates(events)].map(([id, { seeds, ...state }]) => [id, [...seeds].sort(), state]).sort(),
    slips: recentSlips(events, NOW),
  };
}

describe('what a log keeps', () => {
  test('is all that any figure of the progress is read from', () => {
    assert(
      property(written, (events) => {
        const whole: Log = {
          events: events.toSorted((one, other) => one.at - other.at || (one.id < other.id ? -1 : 1)),
        };
        expect(figuresOf(mergeLogs(EMPTY_LOG, whole))).toEqual(figuresOf(whole));
      }),
      tries(),
    );
  });

  const repeated = (count: number, what: object): Kept[] =>
    Array.from({ length: count }, (_, n) => ({ id: `r-${n}`, at: MONDAY + n, ...what }));
  const keptOf = (events: Kept[]): readonly number[] =>
    mergeLogs(EMPTY_LOG, { events }).events.map((event) => event.at - MONDAY);

  test('of a lesson opened a thousand times is the first time', () => {
    expect(keptOf(repeated(1000, { act: 'opened', lesson: 'widening' }))).toEqual([0]);
  });

  test('of a check ticked and unticked is the first tick and what holds now', () => {
    const ticks = repeated(9, { act: 'ticked', lesson: 'widening', check: 'one' }).map((event, n) => ({
      ...event,
      on: n % 2 === 1,
    }));
    expect(keptOf(ticks)).toEqual([1, 8]);
  });

  test('of one exercise tried over and over in one set of figures is the first try, the first that was right, and the last', () => {
    const { id: _, at: __, ...what } = tried(MONDAY);
    const tries = repeated(200, what).map((event, n): Kept => ({ ...event, outcome: n < 50 ? 'not-right' : 'right' }));
    expect(keptOf(tries)).toEqual([0, 50, 199]);
  });

  test('of a first try is everything: each set of figures counts', () => {
    const { id: _, at: __, ...what } = tried(MONDAY);
    const tries = repeated(300, what).map((event, n): Kept => ({ ...event, seed: String(n) }));
    expect(keptOf(tries)).toHaveLength(300);
  });

  test(`of a slip are the ${SLIPS_KEPT} newest times, and then it is told as so many or more`, () => {
    const slipped = repeated(500, { act: 'slipped', exercise: 'full-width', seed: '1', slips: ['row-late'] });
    expect(keptOf(slipped)).toEqual(Array.from({ length: SLIPS_KEPT }, (_, n) => 500 - SLIPS_KEPT + n));
    const events = eventsIn(mergeLogs(EMPTY_LOG, { events: [...slipped, tried(MONDAY, { seed: '1' })] }));
    expect(recentSlips(events, MONDAY + DAY)).toMatchObject([
      { slip: 'row-late', week: SLIPS_KEPT, skill: 'widening' },
    ]);
  });

  test('of what this version can’t read is everything', () => {
    expect(keptOf(repeated(40, { act: 'sung', song: 'low' }))).toHaveLength(40);
  });

  test('of two events with one id, as after a change by hand, is both; what is read of them is the same everywhere', () => {
    const one: Kept = { id: 'a-1', at: MONDAY, act: 'opened', lesson: 'widening' };
    const other: Kept = { ...one, lesson: 'closing-in' };
    const [here, there] = [
      mergeLogs({ events: [one] }, { events: [other] }),
      mergeLogs({ events: [other] }, { events: [one] }),
    ];
    expect(here).toEqual(there);
    expect(eventsIn(here)).toEqual([other]);
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
