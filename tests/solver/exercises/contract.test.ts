import { describe, expect, test } from 'vitest';
import {
  type ExerciseProblem,
  exercises,
  type KindName,
  LEVELS,
  type ProblemOf,
} from '../../../src/solver/exercises/index.ts';
import { NUMBER_ASKS, type NumberOptions } from '../../../src/solver/exercises/number/problem.ts';
import { SLIPS } from '../../../src/solver/missteps/index.ts';
import { slipsOf } from '../../../src/solver/missteps/slips.ts';
import { questionWords } from '../../../src/words/exercises/question.ts';
import { stepWords } from '../../../src/words/exercises/step-words.ts';
import { replay, seed } from '../../seed.ts';
import { placesOfNaN } from '../matchers.ts';
import { ASKED, KINDS, made, makeWith } from './draws.ts';

const SEEDS = 25;

function problemsOf<K extends KindName>(kind: K): ProblemOf<K>[] {
  const drawn = LEVELS.flatMap((level) =>
    Array.from({ length: SEEDS }, (_, n) => exercises[kind].make(`${seed} ${n}`, level)),
  );
  const asked = ASKED[kind].flatMap((options) =>
    LEVELS.flatMap((level) =>
      Array.from({ length: 4 }, (_, n) => made<ProblemOf<K>>(exercises[kind].make(`${seed} ${n}`, level, options))),
    ),
  );
  return [...drawn, ...asked];
}

/** The promises that every kind of exercise keeps. */
function keepsItsPromises<K extends KindName>(kind: K): void {
  const exercise = exercises[kind];
  const problems = problemsOf(kind);

  test('the same seed gives the same problem, and a number is its own text', () => {
    for (const level of LEVELS) {
      expect(exercise.make(31, level)).toEqual(exercise.make(31, level));
      expect(exercise.make('31', level)).toEqual(exercise.make(31, level));
      const drawn = Array.from({ length: 40 }, (_, n) => JSON.stringify(exercise.make(n, level)));
      expect(new Set(drawn).size).toBeGreaterThan(20);
    }
  });

  test('its own answer is right, and no answer at all is no try', () => {
    for (const problem of problems) {
      const right = exercise.check(problem, exercise.solve(problem));
      expect(right, `${replay} ${JSON.stringify(problem)}`).toMatchObject({
        outcome: 'right',
        first: null,
        missteps: [],
      });
      for (const nothing of [{}, null, undefined, [], 5, 'five', { cells: 3 }] as never[]) {
        const empty = exercise.check(problem, nothing);
        expect(empty).toMatchObject({ outcome: 'unreadable', missteps: [], needsFollowUp: false });
        expect(empty.first).not.toBeNull();
      }
    }
  });

  test('every slip gives a whole answer that is found again, or the right one', () => {
    for (const problem of problems) {
      const right = exercise.solve(problem);
      const fields = Object.keys(right).join();
      for (const slip of SLIPS) {
        const answer = exercise.missteps[slip]?.(problem);
        if (!answer) continue;
        const { outcome, missteps } = exercise.check(problem, answer);
        const found = missteps.includes(slip) && outcome === 'not-right' && exercise.applies(problem, slip);
        const whole = Object.keys(answer).join() === fields && placesOfNaN(answer).length === 0;
        if (!whole || !(found || outcome === 'right'))
          expect.fail(
            `${replay}: ${slip} gives ${JSON.stringify([answer, missteps])} for ${JSON.stringify([problem, right])}`,
          );
      }
    }
  });

  test('no slip is dead: each changes the answer to some problem', () => {
    const shown = new Set<string>();
    for (let n = 0; n < 300; n += 1)
      for (const problem of [
        exercise.make(n, 'mixed'),
        ...(n < 60 ? ASKED[kind].map((options) => makeWith(kind, `${n}`, options)) : []),
      ])
        for (const { slips } of slipsOf[kind].singles(problem)) shown.add(slips[0]);
    expect([...shown].sort()).toEqual(Object.keys(exercise.missteps).sort());
  });

  test('problems, answers and help survive being saved, hold no NaN, and a problem does not hold its result', () => {
    for (const problem of problems) {
      const all = [
        problem,
        exercise.solve(problem),
        exercise.solution(problem),
        exercise.hints(problem),
        exercise.fade(problem),
      ];
      for (const data of all) {
        expect(data).toHoldNoNaN();
        expect(JSON.parse(JSON.stringify(data))).toEqual(data);
      }
      const saved: ProblemOf<K> = JSON.parse(JSON.stringify(problem));
      expect(exercise.solve(saved)).toEqual(exercise.solve(problem));
    }
  });

  test('a worked case has other figures, and is worked to an end', () => {
    for (const problem of problems) {
      const { worked } = exercise.hints(problem);
      expect(worked).not.toBeNull();
      if (!worked) continue;
      expect(worked.problem.kind).toBe(kind);
      expect(JSON.stringify(worked.problem)).not.toBe(JSON.stringify(problem));
      expect(worked.steps.at(-1)?.gives).not.toBeNull();
    }
  });

  test('the half-worked form leaves open the step that was missed, or the last', () => {
    for (const problem of problems) {
      const checked = exercise.judge(problem, exercise.solve(problem));
      const [missed] = Object.keys(checked.fields) as (keyof typeof checked.fields & string)[];
      if (missed === undefined) continue;
      expect(exercise.fade(problem, missed).open).toEqual([missed]);
      expect(exercise.fade(problem).open).toHaveLength(1);
      expect(JSON.stringify(exercise.fade(problem, missed).given)).not.toBe(JSON.stringify(exercise.solve(problem)));
    }
  });
}

describe('the half-worked form of a single figure', () => {
  const DRAWN = 100;
  const figuresIn = (text: string): readonly string[] => text.replaceAll(',', '').match(/\d+/g) ?? [];

  for (const ask of NUMBER_ASKS)
    test(`${ask}: a step stands there, and none that tells the figure asked for`, () => {
      let told = 0;
      for (let n = 0; n < DRAWN; n += 1) {
        const problem: ExerciseProblem = made(
          exercises.number.make(`${seed} ${n}`, 'half-worked', { ask } as NumberOptions),
        );
        const given = exercises.number.solution(problem).filter(({ gives }) => gives === null);
        expect(given.length, `${replay} ${JSON.stringify(problem)}`).toBeGreaterThan(0);
        const figure = String(exercises.number.solve(problem).figure);
        const asked = figuresIn(JSON.stringify(questionWords(problem)));
        const steps = figuresIn(given.map((step) => stepWords('number', step)).join(' '));
        if (steps.includes(figure) && !asked.includes(figure)) told += 1;
      }
      // Another figure may be the same by chance, as a bundle of four is after four strings of eight have come out.
      expect(told, replay).toBeLessThan(DRAWN * 0.35);
    });
});

for (const kind of KINDS) describe(`the ${kind} exercise`, () => keepsItsPromises(kind));

test('every kind is in the registry under its own name', () => {
  expect(Object.keys(exercises).sort()).toEqual([...KINDS].sort());
  for (const kind of KINDS) {
    const problem: ExerciseProblem = exercises[kind].make(1, 'alone');
    expect([exercises[kind].kind, problem.kind]).toEqual([kind, kind]);
  }
});

test('a level that is not one of the four counts as mixed', () => {
  for (const kind of KINDS) {
    for (const level of ['hard', '', undefined, 3] as never[])
      expect(exercises[kind].make('any', level)).toEqual(exercises[kind].make('any', 'mixed'));
  }
});
