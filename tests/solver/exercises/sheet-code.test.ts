import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  MOST_LEARNERS,
  readCode,
  readSheet,
  seedIn,
  sheetSeed,
  sheetText,
} from '../../../src/solver/exercises/sheet-code.ts';

test('a code is taken as people type it', () => {
  expect(readCode('Spring Tide ')).toBe('spring-tide');
  expect(readCode('25 Nov.')).toBe('25-nov');
  expect(readCode(' – ')).toBeNull();
  expect(readCode('')).toBeNull();
  expect(readCode('x'.repeat(60))).toHaveLength(24);
});

test('every sheet reads back from its address as it was written', () => {
  const sheets = fc.record({
    code: fc
      .string({ maxLength: 40 })
      .map(readCode)
      .filter((code) => code !== null),
    learner: fc.option(fc.integer({ min: 1, max: MOST_LEARNERS })),
  });
  fc.assert(
    fc.property(sheets, (sheet) => {
      expect(readSheet(sheetText(sheet))).toEqual(sheet);
    }),
  );
});

test('what is no sheet is none', () => {
  for (const text of [null, '', '.', 'tide.', 'tide.0', 'tide.41', 'tide.3.1', 'Tide', 'ti de', '-tide', '../x'])
    expect(readSheet(text), String(text)).toBeNull();
});

test('an exercise’s own seed goes before that of the sheet, and a sheet gives each exercise a seed of its own', () => {
  expect(seedIn('?sum-whole=7&sheet=tide.3', 'sum-whole')).toBe('7');
  expect(seedIn('?sum-whole=7&sheet=tide.3', 'sum-first')).toBe('tide.3 sum-first');
  expect(seedIn('?sheet=tide', 'sum-first')).toBe('tide sum-first');
  expect(seedIn('?sheet=tide.99', 'sum-first')).toBeNull();
  expect(seedIn('', 'sum-first')).toBeNull();
});

test('no two learners of a class and no two exercises share a seed', () => {
  const seeds = Array.from({ length: MOST_LEARNERS }, (_, index) =>
    ['sum-first', 'sum-whole'].map((exercise) => sheetSeed({ code: 'tide', learner: index + 1 }, exercise)),
  ).flat();
  expect(new Set(seeds).size).toBe(2 * MOST_LEARNERS);
});
