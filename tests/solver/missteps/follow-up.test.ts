import { describe, expect, test } from 'vitest';
import { exercises } from '../../../src/solver/exercises/index.ts';
import { followUp, settle } from '../../../src/solver/missteps/index.ts';
import { made, sumOf } from '../exercises/draws.ts';

const { number, sum } = exercises;

describe('a knot too many in a closing row', () => {
  const problem = made(
    number.make('own', 'alone', { width: 26, capacity: 16, height: 32, ask: 'knots-in-row', row: 30 }),
  );
  const checked = number.check(problem, { figure: 26 });

  test('may be a bundle counted as its strings, or strings taken in counted as freed', () =>
    expect(checked).toMatchObject({
      explanations: [['bundle-counted-as-strings'], ['closing-counted-as-freed']],
      needsFollowUp: true,
    }));
  test('is settled by a row in which they differ', () => {
    const question = followUp('number', problem, checked.explanations);
    expect(question).not.toBeNull();
    if (question === null) return;
    expect(JSON.stringify(question)).toBe(JSON.stringify(followUp('number', problem, checked.explanations)));
    const reply = number.missteps['bundle-counted-as-strings']?.(question) ?? { figure: 0 };
    expect(settle('number', question, reply, checked.explanations)).toEqual([['bundle-counted-as-strings']]);
  });
  test('stays open when neither gives the reply', () => {
    const question = followUp('number', problem, checked.explanations);
    expect(question && settle('number', question, { figure: 999 }, checked.explanations)).toEqual([]);
  });
});

describe('follow-ups', () => {
  const problem = sumOf({ width: 26, capacity: 16, fields: ['spare', 'onBar', 'bundle'] });
  const both = ['spare-not-halved', 'all-spare-on-one-side'] as const;

  test('ask for more figures where the same ones cannot tell', () => {
    const question = followUp('sum', problem, both);
    expect(question?.fields).toContain('firstRowKnots');
    expect(question && question.width < problem.width).toBe(true);
    expect(question && JSON.stringify(sum.missteps[both[0]]?.(question))).not.toBe(
      question && JSON.stringify(sum.missteps[both[1]]?.(question)),
    );
  });
  test('are other cases each time, and two at most', () => {
    const first = followUp('sum', problem, both);
    const second = first && followUp('sum', problem, both, [first]);
    expect(second).not.toBeNull();
    expect(second).not.toEqual(first);
    expect(first && second && followUp('sum', problem, both, [first, second])).toBeNull();
  });
  test('prove a slip that stands alone by a case on which it shows', () => {
    const question = followUp('sum', problem, ['borrowed-though-even']);
    expect(question && sum.applies(question, 'borrowed-though-even')).toBe(true);
  });
  test('tell two pairs of slips apart', () => {
    const question = followUp('sum', sumOf({ width: 26, capacity: 16 }), [
      ['added', 'four-borrowed'],
      ['added', 'one-borrowed'],
    ]);
    expect(question).not.toBeNull();
  });
  test('are none where two slips never part, or where nothing is to be explained', () => {
    const eachSide = made(number.make('own', 'alone', { width: 26, capacity: 16, ask: 'each-side' }));
    expect(followUp('number', eachSide, both)).toBeNull();
    expect(followUp('number', eachSide, [])).toBeNull();
  });
});
