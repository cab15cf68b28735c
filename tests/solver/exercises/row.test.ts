import { describe, expect, test } from 'vitest';
import { exercises, LEVELS, ROW_PHASES, type RowAct, type RowProblem } from '../../../src/solver/exercises/index.ts';
import { MOST_MOVES } from '../../../src/solver/exercises/row/problem.ts';
import { tieRow } from '../../../src/solver/exercises/row/tie.ts';
import { fitPiece } from '../../../src/solver/fit.ts';
import { bundleSizes } from '../../../src/solver/outline.ts';
import type { RowPlan } from '../../../src/solver/piece.ts';
import { planRows } from '../../../src/solver/rows.ts';
import { walkLead } from '../../../src/solver/walk.ts';
import { drawing, replay } from '../../seed.ts';
import { made } from './draws.ts';
import '../matchers.ts';

const { row } = exercises;

/** Row r of 8 columns with bundles of two, worked to the right. */
const small = (about: Partial<RowProblem> = {}): RowProblem => ({
  kind: 'row',
  width: 8,
  row: 3,
  direction: 'rightward',
  before: [2, 2],
  change: 'let-out',
  ...about,
});

/** Pieces at random, row by row as the solver plans them, and each row as an exercise states it. */
function plannedRows(
  count: number,
): { readonly plan: RowPlan; readonly problem: RowProblem; readonly rows: RowPlan[] }[] {
  const next = drawing();
  const found: { plan: RowPlan; problem: RowProblem; rows: RowPlan[] }[] = [];
  while (found.length < count) {
    const capacity = next(4, 12);
    const fitted = fitPiece({ width: capacity + 4 * next(0, 3), capacity });
    if (!fitted.ok) continue;
    const { fit } = fitted;
    const bundles = bundleSizes({ fit, height: 4 * fit.rowsToFullWidth + next(1, 4), openingStep: next(1, 2) });
    const startSide = next(0, 1) === 1 ? 'left' : 'right';
    const rows = planRows({ fit, bundles, startSide });
    if (!Array.isArray(rows)) continue;
    rows.forEach((plan: RowPlan, index: number) => {
      const last = rows[index - 1] as RowPlan | undefined;
      const before = [last?.leftBundle ?? plan.leftBundle, last?.rightBundle ?? plan.rightBundle] as const;
      const change =
        plan.leftBundle < before[0] ? 'let-out' : plan.leftBundle > before[0] ? 'take-in' : ('none' as const);
      const { width } = fit;
      // Where the two bundles hold every string there is no middle to tie.
      if (before[0] + before[1] + 2 > width) return;
      found.push({
        plan,
        rows,
        problem: { kind: 'row', width, row: plan.row, direction: plan.direction, before, change },
      });
    });
  }
  return found;
}

