import { expect, test } from 'vitest';
import type { KindName, ProblemOf } from '../../src/solver/exercises/contract.ts';
import { type Family, familyOf, numberFamilyOf } from '../../src/solver/exercises/family.ts';
import { exercises } from '../../src/solver/exercises/index.ts';
import { slips as ofFits } from '../../src/solver/exercises/number/fit-missteps.ts';
import { slips as ofMeasures } from '../../src/solver/exercises/number/measure-missteps.ts';
import { slips as ofNumbers } from '../../src/solver/exercises/number/missteps.ts';
import { slips as ofRows } from '../../src/solver/exercises/number/row-missteps.ts';
import { slips as ofThread } from '../../src/solver/exercises/number/thread-missteps.ts';
import { slipsOf } from '../../src/solver/missteps/slips.ts';
import { stepSum, stepWords } from '../../src/words/exercises/step-words.ts';
import { CHOOSE_STEPS } from '../../src/words/exercises/steps/choose.ts';
import { FITTING_STEPS } from '../../src/words/exercises/steps/fitting.ts';
import { KNOT_STEPS } from '../../src/words/exercises/steps/knots.ts';
import { MEASURING_STEPS } from '../../src/words/exercises/steps/measuring.ts';
import { ORDER_STEPS } from '../../src/words/exercises/steps/order.ts';
import { READING_STEPS } from '../../src/words/exercises/steps/reading.ts';
import { ROW_STEPS } from '../../src/words/exercises/steps/rows.ts';
import { SAY_STEPS } from '../../src/words/exercises/steps/say.ts';
import { lineOf, type Sayings } from '../../src/words/exercises/steps/saying.ts';
import { THREAD_STEPS } from '../../src/words/exercises/steps/thread.ts';
import { slipWords } from '../../src/words/slips/index.ts';
import { tellChoice } from '../../src/words/slips/tell-choose.ts';
import { tellFitting } from '../../src/words/slips/tell-fitting.ts';
import { tellKnots } from '../../src/words/slips/tell-knots.ts';
import { tellMeasuring } from '../../src/words/slips/tell-measuring.ts';
import { tellOrder } from '../../src/words/slips/tell-order.ts';
import { tellReading } from '../../src/words/slips/tell-reading.ts';
import { tellRows } from '../../src/words/slips/tell-rows.ts';
import { tellThread } from '../../src/words/slips/tell-thread.ts';
import { slipIn, type Tell } from '../../src/words/slips/telling.ts';
import { everyProblem } from '../every-problem.ts';
import { drawing, replay } from '../seed.ts';

const PROBLEMS = everyProblem(drawing(), {
  sum: 3,
  number: 2,
  mark: 1,
  row: 2,
  spot: 1,
  order: 1,
  choose: 1,
  say: 1,
});

/** What a page fetches for each family. */
const TELLS: Readonly<Record<Family, Tell>> = {
  fitting: tellFitting,
  rows: tellRows,
  knots: tellKnots,
  thread: tellThread,
  measuring: tellMeasuring,
  reading: tellReading,
  order: tellOrder,
  choose: tellChoice,
  say: () => null,
};
const STEPS: Readonly<Record<Family, Sayings>> = {
  fitting: FITTING_STEPS,
  rows: ROW_STEPS,
  knots: KNOT_STEPS,
  thread: THREAD_STEPS,
  measuring: MEASURING_STEPS,
  reading: READING_STEPS,
  order: ORDER_STEPS,
  choose: CHOOSE_STEPS,
  say: SAY_STEPS,
};
const NUMBER_SLIPS = {
  fitting: ofFits,
  rows: ofRows,
  thread: ofThread,
  measuring: ofMeasures,
  reading: ofRows,
} as const;

const workOf = <K extends KindName>(kind: K, problem: ProblemOf<K>) => exercises[kind].solution(problem);
const singlesOf = <K extends KindName>(kind: K, problem: ProblemOf<K>) => slipsOf[kind].singles(problem);

test('problems of all families are looked at', () =>
  expect(new Set(PROBLEMS.map(familyOf))).toEqual(new Set(Object.keys(TELLS))));

test('the family of a problem has words for every slip that explains an answer to it', () => {
  for (const problem of PROBLEMS)
    for (const { slips, answer } of singlesOf(problem.kind, problem as never)) {
      const words = slipIn(TELLS[familyOf(problem)], problem, slips[0], answer);
      expect(words, `${slips[0]} in ${JSON.stringify(problem)} ${replay}`).not.toBeNull();
      expect(words).toEqual(slipWords(problem, slips[0], answer));
    }
});

test('the family of a problem has words for every step of its working', () => {
  for (const problem of PROBLEMS)
    for (const step of workOf(problem.kind, problem as never))
      expect(lineOf(STEPS[familyOf(problem)], step)).toEqual({
        sum: stepSum(problem.kind, step as never),
        text: stepWords(problem.kind, step as never),
      });
});

test('a step without words in its family is never shown as a gap', () =>
  expect(() => lineOf(THREAD_STEPS, { key: 'spare', values: {} })).toThrow('spare'));

test('a single figure is explained by the slips of its family as by all slips together', () => {
  for (const problem of PROBLEMS) {
    if (problem.kind !== 'number') continue;
    const own = NUMBER_SLIPS[numberFamilyOf(problem)];
    expect(own.singles(problem), JSON.stringify(problem)).toEqual(ofNumbers.singles(problem));
    const cases = (of: typeof own) => [...of.followUps(problem)].slice(0, 40);
    expect(cases(own)).toEqual(cases(ofNumbers));
  }
});
