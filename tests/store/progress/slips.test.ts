import { describe, expect, test } from 'vitest';
import { skillsOf } from '../../../src/solver/exercises/skills.ts';
import { SLIPS } from '../../../src/solver/missteps/index.ts';
import { slipsOf } from '../../../src/solver/missteps/slips.ts';
import type { Kept } from '../../../src/store/progress/log.ts';
import { problemOf } from '../../../src/store/progress/practice.ts';
import { eventsIn } from '../../../src/store/progress/read-event.ts';
import { slipExercise } from '../../../src/store/progress/slip-practice.ts';
import { recentSlips } from '../../../src/store/progress/slip-states.ts';
import { slipSeenWords } from '../../../src/words/slip-names.ts';
import { bank } from '../../entries/bank.ts';
import { drawing, replay } from '../../seed.ts';
import { DAY, MONDAY, tried } from './events.ts';

let count = 0;
const slipped = (at: number, slips: readonly string[], seed = 'first'): Kept => {
  count += 1;
  return { id: `slip-${count}`, at, act: 'slipped', exercise: 'full-width', seed, slips };
};
const wrong = tried(MONDAY, { seed: 'first', outcome: 'not-right' });
const seen = (events: readonly Kept[], now = MONDAY + DAY) =>
  recentSlips(eventsIn({ events: events.toSorted((one, other) => one.at - other.at) }), now);
const told = (events: readonly Kept[], now?: number) =>
  seen(events, now).map((slip) => slipSeenWords(slip.slip, { ...slip, most: 20 }));

describe('slips that came up lately', () => {
  test('are told by how often they came up this week, the newest first', () => {
    expect(
      told([
        wrong,
        slipped(MONDAY, ['row-late']),
        slipped(MONDAY + 5, ['row-late', 'one-string-a-row']),
        slipped(MONDAY + 9, ['row-late']),
      ]),
    ).toEqual([
      'Counted one row late: three times this week',
      'One string a row in all, not one on each side: once this week',
    ]);
  });

  test('of the weeks before are told as that, and after four weeks no more', () => {
    const events = [wrong, slipped(MONDAY, ['row-late']), slipped(MONDAY + 1, ['row-late'])];
    expect(told(events, MONDAY + 8 * DAY)).toEqual(['Counted one row late: twice in the last four weeks']);
    expect(told(events, MONDAY + 29 * DAY)).toEqual([]);
  });

  test('go once their skill was right twice at the first try since, and come back with the slip', () => {
    const events = [wrong, slipped(MONDAY, ['row-late']), tried(MONDAY + 10)];
    expect(told(events)).toHaveLength(1);
    const twice = [...events, tried(MONDAY + 20)];
    expect(told(twice)).toEqual([]);
    expect(told([...events, tried(MONDAY + 20, { aided: true })])).toHaveLength(1);
    expect(told([...events, tried(MONDAY + 20, { skills: ['closing'] })])).toHaveLength(1);
    expect(told([...twice, slipped(MONDAY + 30, ['row-late'])])).toEqual(['Counted one row late: twice this week']);
  });

  test('that nobody can place, or that only a later version names, are left out', () => {
    expect(seen([slipped(MONDAY, ['row-late'], 'elsewhere')])).toEqual([]);
    expect(told([wrong, slipped(MONDAY, ['sung-too-low'])])).toEqual([null]);
  });
});

test('every slip has a short name of its own that stands before a count', () => {
  const names = SLIPS.map((slip) => slipSeenWords(slip, { week: 2, month: 2, most: 20 }));
  expect(new Set(names).size).toBe(SLIPS.length);
  for (const name of names) expect(name).toMatch(/^[A-Z][^.:]{9,69}: twice this week$/);
});

test('a slip of any exercise of the lessons can be practised by itself, with other figures in which it shows', () => {
  const from = drawing()(1, 1e6);
  let slips = 0;
  for (const entry of bank) {
    const problem = problemOf(entry, String(from), 'alone');
    const [skill] = problem ? skillsOf(entry.kind, problem, entry.ofLesson) : [];
    if (!problem || !skill) continue;
    const [slip] = slipsOf[entry.kind].singles(problem as never).flatMap((shown) => shown.slips);
    if (slip === undefined) continue;
    const events = eventsIn({ events: [tried(MONDAY, { exercise: entry.id, seed: String(from), skills: [skill] })] });
    const found = slipExercise({ slip, skill, exercise: entry.id }, { events, bank, salt: replay });
    const what = `${replay}: ${slip} in ${entry.id}`;
    if (!found) throw new Error(what);
    if (found.entry.id === entry.id) expect(found.seed, what).not.toBe(String(from));
    expect(found.skill, what).toBe(skill);
    const shown = slipsOf[found.entry.kind].singles(found.problem as never).flatMap((each) => each.slips);
    expect(shown, what).toContain(slip);
    slips += 1;
  }
  expect(slips).toBeGreaterThan(60);
});
