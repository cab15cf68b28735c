import { describe, expect, test } from 'vitest';
import {
  CHOOSE_ASKS,
  exercises,
  type KindName,
  LEVELS,
  MARK_TARGETS,
  NUMBER_ASKS,
  type NumberAsk,
  type ProblemOf,
  SEQUENCES,
  type SolutionOf,
  type SumField,
  type SumOptions,
} from '../../../src/solver/exercises/index.ts';
import { followUp, type SlipSet, settle } from '../../../src/solver/missteps/index.ts';
import { slipsOf } from '../../../src/solver/missteps/slips.ts';
import { drawing, replay, seed } from '../../seed.ts';
import { made, makeWith } from '../exercises/draws.ts';

const LEARNERS = 1000;
const FOUR: readonly SumField[] = ['spare', 'eachSide', 'onBar', 'bundle'];
const FIVE: readonly SumField[] = ['spare', 'parity', 'borrowed', 'onBar', 'bundle'];
const next = drawing();
const oneOf = <T>(choices: readonly T[]): T | undefined => choices[next(0, choices.length - 1)];

const percent = (part: number, whole: number): string => `${((100 * part) / whole).toFixed(1)} %`;
const say = (line: string): boolean => process.stdout.write(`${line} (${replay})\n`);

const sums = (options: SumOptions) =>
  Array.from({ length: LEARNERS }, (_, n) =>
    made(exercises.sum.make(`${seed} ${n}`, LEVELS[n % 4] ?? 'mixed', options)),
  );

const ASKED: readonly [string, SumOptions][] = [
  ['all figures', {}],
  ['four figures', { fields: FOUR }],
  ['five figures', { fields: FIVE }],
];

describe.each(ASKED)('a thousand sums of %s', (name, options) => {
  const problems = sums(options);

  test('learners who make no slip are all right', () => {
    for (const problem of problems)
      expect(exercises.sum.check(problem, exercises.sum.solve(problem)).outcome).toBe('right');
  });

  test.each([
    ['one slip', 0.99],
    ['two slips', 0.85],
  ] as const)('of learners who make %s nearly all are told which', (slips, least) => {
    let wrong = 0;
    let named = 0;
    let alone = 0;
    for (const problem of problems) {
      const { singles, pairs } = slipsOf.sum;
      const learner = oneOf(slips === 'one slip' ? singles(problem) : pairs(problem));
      if (!learner) continue;
      const { outcome, explanations } = exercises.sum.check(problem, learner.answer);
      expect(outcome).toBe('not-right');
      wrong += 1;
      // Where a single slip explains what two made, nobody can tell, and the simpler is said.
      const found = explanations.some((set) => set.join() === learner.slips.join());
      if (found || (slips === 'two slips' && explanations.some((set) => set.length === 1))) named += 1;
      if (found && explanations.length === 1) alone += 1;
    }
    say(`${name}, ${slips}: ${percent(named, wrong)} of ${wrong} named, ${percent(alone, wrong)} at once and alone`);
    expect(wrong).toBeGreaterThan(LEARNERS / 2);
    expect(named / wrong, replay).toBeGreaterThanOrEqual(least);
  });

  test('wrong sums at random hardly ever get a name', () => {
    let wrong = 0;
    let named = 0;
    for (const problem of problems) {
      const right = exercises.sum.solve(problem);
      const guess = Object.fromEntries(
        Object.entries(right).map(([field, figure]) => [
          field,
          typeof figure === 'number' ? next(Math.ceil(figure / 2), 2 * figure) : next(0, 1) === 1 ? 'odd' : 'even',
        ]),
      );
      const { outcome, missteps } = exercises.sum.check(problem, guess);
      if (outcome === 'right') continue;
      wrong += 1;
      if (missteps.length > 0) named += 1;
    }
    say(`${name}, at random: ${percent(named, wrong)} of ${wrong} named`);
    expect(wrong).toBeGreaterThan(0.9 * LEARNERS);
    expect(named / wrong, replay).toBeLessThan(0.1);
  });
});

/** Of each slip: how often it gave a wrong answer, and how often it was then named. */
function eachSlip<K extends KindName>(kind: K, problems: readonly ProblemOf<K>[]): Map<string, [number, number]> {
  const seen = new Map<string, [wrong: number, named: number]>();
  for (const problem of problems)
    for (const { slips, answer } of slipsOf[kind].singles(problem)) {
      const own = slips.join();
      const [wrong, named] = seen.get(own) ?? [0, 0];
      const found = exercises[kind].check(problem, answer).explanations.some((set) => set.join() === own);
      seen.set(own, [wrong + 1, named + (found ? 1 : 0)]);
    }
  return seen;
}

