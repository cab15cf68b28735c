import { expect, test } from 'vitest';
import { number } from '../../../src/solver/exercises/number/index.ts';
import type { NumberAsk } from '../../../src/solver/exercises/number/problem.ts';

/** Steps whose last figure is what the question asks for, were it asked for there. */
const TELLS: Partial<Record<NumberAsk, (values: Readonly<Record<string, number | string>>) => readonly unknown[]>> = {
  'bundle-in-row': ({ left, right, fullWidthRow }) => [left, right, fullWidthRow === undefined ? undefined : 1],
  'longest-float': ({ columns }) => [columns],
};

test('a half-worked figure shows steps that lead to it, and none that tells it', () => {
  const led = new Set<string>();
  for (const [ask, tells] of Object.entries(TELLS))
    for (let seed = 0; seed < 200; seed += 1) {
      const problem = number.make(seed, 'mixed', { ask: ask as NumberAsk });
      if ('ok' in problem) throw new Error(`${ask} makes no problem.`);
      const { figure } = number.solve(problem);
      const shown = number.solution(problem).filter(({ gives }) => gives === null);
      for (const { key, values } of shown) {
        led.add(key);
        expect(tells(values), `${ask}, seed ${seed}: ${key}`).not.toContain(figure);
      }
      expect(number.solution(problem).at(-1)?.gives).toBe('figure');
    }
  expect([...led].sort()).toEqual(['float-skips', 'let-out-by-row', 'out-still-in-row']);
});
