import { describe, expect, test } from 'vitest';
import type { ChooseAsk } from '../../src/solver/exercises/choose/problem.ts';
import type { ExerciseProblem, FieldOf, KindName, ProblemOf } from '../../src/solver/exercises/contract.ts';
import {
  CHOOSE_ASKS,
  exercises,
  MARK_TARGETS,
  NUMBER_ASKS,
  ROW_FIELDS,
  SAY_TOPICS,
  SEQUENCES,
  SPOT_SHEETS,
  SUM_FIELDS,
} from '../../src/solver/exercises/index.ts';
import type { Sequence } from '../../src/solver/exercises/order/problem.ts';
import { SAY_POINTS } from '../../src/solver/exercises/say/problem.ts';
import type { HintKeyOf, StepKeyOf } from '../../src/solver/exercises/steps.ts';
import { hintWords, WORKED_CASE } from '../../src/words/exercises/hint-words.ts';
import { fieldLabel, fieldUnit } from '../../src/words/exercises/labels.ts';
import { questionWords } from '../../src/words/exercises/question.ts';
import { stepSum, stepWords } from '../../src/words/exercises/step-words.ts';
import { outcomeWords, verdictWords } from '../../src/words/exercises/verdict-words.ts';
import { everyProblem } from '../every-problem.ts';
import { replay } from '../seed.ts';
import { expectSayable, expectSentences, strict } from './sayable.ts';

/** Problems of every kind, ask and level, some with figures of their own at both ends. */
const PROBLEMS: readonly ExerciseProblem[] = [
  ...everyProblem({ sum: 6, number: 3, mark: 2, row: 4, spot: 2, order: 6, choose: 6, say: 3 }),
  exercises.sum.make('alone', 'mixed', { width: 12, capacity: 16 }),
  exercises.sum.make('straight', 'mixed', { width: 3, capacity: 3 }),
  exercises.number.make('steps', 'alone', {
    ask: 'knots-in-row',
    width: 26,
    capacity: 16,
    height: 60,
    openingStep: 2,
    closingStep: 3,
    row: 4,
  }),
  exercises.number.make('steps', 'alone', {
    ask: 'first-closing-row',
    width: 26,
    capacity: 16,
    height: 60,
    closingStep: 3,
  }),
  exercises.number.make('steps', 'alone', {
    ask: 'full-width-row',
    width: 26,
    capacity: 16,
    height: 60,
    openingStep: 4,
  }),
  exercises.number.make('two', 'alone', { ask: 'corner-cells', width: 12, capacity: 8, height: 14 }),
  exercises.number.make('last', 'alone', { ask: 'bundle-in-row', width: 26, capacity: 16, height: 32, row: 32 }),
  ...Array.from({ length: 12 }, (_, seed) =>
    exercises.number.make(seed, 'alone', { ask: 'cut-length', width: 21, capacity: 15 }),
  ),
  exercises.number.make('all', 'alone', { ask: 'knots-in-row', width: 26, capacity: 16, height: 32, row: 12 }),
].filter((made): made is ExerciseProblem => !('ok' in made));

const numbersIn = (text: string): number[] =>
  (text.match(/\d[\d,]*(?:\.\d+)?/g) ?? []).map((digits) => Number(digits.replaceAll(',', '')));
const each = (says: <K extends KindName>(kind: K, problem: ProblemOf<K>) => void): void => {
  for (const problem of PROBLEMS) {
    if (problem.kind === 'sum') says('sum', problem);
    else if (problem.kind === 'number') says('number', problem);
    else if (problem.kind === 'mark') says('mark', problem);
    else if (problem.kind === 'row') says('row', problem);
    else if (problem.kind === 'spot') says('spot', problem);
    else if (problem.kind === 'order') says('order', problem);
    else if (problem.kind === 'choose') says('choose', problem);
    else says('say', problem);
  }
};
const strictly = <Key extends string>({
  key,
  values,
}: {
  readonly key: Key;
  readonly values: Readonly<Record<string, number | string>>;
}) => ({ key, values: strict(values) });

