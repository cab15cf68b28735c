import { describe, expect, it } from 'vitest';
import { CHOOSE_ASKS } from '../../../src/solver/exercises/choose/problem.ts';
import { SEQUENCES } from '../../../src/solver/exercises/order/problem.ts';
import { SAY_TOPICS } from '../../../src/solver/exercises/say/problem.ts';
import { exercises } from '../../../src/solver/index.ts';
import { workedPlate } from '../../../src/widgets/sheets/worked-plate.ts';
import { replay, seed } from '../../seed.ts';

const SEEDS = Array.from({ length: 12 }, (_, i) => `${seed}-${i}`);
const ROWS = ['knot-direction', 'edge-knot', 'turning-knot', 'leading-string', 'first-move', 'let-out'];
const ASKS: { readonly [Shown in 'bar' | 'row']: readonly string[] } = {
  bar: ['borrow', 'odd-half', 'fold-or-string', 'safe-sheet', 'two-borrowed', 'sides-even', 'mounting', 'sum'],
  row: [
    ...ROWS,
    'bundle-knot',
    'corner-cells',
    'bundle-one-knot',
    'leading-inside',
    'rows-short',
    'first-row',
    'let-out',
    'take-in',
    'row',
  ],
};

const classOf = (svg: string | null): string | undefined => svg?.match(/class="fig fig-([\w-]+)"/)?.[1];
const wantedFor = (ask: string): string | undefined => (['bar', 'row'] as const).find((one) => ASKS[one].includes(ask));

describe(`the plate of a case worked through (${replay})`, () => {
  it.each([
    ...CHOOSE_ASKS.map((ask) => ['choose', ask] as const),
    ...SAY_TOPICS.map((topic) => ['say', topic] as const),
    ...SEQUENCES.map((sequence) => ['order', sequence] as const),
  ])('%s %s: has what it is about, or nothing', (kind, asked) => {
    let drawn = 0;
    for (const each of SEEDS) {
      const options = { choose: { ask: asked }, say: { topic: asked }, order: { of: asked } }[kind];
      const problem = exercises[kind as 'choose'].make(each, 'alone', options as { ask: 'let-out' });
      if ('ok' in problem) continue;
      const svg = workedPlate(problem, 'case');
      if (svg) {
        drawn += 1;
        expect(classOf(svg)).toBe(wantedFor(asked));
        if (wantedFor(asked) === 'row') expect(svg).toMatch(new RegExp(`<title[^>]*>Row ${problem.row}\\b`));
      }
    }
    expect(drawn > 0).toBe(wantedFor(asked) !== undefined);
  });

  it('of a fitting sum is its bar', () => {
    const problem = exercises.sum.make(String(seed), 'alone', {});
    if ('ok' in problem) throw new Error('A fitting sum can always be made.');
    expect(classOf(workedPlate(problem, 'case'))).toBe('bar');
  });
});
