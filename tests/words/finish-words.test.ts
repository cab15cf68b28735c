import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type FinishStepKey, finishSteps, planPiece } from '../../src/solver/index.ts';
import { finishStepWords } from '../../src/words/finish-words.ts';
import { tries } from '../seed.ts';
import { outlines } from '../solver/worlds.ts';
import { expectSentences, strict } from './sayable.ts';

const KEYS: Readonly<Record<FinishStepKey, true>> = {
  'lay-leading-strings': true,
  gather: true,
  'lay-middle': true,
  'pass-behind': true,
  'square-knot': true,
  'repeat-square-knot': true,
  'tie-together': true,
  trim: true,
  patch: true,
};

describe('gathering and finishing in words', () => {
  test('the evening’s piece takes three strings a side and ends in square knots', () => {
    const plan = planPiece({ width: 12, height: 14, capacity: 8 });
    if (!plan.ok) throw new Error(plan.problem.code);
    const text = plan.finish.steps.map(finishStepWords);
    expect(text[1]).toBe(
      'Begin on the left. Take the next single string and tie a backward knot with it round the left bundle, which takes the string in. Do that three times in all. Then 5 strings are together on the left.',
    );
    expect(text).toContain(
      'Pass the right one of the last two strings behind the strings on the right, to their outer side.',
    );
    expect(text.indexOf('Only now trim the ends.')).toBe(text.length - 2);
  });

  test('every step of every piece has words', () => {
    const met = new Set<FinishStepKey>();
    fc.assert(
      fc.property(outlines, (piece) => {
        const finish = finishSteps(piece);
        if (!finish.ok) throw new Error(finish.problem.code);
        for (const step of finish.steps) {
          met.add(step.key);
          expectSentences(finishStepWords({ ...step, values: strict(step.values) }));
        }
      }),
      tries(150),
    );
    expect([...met].sort()).toEqual(Object.keys(KEYS).sort());
  });
});
