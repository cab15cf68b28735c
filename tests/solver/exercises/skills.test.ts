import { describe, expect, test } from 'vitest';
import { exercises, type KindName, LEVELS } from '../../../src/solver/exercises/index.ts';
import { isSkill, SKILLS, skillsOf } from '../../../src/solver/exercises/skills.ts';
import { SKILL_NAMES } from '../../../src/words/skills.ts';
import { KINDS, made, makeWith, sumOf } from './draws.ts';

const number = (options: Parameters<typeof exercises.number.make>[2]) =>
  skillsOf('number', makeWith('number', 'skill', { width: 26, capacity: 16, height: 32, ...options }), []);

describe('which skill an exercise practises', () => {
  test('a sum with an odd figure is about odd numbers', () => {
    expect(skillsOf('sum', sumOf({ width: 26, capacity: 16 }), [])).toEqual(['fitting-sum']);
    expect(skillsOf('sum', sumOf({ width: 21, capacity: 15 }), [])).toEqual(['odd-numbers']);
    expect(skillsOf('sum', sumOf({ width: 26, capacity: 15 }), [])).toEqual(['odd-numbers']);
  });

  test('a row is the first, or one on the way to full width, or one of the closing half', () => {
    expect(number({ ask: 'knots-in-row', row: 1 })).toEqual(['first-row']);
    expect(number({ ask: 'knots-in-row', row: 4 })).toEqual(['widening']);
    expect(number({ ask: 'bundle-in-row', row: 30 })).toEqual(['closing']);
  });

  test.each([
    ['spare', 'fitting-sum'],
    ['corner-cells', 'outline'],
    ['full-width-row', 'widening'],
    ['first-closing-row', 'closing'],
    ['folds-to-cut', 'cutting'],
    ['cut-length', 'cutting'],
    ['base-string-in-all', 'thread'],
    ['column-of-knot', 'reading-chart'],
    ['capacity-low', 'measuring'],
    ['longest-float', 'colours'],
  ] as const)('%s belongs to %s', (ask, skill) => {
    expect(number({ ask })).toEqual([skill]);
  });

  test('every kind at every level has one, whatever its lesson says', () => {
    for (const kind of KINDS as readonly KindName[])
      for (const level of LEVELS)
        for (let seed = 0; seed < 30; seed += 1) {
          const problem = made(exercises[kind as 'sum'].make(seed, level, {}));
          const skills = skillsOf(kind as 'sum', problem, ['faults']);
          expect(skills, `${kind} ${seed}`).toHaveLength(1);
          expect(skills.every(isSkill)).toBe(true);
        }
  });
});

test('every skill has a name in words, and no two have the same', () => {
  expect(new Set(SKILLS.map((skill) => SKILL_NAMES[skill])).size).toBe(SKILLS.length);
});
