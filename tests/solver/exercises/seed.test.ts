import { describe, expect, test } from 'vitest';
import { draw, hashSeed } from '../../../src/solver/exercises/seed.ts';
import { replay, seed } from '../../seed.ts';

describe('a seed', () => {
  // The published test values of the 32-bit FNV-1a hash.
  test.each([
    ['', 0x811c9dc5],
    ['a', 0xe40c292c],
    ['b', 0xe70c2de5],
    ['foobar', 0xbf9cf968],
  ])('"%s" hashes to its published value', (text, hash) => expect(hashSeed(text)).toBe(hash));

  test('may hold any letters, and letters that share a byte part company', () => {
    expect(hashSeed('č')).not.toBe(hashSeed('\r\u0001'.slice(0, 1)));
    expect(new Set(['ā', 'Ā', 'a', 'š', '船'].map(hashSeed)).size).toBe(5);
  });

  test('gives every figure of a range, both ends too, about as often', () => {
    const counts = new Map<number, number>();
    for (let n = 0; n < 6000; n += 1) {
      const figure = draw(`${seed} ${n}`)(6, 11);
      counts.set(figure, (counts.get(figure) ?? 0) + 1);
    }
    expect(
      [...counts.keys()].sort((a, b) => a - b),
      replay,
    ).toEqual([6, 7, 8, 9, 10, 11]);
    for (const count of counts.values()) {
      expect(count, replay).toBeGreaterThan(800);
      expect(count, replay).toBeLessThan(1200);
    }
  });

  test('and the next whole number do not give neighbouring figures', () => {
    const firsts = Array.from({ length: 200 }, (_, n) => draw(n)(1, 1000));
    const near = firsts.slice(1).filter((figure, n) => Math.abs(figure - (firsts[n] ?? 0)) <= 10);
    expect(near.length).toBeLessThan(20);
  });
});