describe('questions', () => {
  test('every question says what is known and what is asked', () => {
    expect(PROBLEMS.length, replay).toBeGreaterThan(150);
    for (const problem of PROBLEMS) {
      const { given, ask, parts } = questionWords(problem);
      for (const part of parts ?? []) expectSayable(part);
      if (parts) expect(new Set(parts).size, parts.join(' | ')).toBe(parts.length);
      expectSentences(given);
      expectSayable(ask.replace(/\?/g, '.'));
      expect(ask).toMatch(/[.?]$/);
    }
  });

  test('26 columns on a bar of 16 are asked for as they stand', () => {
    const sum = exercises.sum.make(1, 'alone', { width: 26, capacity: 16 });
    if ('ok' in sum) throw new Error('26 on 16 is a sum');
    expect(questionWords(sum)).toEqual({
      given: 'The chart is 26 columns wide. The bar takes 16.',
      ask: 'Work out the fitting sum, one figure after the other.',
    });
    const knots = exercises.number.make(4, 'alone', {
      ask: 'knots-in-row',
      width: 26,
      capacity: 16,
      height: 32,
      row: 3,
    });
    if ('ok' in knots) throw new Error('there is a row 3');
    expect(questionWords(knots)).toEqual({
      given:
        'The chart is 26 columns wide and 32 rows high. The side bundles hold 6 on each side in row 1. After that, one string is let out on each side in every row. It closes to bundles of 6 on each side in the last row, with one string taken in on each side in every row.',
      ask: 'How many knots does row 3 have?',
    });
  });

  test('every field has a label of its own, and lengths a unit', () => {
    const labels = (problem: ExerciseProblem) =>
      (problem.kind === 'sum'
        ? problem.fields
        : problem.kind === 'number'
          ? (['figure'] as const)
          : problem.kind === 'row'
            ? ROW_FIELDS
            : problem.kind === 'spot'
              ? (['place', 'fault'] as const)
              : problem.kind === 'mark'
                ? (['row-3'] as const)
                : problem.kind === 'say'
                  ? (['points'] as const)
                  : problem.kind === 'choose'
                    ? (['choice'] as const)
                    : (['step-cut'] as const)
      ).map((field) => fieldLabel(problem, field));
    for (const problem of PROBLEMS) {
      for (const label of labels(problem)) expectSayable(label.replace('?', ''));
      expect(fieldUnit(problem)).toBe(
        problem.kind === 'number' && (problem.ask === 'cut-length' || problem.ask === 'base-string-in-all') ? 'mm' : '',
      );
    }
    const sum = exercises.sum.make('all', 'mixed', { width: 21, capacity: 15 });
    if ('ok' in sum) throw new Error('21 on 15 is a sum');
    expect(new Set(labels(sum)).size).toBe(SUM_FIELDS.length);
  });
});

