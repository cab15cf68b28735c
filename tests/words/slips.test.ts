import { describe, expect, test } from 'vitest';
import type { ExerciseProblem } from '../../src/solver/exercises/contract.ts';
import { exercises } from '../../src/solver/exercises/index.ts';
import { slips } from '../../src/solver/exercises/sum/missteps.ts';
import type { SlipId } from '../../src/solver/missteps/ids.ts';
import { missteps, SLIPS } from '../../src/solver/missteps/index.ts';
import { explanationWords, FOLLOW_UP, noSlipWords, slipWords } from '../../src/words/slips/index.ts';
import { everyProblem } from '../every-problem.ts';
import { drawing, replay } from '../seed.ts';
import { expectSentences } from './sayable.ts';

const PROBLEMS: readonly ExerciseProblem[] = [
  exercises.sum.make('lone', 'mixed', { width: 21, capacity: 15 }),
  exercises.sum.make('carried', 'mixed', { width: 25, capacity: 16, oddMethod: 'carried-end' }),
  ...everyProblem(drawing(), { sum: 5, number: 3, mark: 2, row: 3, spot: 1, order: 5, choose: 12, say: 1 }),
].filter((made): made is ExerciseProblem => !('ok' in made));

/** Claims in a text that arithmetic can check. */
function expectTrueClaims(text: string): void {
  for (const [claim, bar = '', side = '', all = '', needs = '', off = '', which = ''] of text.matchAll(
    /([\d,−]+) on the bar and ([\d,−]+) on each side are ([\d,−]+) strings?\. The piece needs ([\d,]+), so ([\d,]+) (?:is|are) (too many|missing)/g,
  )) {
    const [b, s, a, n, o] = [bar, side, all, needs, off].map((figure) =>
      Number(figure.replace('−', '-').replaceAll(',', '')),
    );
    expect(Number(b) + 2 * Number(s), claim).toBe(a);
    expect(Number(n) + (which === 'too many' ? 1 : -1) * Number(o), claim).toBe(a);
  }
  for (const [claim, odd = ''] of text.matchAll(
    /(\d+)(?: strings? (?:is|are) left for the sides\. That| spare\. That|\. That)? is odd/g,
  ))
    expect(Number(odd) % 2, claim).toBe(1);
  for (const [claim, a = '', sign = '', b = '', sum = ''] of text.matchAll(/([\d−]+) ([+−]) (\d+) = (−?\d+)/g))
    expect(Number(a) + (sign === '+' ? 1 : -1) * Number(b), claim).toBe(Number(sum.replace('−', '-')));
}

const answerTo = (problem: ExerciseProblem, slip: SlipId) => missteps[slip](problem);

const told = ({ did, why, next }: { did: string; why: string; next: string }): string => `${did} ${why} ${next}`;

describe('slips in words', () => {
  test('every slip, in every problem where it can be made, says what was done, why it does not come out and what is next', () => {
    const met = new Set<SlipId>();
    for (const problem of PROBLEMS)
      for (const slip of SLIPS) {
        const answer = answerTo(problem, slip);
        const words = slipWords(problem, slip, answer);
        if (answer === null || words === null) continue;
        if (!exercises[problem.kind].missteps[slip]) continue;
        if (JSON.stringify(answer) === JSON.stringify(exercises[problem.kind].solve(problem as never))) continue;
        met.add(slip);
        for (const text of Object.values(words)) expectSentences(text);
        expectTrueClaims(told(words));
        expect(words.did).toMatch(/^You [a-z]/);
        expect(slipWords(problem, slip, answer, false)?.did).toBe(
          words.did.replace(/^You/, 'You would get this if you'),
        );
      }
    expect([...met].sort(), replay).toEqual([...SLIPS].sort());
  });

  test('each slip has its own text', () => {
    const texts = new Map<SlipId, string>();
    for (const problem of PROBLEMS)
      for (const slip of SLIPS) {
        const words = slipWords(problem, slip, answerTo(problem, slip));
        if (words !== null) texts.set(slip, told(words));
      }
    expect(texts.size).toBe(SLIPS.length);
    expect(new Set(texts.values()).size).toBe(SLIPS.length);
  });

  test('five a side kept odd on a bar of 16 is told with these figures', () => {
    const sum = exercises.sum.make('x', 'alone', {
      width: 26,
      capacity: 16,
      fields: ['spare', 'eachSide', 'borrowed', 'onBar', 'bundle'],
    });
    if ('ok' in sum) throw new Error('26 on 16 is a sum');
    const answer = { spare: 10, eachSide: '5', borrowed: 0, onBar: 16, bundle: 5 };
    const [explanation] = explanationWords(sum, answer, exercises.sum.check(sum, answer));
    expect(explanation).toEqual([
      {
        did: 'You left each side at 5 strings.',
        why: '5 is odd. A side bundle is made of folds, and a fold is always two strings. One string would have no partner.',
        next: 'Make each side even: it needs one string more. Think where these two strings can come from.',
      },
    ]);
    const kept = { ...answer, borrowed: 2, bundle: 6 };
    const [raised] = explanationWords(sum, kept, exercises.sum.check(sum, kept));
    expect(raised?.[0]?.why).toBe(
      '16 on the bar and 6 on each side are 28 strings. The piece needs 26, so 2 are too many.',
    );
  });

  test('a single figure is only a guess, and says so', () => {
    const knots = exercises.number.make(4, 'alone', {
      ask: 'knots-in-row',
      width: 26,
      capacity: 16,
      height: 32,
      row: 3,
    });
    if ('ok' in knots) throw new Error('there is a row 3');
    const answer = { figure: 26 };
    const [explanation] = explanationWords(knots, answer, exercises.number.check(knots, answer));
    expect(explanation?.[0]).toEqual({
      did: 'You would get this if you counted a knot for each of the 26 strings.',
      why: 'The bundles in row 3 hold 4 strings each. One knot goes round a whole bundle, and it counts as one.',
      next: 'Count one knot for each bundle, and one for each single string between them.',
    });
  });

  test('two slips in one sum are told one after the other, with claims that hold', () => {
    let pairs = 0;
    for (const problem of PROBLEMS) {
      if (problem.kind !== 'sum' || pairs > 400) continue;
      for (const { slips: made, answer } of slips.pairs(problem)) {
        const [explanation] = explanationWords(problem, answer, { explanations: [made], needsFollowUp: false });
        expect(explanation).toHaveLength(2);
        pairs += 1;
        for (const words of explanation ?? []) {
          expectTrueClaims(told(words));
          for (const text of Object.values(words)) expectSentences(text);
        }
      }
    }
    expect(pairs, replay).toBeGreaterThan(50);
  });

  test('where no slip fits, that is said plainly', () => {
    for (const problem of PROBLEMS) {
      const first =
        problem.kind === 'sum'
          ? (problem.fields[0] ?? null)
          : problem.kind === 'number'
            ? 'figure'
            : ('row-1' as const);
      expectSentences(noSlipWords(problem, first));
      expectSentences(noSlipWords(problem, null));
    }
    for (const text of Object.values(FOLLOW_UP)) expectSentences(text.replace(/:$/, '.'));
  });

  test('a slip that can’t be made in a problem has no words there', () => {
    const sum = PROBLEMS.find(({ kind }) => kind === 'sum');
    const marks = PROBLEMS.find(({ kind }) => kind === 'mark');
    if (!sum || !marks) throw new Error('a kind is missing');
    expect(slipWords(sum, 'row-late', {})).toBeNull();
    expect(slipWords(marks, 'added', [])).toBeNull();
    expect(slipWords(marks, 'not-doubled', [])).toBeNull();
  });
});
