import { array, assert, boolean, constantFrom, integer, property, record } from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Skill, skillsOf } from '../../../src/solver/exercises/skills.ts';
import type { ProgressEvent } from '../../../src/store/progress/event.ts';
import { type Log, mergeLogs } from '../../../src/store/progress/log.ts';
import {
  type Asked,
  type BankEntry,
  nextExercise,
  type Picked,
  sheetOf,
} from '../../../src/store/progress/practice.ts';
import { eventsIn } from '../../../src/store/progress/read-event.ts';
import { dueTimes } from '../../../src/store/progress/schedule.ts';
import { chosenSkills, skillState } from '../../../src/store/progress/skill-states.ts';
import { bank, LESSON_SKILLS } from '../../entries/bank.ts';
import { tries } from '../../seed.ts';
import { DAY, MONDAY, tried } from './events.ts';

const MINUTE = 60_000;
const chosen = (skill: Skill, at = MONDAY, on = true): ProgressEvent => ({
  id: `chosen-${skill}-${at}`,
  at,
  act: 'chosen',
  skill,
  on,
});
const logOf = (events: readonly ProgressEvent[]): Log => ({ events: events.map((event) => ({ ...event })) });

/** A learner who sits down on some days, works what is due, and gets right what `knows` says. */
function learn(
  start: readonly ProgressEvent[],
  days: readonly number[],
  knows: (picked: Picked, day: number) => boolean,
  device = 'table',
) {
  let events = [...start];
  const asked: (Picked & { at: number; wasDue: boolean })[] = [];
  for (const day of days) {
    let now = MONDAY + day * DAY;
    let before: Skill | null = null;
    for (let turn = 0; turn < 12; turn += 1) {
      const due = dueTimes(events, LESSON_SKILLS);
      const picked = nextExercise({ events, bank, due, now, before, salt: device });
      if (!picked) break;
      asked.push({ ...picked, at: now, wasDue: (due[picked.skill] ?? Number.POSITIVE_INFINITY) <= now });
      const { entry, skill, level, seed, problem } = picked;
      events = [
        ...events,
        tried(now, {
          exercise: entry.id,
          kind: entry.kind,
          lesson: entry.lesson,
          level,
          seed,
          skills: [...skillsOf(entry.kind, problem, entry.ofLesson)],
          outcome: knows(picked, day) ? 'right' : 'not-right',
        }),
      ].map((event) => (event.id.startsWith('try-') ? { ...event, id: event.id.replace('try', device) } : event));
      before = skill;
      now += 2 * MINUTE;
    }
  }
  return { events, asked };
}

describe('practice over simulated days', () => {
  const start = [chosen('fitting-sum'), chosen('widening'), chosen('closing')];

  const evenings = (many: number) => Array.from({ length: many }, (_, day) => day);

  test('a learner who knows the craft and sits down every evening is steady in all of it within six weeks', () => {
    const { events, asked } = learn(start, evenings(42), () => true);
    for (const skill of ['fitting-sum', 'widening', 'closing'] as const)
      expect(skillState(events, skill), skill).toMatchObject({ state: 'steady', level: 'mixed' });
    // What is known is asked less and less: no evening has more than each skill twice, and most have nothing.
    expect(asked.length).toBeLessThan(30);
  });

  test('nobody is steady on the first two evenings', () => {
    const { events } = learn(start, [0, 1], () => true);
    for (const skill of ['fitting-sum', 'widening', 'closing'] as const)
      expect(skillState(events, skill).state).toBe('learning');
  });

  test('a learner who learns after three evenings of slips gets there too, by way of worked cases', () => {
    const { events, asked } = learn([chosen('widening')], evenings(40), (_, day) => day >= 3);
    expect(asked.filter(({ at }) => at < MONDAY + 3 * DAY).every(({ level }) => level === 'worked')).toBe(true);
    expect(new Set(asked.map(({ level }) => level))).toEqual(new Set(['worked', 'half-worked', 'alone', 'mixed']));
    expect(skillState(events, 'widening').state).toBe('steady');
  });

  test('what is known comes back after days, what is not within the hour', () => {
    const know = dueTimes(learn(start, [0], () => true).events, LESSON_SKILLS);
    const later = dueTimes(learn(start, [0, 1, 4, 12], () => true).events, LESSON_SKILLS);
    expect((later.widening ?? 0) - (MONDAY + 12 * DAY)).toBeGreaterThan(7 * DAY);
    const wrong = dueTimes([...start, tried(MONDAY, { outcome: 'not-right' })], LESSON_SKILLS);
    expect((wrong.widening ?? 0) - MONDAY).toBeLessThan(60 * MINUTE);
    expect(know.widening).toBeGreaterThan(wrong.widening ?? Number.POSITIVE_INFINITY);
  });

  test('a sitting ends by itself, and after a holiday it is not longer than the skills met', () => {
    const { asked } = learn(start, [0, 60], () => true);
    expect(asked.filter(({ at }) => at >= MONDAY + 60 * DAY).length).toBeLessThanOrEqual(start.length * 2);
    expect(asked.length).toBeGreaterThan(0);
  });

  test('whatever comes out right, no skill is asked twice running while another was met, and the first is due', () => {
    assert(
      property(array(boolean(), { minLength: 1, maxLength: 30 }), integer({ min: 1, max: 9 }), (outcomes, gap) => {
        let turn = 0;
        const { asked } = learn(start, [0, gap, gap * 3], () => outcomes[turn++ % outcomes.length] ?? true);
        for (const [place, { skill, at, wasDue }] of asked.entries()) {
          const before = asked[place - 1];
          if (!before || before.at < at - DAY / 2) expect(wasDue).toBe(true);
          else expect(skill).not.toBe(before.skill);
        }
      }),
      tries(8),
    );
  });

  test('two devices that practised apart agree once their logs are merged, in either order', () => {
    const table = learn(start, [0, 3], () => true, 'table').events;
    const phone = learn(start, [1, 9], () => true, 'phone').events;
    const here = eventsIn(mergeLogs(logOf(table), logOf(phone)));
    const there = eventsIn(mergeLogs(logOf(phone), logOf(table)));
    expect(here).toEqual(there);
    expect(dueTimes(here, LESSON_SKILLS)).toEqual(dueTimes(there, LESSON_SKILLS));
    // Two days at the table and two on the phone are more than three.
    expect([table, phone].map((apart) => skillState(apart, 'widening').state)).toEqual(['learning', 'learning']);
    expect(skillState(here, 'widening').state).toBe('steady');
  });
});

