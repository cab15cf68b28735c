import { expect, it } from 'vitest';
import { qrSvg } from '../../src/figures/qr.ts';

it('draws an address as whole modules inside a quiet zone of four', () => {
  const svg = qrSvg('https://example.org/lessons/the-fitting-sum/');
  const size = Number(/viewBox="0 0 (\d+) \1"/.exec(svg)?.[1]);
  // 44 signs at the middle level of correction: version 3 holds 42 of them, version 4, of 33 modules, holds 62.
  expect(size).toBe(33 + 8);
  const runs = [...svg.matchAll(/M(\d+) (\d+)h(\d+)v1H(\d+)z/g)].map((run) => run.slice(1).map(Number));
  expect(runs.length).toBeGreaterThan(33);
  for (const [x = -1, y = -1, length = 0, back] of runs) {
    expect(back).toBe(x);
    expect(Math.min(x, y)).toBeGreaterThanOrEqual(4);
    expect(Math.max(x + length, y + 1)).toBeLessThanOrEqual(size - 4);
  }
  // The three finders start with a run of seven.
  expect(runs.filter(([, y, length]) => y === 4 && length === 7).map(([x]) => x)).toEqual([4, size - 11]);
});

it('says so where an address is too long for the largest code', () => {
  expect(() => qrSvg(`https://example.org/?${'x'.repeat(3000)}`)).toThrow();
});
