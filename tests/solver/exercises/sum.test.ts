import { describe, expect, test } from 'vitest';
import { exercises, SUM_FIELDS, type SumField } from '../../../src/solver/exercises/index.ts';
import { SUM_RULES, workOut } from '../../../src/solver/exercises/sum/solve.ts';
import { type FitResult, fitPiece } from '../../../src/solver/fit.ts';
import { drawing, replay, seed } from '../../seed.ts';
import { sumOf } from './draws.ts';
import '../matchers.ts';

const { sum } = exercises;

/** Every chart up to 60 wide on every bar up to 40, by both ways with an odd string, of any bundle. */
const every = [...Array(59).keys()].flatMap((w) =>
  [...Array(39).keys()].flatMap((c) =>
    (['lone-string', 'carried-end'] as const).map((oddMethod) => ({
      width: w + 2,
      capacity: c + 2,
      oddMethod,
      maxBundle: 40,
    })),
  ),
);

describe('the fitting sum', () => {
  test('comes to what the solver says, for every chart and bar that can be made', () => {
    let compared = 0;
    for (const entered of every) {
      const fitted = fitPiece(entered);
      const made = sum.make('own', 'alone', entered);
      if (!fitted.ok) {
        const own = 'ok' in made ? made.problem : null;
        expect(own, JSON.stringify(entered)).toMatchObject({
          code: fitted.problem.code,
          values: fitted.problem.values,
        });
        continue;
      }
      if ('ok' in made) throw new Error(`${JSON.stringify(entered)} ${JSON.stringify(made)}`);
      const { fit } = fitted;
      const { startSide, oddMethod, ...figures } = workOutAll(made);
      expect({ startSide, oddMethod }).toEqual({ startSide: 'left', oddMethod: fit.oddMethod });
      expect(figures, JSON.stringify(entered)).toEqual({
        places: fit.onBar + fit.borrowed,
        spare: fit.left.strands + fit.right.strands + fit.onBar - (fit.onBar + fit.borrowed),
        eachSide: fit.left.strands - fit.borrowed / 2,
        parity: (fit.left.strands - fit.borrowed / 2) % 2,
        borrowed: fit.borrowed,
        onBar: fit.onBar,
        bundle: fit.left.strands,
        foldsOnBar: fit.folds,
        loneStrings: fit.loneStrings,
        foldsEachSide: fit.left.folds,
        firstRowKnots: fit.firstRowKnots,
        fullWidthRow: fit.rowsToFullWidth,
      });
      compared += 1;
    }
    expect(compared).toBeGreaterThan(3000);
  });

  test('says its steps with the keys and figures of the solver’s own working', () => {
    for (const entered of every.filter(({ width, capacity }) => width % 3 === 0 || capacity % 5 === 0)) {
      const fitted = fitPiece(entered);
      if (!fitted.ok) continue;
      const steps = sum.solution(sumOf(entered)).map(({ key, values }) => ({ key, values }));
      const own = new Set(['no-idle-place', 'nothing-spare', 'nothing-to-borrow', 'bundle', 'carry-side']);
      const straight = entered.width <= entered.capacity;
      // A straight piece has no spare strings to work on, and no folds at the sides; an exercise still asks for them.
      const shared = (key: string): boolean =>
        !own.has(key) && !(straight && ['spare', 'halved', 'half-even', 'folds-each-side'].includes(key));
      expect(
        steps.filter(({ key }) => shared(key)),
        JSON.stringify(entered),
      ).toEqual(fitted.working.filter(({ key }) => shared(key)));
    }
  });

  test('has rules that all say the same of true figures', () => {
    for (const entered of every) {
      const made = sum.make('own', 'alone', entered);
      if ('ok' in made) continue;
      const truth = workOut(made);
      for (const field of SUM_FIELDS)
        for (const rule of SUM_RULES[field])
          if (rule(made, truth) !== truth[field]) expect.fail(`${field} ${JSON.stringify(entered)}`);
    }
  });

  test('is drawn from the workshop’s figures and can be made', () => {
    const next = drawing();
    for (let n = 0; n < 400; n += 1) {
      const level = (['worked', 'half-worked', 'alone', 'mixed'] as const)[n % 4] ?? 'mixed';
      const problem = sum.make(next(0, 1e9), level);
      const fitted: FitResult = fitPiece({ ...problem, oddMethod: problem.oddMethod ?? undefined });
      expect(fitted.ok, `${replay} ${JSON.stringify(problem)}`).toBe(true);
      if (!fitted.ok) continue;
      const { fit } = fitted;
      expect(problem.width).toBeGreaterThanOrEqual(8);
      expect(problem.width).toBeLessThanOrEqual(48);
      expect(problem.capacity).toBeGreaterThanOrEqual(6);
      expect(problem.capacity).toBeLessThanOrEqual(24);
      if (level !== 'mixed') expect([fit.width % 2, fit.width > fit.capacity], replay).toEqual([0, true]);
      if (level === 'worked' || level === 'half-worked') expect([fit.borrowed, fit.idle], replay).toEqual([0, 0]);
      expect(problem.fields.includes('loneStrings')).toBe(fit.loneStrings > 0);
    }
  });

  test('meets idle places and borrowing alone, and odd widths by both ways when mixed', () => {
    const seen = new Set<string>();
    for (let n = 0; n < 300; n += 1) {
      const alone = workOutAll(sum.make(`${seed} ${n}`, 'alone'));
      seen.add(`alone borrowed ${alone.borrowed}`);
      const mixed = sum.make(`${seed} ${n}`, 'mixed');
      seen.add(`mixed ${mixed.oddMethod}`);
      if (mixed.width <= mixed.capacity) seen.add('mixed straight');
      if (alone.places % 2 === 0 && sum.make(`${seed} ${n}`, 'alone').capacity % 2 === 1) seen.add('alone idle');
    }
    expect([...seen].sort(), replay).toEqual([
      'alone borrowed 0',
      'alone borrowed 2',
      'alone idle',
      'mixed carried-end',
      'mixed lone-string',
      'mixed null',
      'mixed straight',
    ]);
  });
});

