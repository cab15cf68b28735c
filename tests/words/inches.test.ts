import { describe, expect, test } from 'vitest';
import { inchesOf, readInches } from '../../src/words/inches.ts';
import { drawing, replay } from '../seed.ts';

describe('inches as they are typed', () => {
  test.each([
    ['1', 25.4],
    ['1.5', 38.1],
    ['1,5', 38.1],
    ['.25', 6.35],
    ['5/8', 15.88],
    ['1 5/8', 41.28],
    ['1½', 38.1],
    ['1 ¾', 44.45],
    ['¼', 6.35],
    ['2 in', 50.8],
    ['2"', 50.8],
  ])('“%s” are %s mm', (text, mm) => {
    expect(readInches(text)).toBe(mm);
  });

  test.each(['', ' ', '.', 'two', '1/0', '1 2', '-3', '5/', '1..2', '1/2/3', 'in'])('“%s” is no length', (text) => {
    expect(readInches(text)).toBeNull();
  });

  test('what is written is read as the same length, to a fortieth of a millimetre', () => {
    const next = drawing();
    for (let n = 0; n < 500; n += 1) {
      const mm = next(1, 20_000) / 10;
      const back = readInches(String(inchesOf(mm)));
      expect(Math.abs((back ?? 0) - mm), replay).toBeLessThan(0.025);
    }
  });
});
