import { describe, expect, test } from 'vitest';
import { exerciseBank } from '../../src/entries/exercise-bank.ts';
import { SKILLS } from '../../src/solver/exercises/skills.ts';
import { blocksIn, partsOf } from '../content/lesson-text.ts';
import { bank, LESSONS } from './bank.ts';

describe('the exercises that practice knows', () => {
  test('are those of the lessons, each set as it is there', () => {
    const written = LESSONS.flatMap(({ id: lesson, body }) =>
      [...blocksIn(partsOf(body))]
        .filter(({ tag }) => tag === 'Exercise')
        .map(({ set: { id, kind, level: _, seed: __, ...options } }) => ({ id, kind, options, lesson })),
    );
    expect(bank.map(({ id, kind, options, lesson }) => ({ id, kind, options, lesson }))).toEqual(written);
    expect(written.length).toBeGreaterThan(20);
  });

  test.each(bank.map((entry) => [entry.id, entry] as const))('%s practises a skill', (_, { skills }) => {
    expect(skills.length).toBeGreaterThan(0);
    for (const skill of skills) expect(SKILLS).toContain(skill);
  });

  test('a lesson may hold figures, lists of names and words alone', () => {
    const body =
      'Text.\n<Exercise id="one" kind="sum" level="alone" fields={[\'spare\', \'onBar\']} />\n<Exercise id="two" kind="number" ask="knots-in-row" row={1}>\nWhy?\n</Exercise>';
    const data = { skills: ['first-row'] as const };
    expect(exerciseBank([{ id: 'any', body, data }])).toMatchObject([
      { id: 'one', options: { fields: ['spare', 'onBar'] }, skills: ['fitting-sum', 'odd-numbers'] },
      { id: 'two', options: { ask: 'knots-in-row', row: 1 }, skills: ['first-row'] },
    ]);
  });
});