describe('a row to tie', () => {
  test('is solved as the solver plans it, and leaves the leading string where the solver’s walk leaves it', () => {
    for (const { plan, rows, problem } of plannedRows(400)) {
      const { acts } = row.solve(problem);
      const knots = acts.filter((act) => !['let-out', 'take-in', 'carry-behind'].includes(act));
      const planned = plan.runs.flatMap(({ knot, count }) => Array.from({ length: count }, () => knot));
      expect(knots, `${replay} ${JSON.stringify(problem)}`).toEqual(planned);
      const [move] = plan.startMove === 'none' ? [undefined] : [plan.startMove];
      if (move) expect(acts[0], replay).toBe(move);
      const walk = walkLead(rows.slice(0, plan.row));
      if (!walk.ok) throw new Error('the solver’s own plan does not walk');
      const tied = tieRow(problem, acts);
      expect(tied.at, replay).toBe(walk.path.at(-1)?.ends);
      const first = walk.path.find((place) => place.row === plan.row);
      expect(tied.done.find(({ act }) => planned[0] === act)?.from, replay).toBe(first?.at);
      expect(row.judge(problem, { acts }).outcome, replay).toBe('right');
    }
  });

  test('is taken in any order that hands can work in: the string at the end is let out early', () => {
    const problem = small({ before: [3, 3], width: 9 });
    const { acts } = row.solve(problem);
    const end = acts.lastIndexOf('let-out');
    const early: RowAct[] = acts.filter((_, index) => index !== end).toSpliced(2, 0, 'let-out');
    expect(early).not.toEqual(acts);
    expect(row.judge(problem, { acts: early })).toMatchObject({ outcome: 'right', first: null });
  });

  test('two strings taken together and then passed behind are carried behind', () => {
    const problem = small({ before: [1, 1], change: 'take-in' });
    const acts = row.solve(problem).acts;
    expect(acts[0]).toBe('carry-behind');
    expect(row.judge(problem, { acts: ['take-in', ...acts] }).outcome).toBe('right');
  });

  test('changed in any one act is not right any more', () => {
    const next = drawing();
    for (const { problem } of plannedRows(200)) {
      const { acts } = row.solve(problem);
      const at = next(0, acts.length - 1);
      const other = (['forward', 'backward', 'forward-backward', 'backward-forward'] as const)[next(0, 3)] ?? 'forward';
      if (acts[at] === other) continue;
      const judged = row.judge(problem, { acts: acts.with(at, other) });
      expect(judged.outcome, `${replay} ${JSON.stringify([problem, at, other])}`).not.toBe('right');
      if (judged.outcome === 'not-right' && judged.first)
        expect(judged.fields[judged.first]?.at, replay).toBeLessThanOrEqual(at + 2);
    }
  });

  test('that is right so far and not finished is no try', () => {
    for (const { problem } of plannedRows(100)) {
      const { acts } = row.solve(problem);
      for (let tied = 0; tied < acts.length; tied += 1) {
        const judged = row.judge(problem, { acts: acts.slice(0, tied) });
        expect(judged.outcome, `${replay} ${JSON.stringify([problem, tied])}`).toBe('unreadable');
        expect(judged.first).not.toBeNull();
      }
    }
  });

  test.each([
    ['move-missing', small(), ['backward-forward'], 'start-edge'],
    ['move-not-due', small({ change: 'none' }), ['let-out'], 'start-move'],
    ['nothing-to-move', small({ before: [1, 1], change: 'none' }), ['let-out'], 'start-move'],
    ['plain-on-bundle', small({ change: 'none' }), ['forward'], 'start-edge'],
    ['lead-elsewhere', small({ change: 'none' }), ['backward-forward', 'backward'], 'between'],
    ['leads-astray', small({ before: [1, 1], change: 'none' }), ['forward-backward'], 'start-edge'],
    ['nothing-left', small({ before: [1, 1], change: 'none' }), Array.from({ length: 9 }, () => 'forward'), 'end-edge'],
  ] as const)('%s', (fault, problem, acts, part) => {
    const judged = row.judge(problem, { acts: [...acts] });
    expect(judged).toMatchObject({ outcome: 'not-right', first: part });
    expect(judged.fields[part]).toMatchObject({ verdict: 'wrong', fault, at: acts.length });
  });

  test('has four to nine knots where it is drawn, in both directions and from every part of a piece', () => {
    const ways = new Set<string>();
    for (const phase of ROW_PHASES)
      for (const level of LEVELS)
        for (let seed = 0; seed < 40; seed += 1) {
          const problem = made(row.make(seed, level, { phase }));
          const knots = row.solve(problem).acts.filter((act) => !/^(?:let|take|carry)/.test(act)).length;
          expect(knots).toBeGreaterThanOrEqual(4);
          expect(knots).toBeLessThanOrEqual(9);
          ways.add(`${phase} ${problem.direction}`);
        }
    for (const phase of ['opening', 'straight', 'closing'])
      for (const way of ['rightward', 'leftward']) expect(ways).toContain(`${phase} ${way}`);
    expect(made(row.make(1, 'alone', { phase: 'opening', direction: 'leftward' })).direction).toBe('leftward');
  });

  test('comes from a piece of the learner’s own where that has a short row, and is refused where it has none', () => {
    const own = made(row.make(1, 'alone', { phase: 'opening', width: 12, capacity: 8, height: 14 }));
    expect(own).toMatchObject({ width: 12, row: 2, direction: 'leftward', before: [2, 2] });
    expect(row.make(1, 'alone', { phase: 'opening', width: 26, capacity: 16, height: 32 })).toBeRefusedAs('no-fit');
    expect(row.make(1, 'alone', { phase: 'middle' as never })).toBeRefusedAs('unknown-choice');
    expect(row.make(1, 'alone', { direction: 'up' as never })).toBeRefusedAs('unknown-choice');
    expect(row.make(1, 'alone', { row: 1.5 })).toBeRefusedAs('not-a-whole-number');
  });

  test('half worked, it is tied as far as the part that was missed last', () => {
    const problem = small({ before: [3, 3], width: 9 });
    const { given, open } = row.fade(problem, 'between');
    expect([given.acts, open]).toEqual([['let-out', 'backward-forward'], ['between']]);
    expect(row.fade(problem, 'start-move').given.acts).toEqual([]);
    expect(row.fade(problem).open).toEqual(['end-edge']);
  });
});