describe('worked steps', () => {
  test('every step of every solution has words, and each sum in it comes out', () => {
    const met = new Set<StepKeyOf<KindName>>();
    each((kind, problem) => {
      for (const step of exercises[kind].solution(problem)) {
        met.add(step.key);
        expectSentences(stepWords(kind, strictly(step)));
        const sum = stepSum(kind, strictly(step));
        expectSayable(sum);
        for (const part of sum === '' ? [] : sum.split(' and ')) {
          const [left = '', right = ''] = part.replaceAll(',', '').split(' = ');
          const worked = left
            .replace(/\((\d+) − 1\)/, (_, whole: string) => String(Number(whole) - 1))
            .replace(/([\d.]+) ([×÷]) ([\d.]+)/g, (_, a: string, sign: string, b: string) =>
              String(Number((sign === '×' ? Number(a) * Number(b) : Number(a) / Number(b)).toFixed(9))),
            )
            .split(/ (?=[+−])/)
            .reduce((all, term) => all + Number(term.replace('− ', '-').replace('+ ', '')), 0);
          expect(worked, `${kind} ${step.key}: ${part}`).toBe(Number(right));
        }
      }
    });
    const keys: Readonly<Record<StepKeyOf<KindName>, true>> = {
      'bundles-left': true,
      'strings-to-let-out': true,
      'strings-to-take-in': true,
      'stretches-of-colour': true,
      'all-on-bar': true,
      'carried-end': true,
      'idle-place': true,
      'no-idle-place': true,
      spare: true,
      'nothing-spare': true,
      halved: true,
      'half-even': true,
      'half-odd': true,
      'borrow-two': true,
      'nothing-to-borrow': true,
      'on-bar': true,
      bundle: true,
      'folds-on-bar': true,
      'lone-string': true,
      'folds-each-side': true,
      'first-row': true,
      'full-width': true,
      'folds-to-cut': true,
      'row-opening': true,
      'row-closing': true,
      'row-at-full-width': true,
      'bundle-in-row': true,
      'knots-in-row': true,
      'corner-cells-in-row': true,
      'full-width-row': true,
      'first-closing-row': true,
      'corner-cells': true,
      'rows-long': true,
      'one-end': true,
      'both-ends': true,
      'lone-end': true,
      'folds-from-strings': true,
      'base-string-in-all': true,
      'float-skips': true,
      'longest-float': true,
      'folds-of-piece': true,
      'folds-for-class': true,
      'knotting-seconds': true,
      'knotting-minutes': true,
      'making-minutes': true,
      'row-corner-cells': true,
      'row-bundles': true,
      'row-bundle-knots': true,
      'strings-taken-in': true,
      'closing-row': true,
      'bundles-in-row': true,
      'row-begins': true,
      'column-of-knot': true,
      'knots-of-colour': true,
      'row-for-picture': true,
      'plain-rows-above': true,
      'row-side': true,
      'row-first-knot': true,
      'row-read': true,
      'row-colour': true,
      'row-picture-cut': true,
      'one-turn': true,
      'widest-column': true,
      'swatch-column': true,
      'columns-on-bar': true,
      'tie-start-move': true,
      'tie-start-edge': true,
      'tie-between': true,
      'tie-end-move': true,
      'tie-end-edge': true,
      'right-row': true,
      'right-plan': true,
      'right-sum': true,
      'wrong-leans-wrong': true,
      'wrong-ordinary-on-bundle': true,
      'wrong-turns-wrong': true,
      'wrong-lead-wrong-side': true,
      'wrong-out-on-wrong-side': true,
      'wrong-two-let-out': true,
      'wrong-strings-counted': true,
      'wrong-bundles-left-out': true,
      'wrong-row-after': true,
      'wrong-row-before': true,
      'wrong-one-side-only': true,
      'wrong-not-halved': true,
      'wrong-none-borrowed': true,
      'wrong-one-borrowed': true,
      'wrong-borrowed-from-even': true,
      'wrong-bar-kept': true,
      chosen: true,
      ...(Object.fromEntries(CHOOSE_ASKS.map((ask) => [`why-${ask}`, true])) as Record<`why-${ChooseAsk}`, true>),
      ...(Object.fromEntries(SEQUENCES.map((of) => [`order:${of}`, true])) as Record<`order:${Sequence}`, true>),
      ...(Object.fromEntries(
        SAY_TOPICS.flatMap((topic) => SAY_POINTS[topic].map((point) => [`${topic}:${point}`, true])),
      ) as Record<StepKeyOf<'say'>, true>),
    };
    expect([...met].sort(), replay).toEqual(Object.keys(keys).sort());
  });

  test('the step that gives a single figure says that figure', () =>
    each((kind, problem) => {
      if (kind !== 'number') return;
      const { figure } = exercises.number.solve(problem as ProblemOf<'number'>);
      const last = exercises.number.solution(problem as ProblemOf<'number'>).at(-1);
      expect(last && numbersIn(stepWords('number', last))).toContain(figure);
    }));
});

describe('hints', () => {
  test('every hint has words, and says no figure that the question does not say', () => {
    const met = new Set<HintKeyOf<KindName>>();
    each((kind, problem) => {
      const fields: readonly (FieldOf<KindName> | null)[] =
        problem.kind === 'sum'
          ? [null, ...problem.fields.filter((field) => !met.has(`do-${field}`))]
          : problem.kind === 'row'
            ? [null, ...ROW_FIELDS]
            : problem.kind === 'spot'
              ? [null, 'fault']
              : [null];
      for (const field of fields) {
        const { look, do: todo, worked } = exercises[kind].hints(problem, field as FieldOf<typeof kind> | null);
        const question = questionWords(problem);
        for (const hint of [look, todo]) {
          met.add(hint.key);
          const text = hintWords(kind, strictly(hint));
          expectSentences(text.replace(/\?/g, '.'));
          const known = [
            1,
            'width' in problem ? problem.width + 1 : 0,
            ...numbersIn(`${question.given} ${question.ask}`),
          ];
          for (const number of numbersIn(text)) expect(known, text).toContain(number);
        }
        for (const step of worked?.steps ?? []) expectSentences(stepWords(kind, step));
      }
    });
    expectSentences(WORKED_CASE);
    const wanted = new Set([
      ...[
        'sum',
        ...SUM_FIELDS,
        ...NUMBER_ASKS,
        ...MARK_TARGETS,
        'row',
        ...ROW_FIELDS,
        ...SPOT_SHEETS,
        ...SPOT_SHEETS.map((sheet) => `fault-${sheet}`),
        ...SEQUENCES,
        ...CHOOSE_ASKS,
        ...SAY_TOPICS,
      ].flatMap((about) => [`look-${about}`, `do-${about}`]),
    ]);
    expect([...met].sort(), replay).toEqual([...wanted].sort());
  });
});