function workOutAll(problem: ReturnType<typeof sumOf>) {
  const { startSide, oddMethod } = problem;
  return { startSide, oddMethod, ...workOut(problem) };
}

describe('the learner’s own figures', () => {
  test('26 on 16 make that sum, whatever the seed', () =>
    expect(sum.solve(sumOf({ width: 26, capacity: 16 }))).toEqual({
      places: 16,
      spare: 10,
      eachSide: 5,
      parity: 'odd',
      borrowed: 2,
      onBar: 14,
      bundle: 6,
      foldsOnBar: 7,
      foldsEachSide: 3,
      firstRowKnots: 16,
      fullWidthRow: 6,
    }));
  test('21 on 15 need a lone string', () =>
    expect(sum.solve(sumOf({ width: 21, capacity: 15 }))).toMatchObject({
      onBar: 13,
      foldsOnBar: 6,
      loneStrings: 1,
      bundle: 4,
    }));
  test('one of them holds and the other is drawn to go with it', () => {
    for (let n = 0; n < 40; n += 1) {
      expect(sum.make(`${seed} ${n}`, 'alone', { capacity: 16 })).toMatchObject({ capacity: 16 });
      expect(sum.make(`${seed} ${n}`, 'mixed', { width: 26 })).toMatchObject({ width: 26 });
    }
  });
  test('hold even where the workshop does not meet them', () => {
    expect(sumOf({ width: 90 })).toMatchObject({ width: 90 });
    expect(sumOf({ capacity: 60 })).toMatchObject({ capacity: 60 });
  });
  test('some of the fields can be asked for, in the order of the sum', () =>
    expect(sumOf({ width: 26, capacity: 16, fields: ['bundle', 'spare', 'loneStrings'] }).fields).toEqual([
      'spare',
      'bundle',
    ]));
  test.each([
    [{ width: 60, capacity: 16 }, 'bundle-too-big'],
    [{ width: 9, capacity: 3 }, 'too-narrow'],
    [{ width: 26.5, capacity: 16 }, 'not-a-whole-number'],
    [{ width: 26, capacity: 401 }, 'out-of-range'],
    [{ width: 26, capacity: 16, maxBundle: 1 }, 'out-of-range'],
    [{ width: 26, maxBundle: 2.5 }, 'not-a-whole-number'],
  ])('%j are refused as %s', (options, code) => expect(sum.make(1, 'alone', options)).toBeRefusedAs(code));
});