describe('a skill is steady', () => {
  const onDays = (...days: readonly number[]) => days.map((day) => tried(MONDAY + day * DAY));

  test('after right first tries on three different days, however many there were on one', () => {
    expect(skillState(onDays(0, 0, 0, 0), 'widening').state).toBe('learning');
    expect(skillState(onDays(0, 1), 'widening').state).toBe('learning');
    expect(skillState(onDays(0, 1, 9), 'widening').state).toBe('steady');
    expect(skillState([], 'widening').state).toBe('new');
  });

  test('by the learner’s own calendar: two tries an hour apart can lie on two days, and eleven hours apart on one', () => {
    const at = (hour: number, day: string) => tried(MONDAY + hour * 60 * MINUTE, { day });
    expect(skillState([at(0, '2026-03-02'), at(1, '2026-03-03')], 'widening').rightDays).toBe(2);
    expect(skillState([at(0, '2026-03-02'), at(11, '2026-03-02')], 'widening').rightDays).toBe(1);
  });

  test('second tries with the same figures, and tries after a hint, do not count', () => {
    const again = [0, 1, 2].map((day) => tried(MONDAY + day * DAY, { seed: 'same' }));
    expect(skillState(again, 'widening').rightDays).toBe(1);
    const wrongFirst = [tried(MONDAY, { seed: 'same', outcome: 'not-right' }), tried(MONDAY + DAY, { seed: 'same' })];
    expect(skillState(wrongFirst, 'widening').rightDays).toBe(0);
    expect(
      skillState(
        [0, 1, 2].map((day) => tried(MONDAY + day * DAY, { aided: true })),
        'widening',
      ).rightDays,
    ).toBe(0);
  });

  test('and stays so, though a wrong answer makes the next exercise easier', () => {
    const steady = onDays(0, 1, 2);
    expect(skillState(steady, 'widening').level).toBe('mixed');
    expect(
      skillState([...steady, tried(MONDAY + 9 * DAY, { outcome: 'not-right', level: 'mixed' })], 'widening'),
    ).toMatchObject({
      state: 'steady',
      level: 'alone',
    });
  });
});

test('the levels go from worked to mixed, a step at a time, and a step back after a wrong answer', () => {
  const levels: string[] = [];
  const events: ProgressEvent[] = [];
  for (const outcome of ['right', 'right', 'right', 'not-right', 'not-right', 'not-right', 'right'] as const) {
    const { level } = skillState(events, 'widening');
    levels.push(level);
    events.push(tried(MONDAY + events.length, { outcome, level }));
  }
  expect(levels).toEqual(['worked', 'half-worked', 'alone', 'mixed', 'alone', 'half-worked', 'worked']);
  // Whoever is right at once where all steps were theirs need not begin with a worked case.
  expect(skillState([tried(MONDAY, { level: 'alone' })], 'widening').level).toBe('mixed');
});