describe('each slip, made alone on a thousand seeds, is named in at least 99 of a hundred wrong answers', () => {
  const FORMS: readonly (readonly [kind: KindName, options: object])[] = [
    ...ASKED.map(([, options]) => ['sum', options] as const),
    ...NUMBER_ASKS.map((ask) => ['number', { ask }] as const),
    ...MARK_TARGETS.map((target) => ['mark', { target }] as const),
    ['row', {}],
    ...SEQUENCES.map((of) => ['order', { of }] as const),
    ...CHOOSE_ASKS.map((ask) => ['choose', { ask }] as const),
  ];
  test.each(FORMS)('%s %j', (kind, options) => {
    const problems = Array.from({ length: LEARNERS }, (_, n) => {
      const problem = exercises[kind].make(`${seed} ${n}`, LEVELS[n % 4] ?? 'mixed', options);
      return 'ok' in problem ? [] : [problem];
    }).flat() as ProblemOf<typeof kind>[];
    expect(problems.length, replay).toBeGreaterThan(LEARNERS / 4);
    const slips = eachSlip(kind, problems);
    expect(slips.size, replay).toBeGreaterThan(0);
    for (const [slip, [wrong, named]] of slips)
      expect(named / wrong, `${replay}: ${slip}, ${named} of ${wrong}`).toBeGreaterThanOrEqual(0.99);
  });
});

/** A learner who makes one slip, and goes on making it in the same way, the first or the second. */
function follow<K extends KindName>(kind: K, problem: ProblemOf<K>, slips: SlipSet, answer: SolutionOf<K>) {
  const { every } = slipsOf[kind];
  const way = every(problem, slips).findIndex((one) => JSON.stringify(one) === JSON.stringify(answer));
  const checked = exercises[kind].check(problem, answer);
  let left: readonly SlipSet[] = checked.explanations;
  const asked: ProblemOf<K>[] = [];
  while (left.length > 1 || (asked.length === 0 && checked.needsFollowUp)) {
    const question = followUp(kind, problem, left, asked);
    if (question === null) break;
    asked.push(question);
    left = settle(kind, question, every(question, slips)[way] ?? exercises[kind].solve(question), left);
  }
  return { first: checked.explanations, left, asked: asked.length };
}

function learnersOf<K extends KindName>(kind: K, name: string, problems: readonly ProblemOf<K>[]): void {
  let wrong = 0;
  let named = 0;
  let settled = 0;
  for (const problem of problems) {
    const learner = oneOf(slipsOf[kind].singles(problem));
    if (!learner) continue;
    const { first, left, asked } = follow(kind, problem, learner.slips, learner.answer);
    wrong += 1;
    if (first.some((set) => set.join() === learner.slips.join())) named += 1;
    expect(asked).toBeLessThanOrEqual(2);
    // Never another slip in its place: what is left holds the learner's own, or nothing.
    const own = left.some((set) => set.join() === learner.slips.join());
    if (left.length > 0) expect(own, `${replay} ${JSON.stringify([problem, learner, left])}`).toBe(true);
    if (own && left.length === 1) settled += 1;
  }
  say(
    `${name}: ${percent(named, wrong)} of ${wrong} named, ${percent(settled, wrong)} settled by two follow-ups at most`,
  );
  expect(named / wrong, replay).toBeGreaterThanOrEqual(0.99);
  expect(settled / wrong, replay).toBeGreaterThan(0.5);
}

describe('learners who make one slip are told it, or one that cannot be told from it, and never end with another', () => {
  test.each(NUMBER_ASKS)('asked for one figure: %s', (ask: NumberAsk) =>
    learnersOf(
      'number',
      ask,
      Array.from({ length: 60 }, (_, n) => makeWith('number', `${seed} ${n}`, { ask })),
    ),
  );
  test('asked to mark cells', () =>
    learnersOf(
      'mark',
      'mark',
      Array.from({ length: 100 }, (_, n) => exercises.mark.make(`${seed} ${n}`, LEVELS[n % 4] ?? 'mixed')),
    ));
  test('asked to tie a row', () => {
    const rows = Array.from({ length: 1000 }, (_, n) => exercises.row.make(`${seed} ${n}`, LEVELS[n % 4] ?? 'mixed'));
    learnersOf('row', 'row', rows);
    let [wrong, named, alone] = [0, 0, 0];
    for (const problem of rows) {
      expect(exercises.row.check(problem, exercises.row.solve(problem)).outcome).toBe('right');
      // Where a single slip gives what two gave together, nobody can tell, and the simpler is said.
      const single = slipsOf.row.singles(problem).map(({ answer }) => answer.acts.join());
      const learner = oneOf(slipsOf.row.pairs(problem).filter(({ answer }) => !single.includes(answer.acts.join())));
      if (!learner) continue;
      const { explanations } = exercises.row.check(problem, learner.answer);
      wrong += 1;
      const found = explanations.some((set) => set.join() === learner.slips.join());
      if (found) named += 1;
      if (found && explanations.length === 1) alone += 1;
    }
    say(`row, two slips: ${percent(named, wrong)} of ${wrong} named, ${percent(alone, wrong)} at once and alone`);
    expect(named / wrong, replay).toBeGreaterThanOrEqual(0.99);
  });
  test.each(SEQUENCES)('asked to put in order: %s', (of) =>
    learnersOf(
      'order',
      `order, ${of}`,
      Array.from({ length: 60 }, (_, n) => makeWith('order', `${seed} ${n}`, { of })),
    ),
  );
  test.each(CHOOSE_ASKS)('asked to choose: %s', (ask) =>
    learnersOf(
      'choose',
      `choose, ${ask}`,
      Array.from({ length: 60 }, (_, n) => makeWith('choose', `${seed} ${n}`, { ask })),
    ),
  );
  test('asked for a sum of three figures', () =>
    learnersOf('sum', 'three figures', sums({ fields: ['spare', 'onBar', 'bundle'] }).slice(0, 100)));
});