describe('marking a sum of 26 on 16', () => {
  const problem = sumOf({ width: 26, capacity: 16 });
  const right = sum.solve(problem);
  const verdicts = (
    answer: Parameters<typeof sum.judge>[1],
    options?: Parameters<typeof sum.judge>[2],
  ): Record<string, string> =>
    Object.fromEntries(
      Object.entries(sum.judge(problem, answer, options).fields).map(([field, result]) => [field, result.verdict]),
    );

  test('takes one slip as one: what follows from it follows', () => {
    const slipped = {
      ...right,
      eachSide: 10,
      parity: 'even',
      borrowed: 0,
      onBar: 16,
      bundle: 10,
      foldsOnBar: 8,
      foldsEachSide: 5,
      firstRowKnots: 18,
      fullWidthRow: 10,
    };
    expect(sum.judge(problem, slipped)).toMatchObject({ outcome: 'not-right', first: 'eachSide' });
    expect(verdicts(slipped)).toEqual({
      places: 'right',
      spare: 'right',
      eachSide: 'wrong',
      parity: 'follows',
      borrowed: 'follows',
      onBar: 'follows',
      bundle: 'follows',
      foldsOnBar: 'follows',
      foldsEachSide: 'follows',
      firstRowKnots: 'follows',
      fullWidthRow: 'follows',
    });
  });
  test('lets a later figure be right that does not follow from a wrong one', () =>
    expect(verdicts({ ...right, bundle: 5 })).toMatchObject({
      bundle: 'wrong',
      foldsEachSide: 'right',
      firstRowKnots: 'right',
      fullWidthRow: 'right',
    }));
  test('finds what follows through figures that are not asked for', () => {
    const short = sumOf({ width: 26, capacity: 16, fields: ['spare', 'onBar', 'bundle'] });
    // 26 + 16 = 42, 21 a side, borrow two: 14 on the bar, 22 a side.
    expect(sum.judge(short, { spare: 42, onBar: 14, bundle: 22 }).fields).toMatchObject({
      spare: { verdict: 'wrong' },
      onBar: { verdict: 'right' },
      bundle: { verdict: 'follows' },
    });
  });
  test('takes either half of an odd number as following', () => {
    for (const folds of [2, 3])
      expect(verdicts({ ...right, borrowed: 0, onBar: 16, bundle: 5, foldsEachSide: folds })['foldsEachSide']).not.toBe(
        'wrong',
      );
  });

  test.each([' 14 ', '+14', '14', 14, '\u00a014', '１４'])('reads %j as fourteen', (entry) =>
    expect(verdicts({ ...right, onBar: entry })['onBar']).toBe('right'),
  );
  test.each(['-10', '−10', '\u2212 10', '- 10', -10])('reads %j as ten below nothing, which is a try', (entry) =>
    expect(sum.judge(problem, { ...right, spare: entry })).toMatchObject({ outcome: 'not-right', first: 'spare' }),
  );
  test.each(['2.5', '1e3', '2,5', 'ten', '0x10', '1 4', '--3', Number.NaN, Infinity, 2.5, true, [], {}] as never[])(
    'cannot read %j, and takes it as no try',
    (entry) => {
      const judged = sum.judge(problem, { ...right, spare: entry });
      expect(judged).toMatchObject({
        outcome: 'unreadable',
        first: 'spare',
        fields: { spare: { verdict: 'unreadable', reason: 'not-a-whole-number' } },
      });
      expect(judged).toHoldNoNaN();
    },
  );
  test('says of a figure of four hundred digits that it is too long', () =>
    expect(sum.judge(problem, { ...right, spare: '9'.repeat(400) }).fields.spare).toEqual({
      verdict: 'unreadable',
      reason: 'too-long',
    }));
  test('wants even or odd in words', () => {
    expect(verdicts({ ...right, parity: ' Odd ' })['parity']).toBe('right');
    expect(sum.judge(problem, { ...right, parity: '1' }).fields.parity).toEqual({
      verdict: 'unreadable',
      reason: 'not-even-or-odd',
    });
    expect(sum.judge(problem, { ...right, parity: 1 }).outcome).toBe('unreadable');
  });

  test('takes an empty field as no try and names it', () => {
    for (const nothing of ['', '  ', null, undefined])
      expect(sum.check(problem, { ...right, borrowed: nothing })).toMatchObject({
        outcome: 'unreadable',
        first: 'borrowed',
        missteps: [],
      });
  });
  test('judges one field at a time when asked to', () => {
    const first: readonly SumField[] = ['places', 'spare'];
    expect(Object.keys(sum.judge(problem, { places: 16 }, { upTo: 'places' }).fields)).toEqual(['places']);
    expect(sum.judge(problem, { places: 16 }, { upTo: 'places' }).outcome).toBe('right');
    expect(sum.judge(problem, { spare: 42 }, { upTo: 'spare' })).toMatchObject({ outcome: 'not-right' });
    expect(sum.judge(problem, { places: 16 }, { upTo: 'spare' })).toMatchObject({
      outcome: 'unreadable',
      first: 'spare',
    });
    expect(Object.keys(sum.judge(problem, right, { upTo: 'spare' }).fields)).toEqual(first);
    expect(sum.check(problem, { places: 16, spare: 42 }, { upTo: 'spare' }).missteps).toEqual(['added']);
  });
  test('judges what is there when a part is enough', () => {
    expect(sum.judge(problem, { spare: 10, onBar: 16 }, { partial: true })).toMatchObject({
      outcome: 'not-right',
      fields: { onBar: { verdict: 'wrong' } },
    });
    expect(sum.judge(problem, { spare: 10 }, { partial: true }).outcome).toBe('right');
    expect(sum.judge(problem, {}, { partial: true }).outcome).toBe('unreadable');
    expect(sum.judge(problem, { spare: 'x', onBar: 14 }, { partial: true }).outcome).toBe('unreadable');
  });
});
