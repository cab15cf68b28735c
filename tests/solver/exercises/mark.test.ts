import { describe, expect, test } from 'vitest';
import { missed } from '../../../src/solver/exercises/mark/missed.ts';
import { hasSides, MARK_TARGETS, type MarkField, sideOf } from '../../../src/solver/exercises/mark/problem.ts';
import { type Cell, exercises, type MarkProblem } from '../../../src/solver/index.ts';
import { drawing, replay } from '../../seed.ts';
import { made } from './draws.ts';

const { mark } = exercises;
const lantern = { width: 26, height: 32, capacity: 16 };
const asked = (options: Parameters<typeof mark.make>[2]): MarkProblem =>
  made(mark.make('own', 'half-worked', { ...lantern, maxBundle: 8, ...options }));
const given = (problem: MarkProblem, lastMissed?: MarkField | null): readonly Cell[] =>
  mark.fade(problem, lastMissed).given.cells ?? [];
const left = (problem: MarkProblem, lastMissed?: MarkField | null): readonly Cell[] =>
  mark
    .solve(problem)
    .cells.filter(([row, column]) => !given(problem, lastMissed).some(([r, c]) => r === row && c === column));

describe('the half-worked form of cells to mark', () => {
  const corners = asked({ target: 'corner-cells', from: 1, to: 5 });

  test('has every row marked but the last, where nothing was missed', () => {
    expect(mark.fade(corners).open).toEqual(['row-5']);
    expect(left(corners)).toEqual([
      [5, 1],
      [5, 26],
    ]);
  });

  test('leaves open the row that was missed, and of it only the side that was missed', () => {
    expect(left(corners, 'row-4')).toEqual([
      [4, 1],
      [4, 2],
      [4, 25],
      [4, 26],
    ]);
    expect(mark.fade(corners, 'row-4-right').open).toEqual(['row-4-right']);
    expect(left(corners, 'row-4-right')).toEqual([
      [4, 25],
      [4, 26],
    ]);
  });

  test('a row that has nothing to mark here gives way to the one nearest to it', () => {
    expect(mark.fade(corners, 'row-9-left').open).toEqual(['row-5-left']);
    expect(left(corners, 'row-9-left')).toEqual([[5, 1]]);
  });

  test('of a single row one side is given: the knot of one bundle stands there, and the other is to be found', () => {
    const knots = asked({ target: 'bundle-knot', from: 2, to: 2 });
    expect(given(knots)).toEqual([[2, 5]]);
    expect(given(knots, 'row-2-left')).toEqual([[2, 22]]);
    expect(left(knots, 'row-2')).toEqual([[2, 22]]);
  });

  test('of a single cell, a row or a colour nothing is given but the working before the step that marks', () => {
    for (const target of ['first-knot', 'first-closing-row', 'colour-in-row'] as const) {
      const problem = made(mark.make('own', 'half-worked', { target }));
      expect(mark.fade(problem).given).toEqual({});
      const before = mark.solution(problem).filter(({ gives }) => gives === null);
      expect(before.length).toBeGreaterThan(0);
      expect(mark.solution(problem).at(-1)?.gives).toBe(mark.fade(problem).open[0]);
    }
  });

  test('given and left together are the answer, whatever was missed, and something is always left', () => {
    const next = drawing();
    for (let n = 0; n < 300; n += 1) {
      const target = MARK_TARGETS[n % MARK_TARGETS.length];
      const problem = made(mark.make(next(0, 1e9), 'half-worked', { target }));
      const row = next(1, problem.height);
      for (const field of [null, `row-${row}`, `row-${row}-left`, `row-${row}-right`] as const) {
        const all = [...given(problem, field), ...left(problem, field)];
        expect(mark.judge(problem, all).outcome, replay).toBe('right');
        expect(left(problem, field).length, replay).toBeGreaterThan(0);
        expect(mark.judge(problem, given(problem, field)).outcome, replay).not.toBe('right');
      }
    }
  });
});

describe('what was missed', () => {
  const corners = asked({ target: 'corner-cells', from: 1, to: 5 });
  const all = mark.solve(corners).cells;
  const missedBy = (cells: readonly Cell[]) => missed(corners, mark.judge(corners, cells));

  test('is the first row that does not come out, and one side of it where only that is amiss', () => {
    expect(missedBy(all)).toBeNull();
    expect(missedBy(all.filter(([row]) => row !== 3))).toBe('row-3');
    expect(missedBy(all.filter(([row, column]) => row < 3 || sideOf(corners, column) === 'left'))).toBe('row-3-right');
    expect(missedBy([...all, [2, 6]])).toBe('row-2-left');
  });

  test('comes back as what is left open of other figures', () => {
    const other = asked({ target: 'corner-cells', from: 1, to: 5, width: 24, maxBundle: 8 });
    const field = missedBy(all.filter(([row, column]) => row !== 2 || sideOf(corners, column) === 'right'));
    expect(field).toBe('row-2-left');
    expect(left(other, field)).toEqual([
      [2, 1],
      [2, 2],
    ]);
    expect(hasSides(other)).toBe(true);
  });
});