describe('verdicts', () => {
  const sum = exercises.sum.make('v', 'alone', {
    width: 26,
    capacity: 16,
    fields: ['spare', 'eachSide', 'parity', 'borrowed', 'onBar', 'bundle'],
  });
  if ('ok' in sum) throw new Error('26 on 16 is a sum');

  test('each verdict on a figure is told beside it', () => {
    const answer = { spare: 10, eachSide: '5', parity: 'odd', borrowed: 0, onBar: 16, bundle: 'five' };
    const judged = exercises.sum.judge(sum, answer, {});
    const told = sum.fields.map((field) =>
      verdictWords(sum, field, judged.fields[field] ?? { verdict: 'missing' }, answer[field as keyof typeof answer]),
    );
    expect(told).toEqual([
      'This is right.',
      'This is right.',
      'This is right.',
      '“0” does not follow from the figures above it.',
      'This follows from what you entered above. It will change when the figure above is put right.',
      '“five” can’t be read as a whole number. Enter one in digits, like 14.',
    ]);
    expect(verdictWords(sum, 'spare', { verdict: 'wrong' }, '12')).toBe(
      '“12” does not follow from the figures in the question.',
    );
    expect(outcomeWords(sum, judged)).toBe(
      '“Strings borrowed from the bar” can’t be read yet. Put it right, then check again.'.replace(
        'Strings borrowed from the bar',
        fieldLabel(sum, judged.first ?? 'spare'),
      ),
    );
  });

  test('the outcome says whether it was a try, and where to look first', () => {
    const outcome = (answer: Parameters<typeof exercises.sum.judge>[1]) =>
      outcomeWords(sum, exercises.sum.judge(sum, answer, {}));
    const right = { spare: 10, eachSide: 5, parity: 'odd', borrowed: 2, onBar: 14, bundle: 6 };
    expect(outcome(right)).toBe('That is right.');
    expect(outcome({ ...right, borrowed: 0 })).toBe(
      'Look at “Strings borrowed from the bar” first: it is the first that does not come out.',
    );
    expect(outcome({ ...right, spare: '' })).toBe('“Spare strings” is still empty. Fill it in, then check again.');
    expect(outcome({ ...right, spare: 'ten' })).toBe(
      '“Spare strings” can’t be read yet. Put it right, then check again.',
    );
  });

  test('marked cells are told by how many, never by which', () => {
    const marks = exercises.mark.make('m', 'alone', {
      target: 'corner-cells',
      width: 26,
      capacity: 16,
      height: 32,
      from: 1,
      to: 6,
    });
    if ('ok' in marks) throw new Error('rows 1 to 6 have corner cells');
    const judged = exercises.mark.judge(
      marks,
      [
        [1, 1],
        [1, 2],
        [1, 13],
        [6, 4],
      ],
      {},
    );
    const told = (field: FieldOf<'mark'>) => verdictWords(marks, field, judged.fields[field] ?? { verdict: 'missing' });
    expect(told('row-1')).toBe(
      'In this row 8 cells are still to be marked, and 1 cell should not be marked, and 2 cells are right.',
    );
    expect(told('row-6')).toBe('In this row 1 cell should not be marked.');
    expect(outcomeWords(marks, judged)).toBe('Look at “Row 1” first: it is the first that does not come out.');
    expect(outcomeWords(marks, exercises.mark.judge(marks, [], {}))).toContain('it is no try');
    const outside = exercises.mark.judge(marks, [[1, 99]], {});
    expectSentences(verdictWords(marks, 'row-1', outside.fields['row-1'] ?? { verdict: 'missing' }));
  });

  test('every reason why an entry can’t be read has words', () => {
    for (const reason of [
      'not-a-whole-number',
      'too-long',
      'not-even-or-odd',
      'not-cells',
      'outside-the-chart',
    ] as const)
      for (const entered of ['2.5', undefined, '', 'x'.repeat(500), null]) {
        const text = verdictWords(sum, 'spare', { verdict: 'unreadable', reason }, entered);
        expectSentences(text);
        expect(text.length).toBeLessThan(140);
      }
    expect(verdictWords(sum, 'spare', { verdict: 'missing' })).toBe('Nothing is entered here yet.');
  });
});