describe('slips in tying a row, worked by hand', () => {
  const opening = small({ before: [3, 3], width: 9 });
  const closing = small({ before: [1, 1], width: 6, row: 12, direction: 'leftward', change: 'take-in' });
  test.each([
    [
      ['direction-not-swapped'],
      opening,
      'let-out backward-forward backward backward backward backward let-out backward forward-backward',
    ],
    [['ordinary-knot-on-bundle'], opening, 'let-out forward forward forward forward forward let-out forward forward'],
    [
      ['turning-knots-swapped'],
      opening,
      'let-out forward-backward forward forward forward forward let-out forward backward-forward',
    ],
    [
      ['two-let-out'],
      opening,
      'let-out let-out backward-forward forward forward forward forward forward let-out forward forward-backward',
    ],
    [['bundle-not-counted'], opening, 'let-out forward forward forward forward let-out forward'],
    [['one-string-a-row'], opening, 'let-out backward-forward forward forward forward forward forward-backward'],
    [['carry-behind-forgotten'], closing, 'take-in forward-backward backward backward take-in backward-forward'],
    [['carry-behind-forgotten'], closing, 'forward-backward backward backward take-in backward-forward'],
    [
      ['turning-knot-on-edge-string'],
      small({ before: [1, 1], change: 'none', width: 4 }),
      'backward-forward forward forward forward-backward',
    ],
    [
      ['direction-not-swapped', 'turning-knots-swapped'],
      opening,
      'let-out forward-backward backward backward backward backward let-out backward backward-forward',
    ],
  ] as const)('%s', (slips, problem, text) => {
    const checked = row.check(problem, { acts: text.split(' ') });
    expect(checked).toMatchObject({ outcome: 'not-right', explanations: [slips], needsFollowUp: false });
  });

  test('a row that no slip ties gets no name, and the first act that does not follow', () => {
    const checked = row.check(opening, { acts: ['let-out', 'backward-forward', 'forward', 'backward-forward'] });
    expect(checked).toMatchObject({ outcome: 'not-right', first: 'between', missteps: [] });
    expect(checked.fields.between).toMatchObject({ at: 4, act: 'backward-forward', fault: 'lead-elsewhere' });
  });
});

test('no row takes more than a knot for each base string and two moves, so paper has a line for each', () => {
  const most = LEVELS.flatMap((level) =>
    Array.from({ length: 200 }, (_, n) => {
      const problem = row.make(`lines ${n}`, level);
      return row.solve(problem).acts.length - problem.width;
    }),
  );
  expect(Math.max(...most)).toBe(MOST_MOVES);
});
