import { describe, expect, test } from 'vitest';
import { type FitStepKey, fitPiece } from '../../src/solver/index.ts';
import { fitStepSum, fitStepWords } from '../../src/words/fit-steps.ts';
import { fitWords } from '../../src/words/fit-words.ts';
import { alternativesOf } from '../solver/worlds.ts';
import { expectSayable, expectSentences, strict } from './sayable.ts';

const answerFor = (width: number, capacity: number, rest: Partial<Parameters<typeof fitPiece>[0]> = {}) =>
  fitPiece({ width, capacity, ...rest });

const workingOf = (...figures: Parameters<typeof answerFor>) => {
  const answer = answerFor(...figures);
  if (answer.ok) return answer.working;
  return 'working' in answer.problem ? answer.problem.working : [];
};

/** All keys, by a record that the compiler keeps complete. */
const KEYS: Readonly<Record<FitStepKey, true>> = {
  'all-on-bar': true,
  'carried-end': true,
  'idle-place': true,
  spare: true,
  halved: true,
  'half-even': true,
  'half-odd': true,
  'borrow-two': true,
  'nothing-left-on-bar': true,
  'bundle-over-most': true,
  'on-bar': true,
  'folds-on-bar': true,
  'lone-string': true,
  'carry-side': true,
  'folds-each-side': true,
  'first-row': true,
  'full-width': true,
};

describe('the fitting sum in words', () => {
  test('26 columns on a bar of 16 are worked as a maker says it', () => {
    const steps = workingOf(26, 16);
    expect(steps.map(fitStepSum).filter((sum) => sum !== '')).toEqual([
      '26 − 16 = 10',
      '10 ÷ 2 = 5',
      '16 − 2 = 14 and 5 + 1 = 6',
      '14 ÷ 2 = 7',
      '6 ÷ 2 = 3',
      '14 + 2 = 16',
    ]);
    const text = steps.map(fitStepWords).join(' ');
    expect(text).toContain('5 is odd. A fold is two strings, so one string on each side is left without a partner.');
    expect(text).toContain(
      'Each side lacks one string. The chart has none to give, so borrow two from the bar, one for each side.',
    );
    expect(text).toContain('row 6 is the first with all 26 columns.');
  });

  test('21 on 15 names the lone string, 25 on 16 with a carried end the end too many', () => {
    expect(workingOf(21, 15).map(fitStepSum)).toContain('(13 − 1) ÷ 2 = 6');
    expect(workingOf(21, 15).map(fitStepWords).join(' ')).toContain('the lone string');
    expect(workingOf(25, 16, { oddMethod: 'carried-end' }).map(fitStepSum)).toContain('25 + 1 = 26');
    expect(workingOf(25, 16, { oddMethod: 'carried-end' }).map(fitStepWords).join(' ')).toContain(
      'The carried end rides in the right bundle, where row 1 ends.',
    );
  });

  test('every step of every sum has words, whatever its figures, and all its equations come out', () => {
    const met = new Set<FitStepKey>();
    const seen = new Set<string>();
    for (const oddMethod of ['lone-string', 'carried-end'] as const)
      for (const maxBundle of [2, 8])
        for (let width = 2; width <= 24; width += 1)
          for (let capacity = 2; capacity <= 13; capacity += 1) {
            const answer = answerFor(width, capacity, { oddMethod, maxBundle });
            for (const fit of alternativesOf(answer)) expectSayable(fitWords(fit));
            for (const step of workingOf(width, capacity, { oddMethod, maxBundle })) {
              met.add(step.key);
              const asked = { key: step.key, values: strict(step.values) };
              expectSentences(fitStepWords(asked));
              const sum = fitStepSum(asked);
              expectSayable(sum);
              for (const part of sum === '' ? [] : sum.split(' and ')) {
                if (seen.has(part)) continue;
                seen.add(part);
                const [left = '', right = ''] = part.split(' = ');
                const [, a, , b = '0', sign, c] = /^\(?(\d+)( − (\d)\))? ([+−÷]) (\d+)$/.exec(left) ?? [];
                const first = Number(a) - Number(b);
                const worked = sign === '+' ? first + Number(c) : sign === '−' ? first - Number(c) : first / Number(c);
                expect(worked, part).toBe(Number(right));
              }
            }
          }
    expect([...met].sort()).toEqual(Object.keys(KEYS).sort());
  });

  test('a split is told in one line, level or lopsided', () => {
    const answer = answerFor(26, 16);
    if (!answer.ok) throw new Error('26 on 16 is a piece');
    expect(fitWords(answer.fit)).toBe('14 on the bar (7 folds), 6 on each side (3 folds)');
    expect(answer.alternatives.map(fitWords)).toContain(
      '16 on the bar (8 folds), 6 on the left (3 folds), 4 on the right (2 folds)',
    );
  });
});