describe('what was met', () => {
  test('is what was tried, what the learner named, and what a lesson read to its end is about', () => {
    const due = dueTimes(
      [
        tried(MONDAY),
        chosen('closing', MONDAY + 1),
        { id: 'read-1', at: MONDAY + 2, act: 'read', lesson: 'cutting-and-mounting' },
        { id: 'opened-1', at: MONDAY + 3, act: 'opened', lesson: 'the-fitting-sum' },
      ],
      LESSON_SKILLS,
    );
    expect(Object.keys(due).sort()).toEqual(['closing', 'cutting', 'mounting', 'widening']);
    expect(due.closing).toBe(MONDAY + 1);
  });

  test('what the learner took back is not met any more', () => {
    const events = [chosen('closing', MONDAY), chosen('closing', MONDAY + 1, false)];
    expect([...chosenSkills(events)]).toEqual([]);
    expect(dueTimes(events, LESSON_SKILLS)).toEqual({});
  });
});

describe('the next exercise', () => {
  const now = MONDAY + DAY;
  const askedWith = (events: readonly ProgressEvent[], change: Partial<Asked> = {}): Asked => ({
    events,
    bank,
    due: dueTimes(events, LESSON_SKILLS),
    now,
    ...change,
  });

  test('is none for a learner who met nothing, and none where nothing is due, unless more is wanted', () => {
    expect(nextExercise(askedWith([]))).toBeNull();
    expect(nextExercise(askedWith([], { more: true }))).toBeNull();
    const fresh = [tried(now - 1)];
    expect(nextExercise(askedWith(fresh))).toBeNull();
    expect(nextExercise(askedWith(fresh, { more: true }))?.skill).toBe('widening');
  });

  test('asks for the skill it is picked for, at every level, of every skill with an exercise', () => {
    const askable = new Set(bank.flatMap(({ skills }) => skills));
    for (const skill of askable) {
      const picked = nextExercise(askedWith([chosen(skill)]));
      expect(picked?.skill, skill).toBe(skill);
      if (picked) expect(skillsOf(picked.entry.kind, picked.problem, picked.entry.ofLesson)).toContain(skill);
    }
    expect(askable.size).toBeGreaterThan(5);
  });

  test('is another one of the skill with other figures each time', () => {
    assert(
      property(
        constantFrom(...new Set(bank.flatMap(({ skills }) => skills))),
        record({ outcome: constantFrom('right' as const, 'not-right' as const) }),
        (skill, change) => {
          const events: ProgressEvent[] = [chosen(skill)];
          const met = new Set<string>();
          for (let turn = 0; turn < 8; turn += 1) {
            const picked = nextExercise(askedWith(events, { more: true }));
            if (!picked) throw new Error(`nothing for ${skill}`);
            const name = `${picked.entry.id} ${picked.seed}`;
            expect(met.has(name)).toBe(false);
            met.add(name);
            events.push(
              tried(MONDAY + turn, { ...change, exercise: picked.entry.id, seed: picked.seed, skills: [skill] }),
            );
          }
        },
      ),
      tries(8),
    );
  });

  test('after a worked case leaves one step open, in every kind but one: nothing of what is to be said can stand there', () => {
    const kinds = [...new Set(bank.map(({ kind }) => kind))];
    for (const wanted of kinds) {
      const asked = bank.filter(({ kind }) => kind === wanted);
      for (const skill of asked.flatMap(({ skills }) => skills)) {
        const events = [chosen(skill), tried(MONDAY, { skills: [skill], level: 'worked' })];
        const picked = nextExercise(askedWith(events, { bank: asked, more: true }));
        expect(picked?.entry.kind).toBe(wanted);
        // No odd number is among the figures of the first levels.
        const level = skill === 'odd-numbers' ? picked?.level : wanted === 'say' ? 'worked' : 'half-worked';
        expect(picked?.level, `${wanted}, ${skill}`).toBe(level);
      }
    }
    expect(kinds).toHaveLength(8);
  });

  test('stays the same as long as nothing is tried: a page that is loaded again asks it again', () => {
    const events = [chosen('widening'), chosen('closing')];
    expect(nextExercise(askedWith(events))).toEqual(nextExercise(askedWith(events)));
  });
});

test('a printed sheet holds different exercises of what was met, mixed', () => {
  const events = [chosen('fitting-sum'), chosen('widening'), chosen('closing')];
  const sheet = sheetOf({ events, bank, due: dueTimes(events, LESSON_SKILLS), now: MONDAY }, 6);
  expect(new Set(sheet.map(({ entry }) => entry.id)).size).toBe(6);
  for (const [place, { skill }] of sheet.entries()) expect(skill).not.toBe(sheet[place - 1]?.skill);
  const alone = sheetOf(
    { events: [chosen('widening')], bank: bank.slice(0, 2) as BankEntry[], due: {}, now: MONDAY },
    6,
  );
  expect(alone).toEqual([]);
});
