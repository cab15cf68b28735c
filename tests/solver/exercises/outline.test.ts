import { describe, expect, test } from 'vitest';
import { exercises, type OutlineFigures } from '../../../src/solver/exercises/index.ts';
import { bundlesIn, OUTLINE_RULES, openingCorners } from '../../../src/solver/exercises/outline.ts';
import { fitPiece } from '../../../src/solver/fit.ts';
import { bundleSizes } from '../../../src/solver/outline.ts';
import { planRows } from '../../../src/solver/rows.ts';
import { pieceLength } from '../../../src/solver/thread/base-string.ts';
import { pitchesOf } from '../../../src/solver/thread/pitch.ts';
import { drawing, replay } from '../../seed.ts';
import { made } from './draws.ts';
import '../matchers.ts';

const { number, mark } = exercises;
const worked = { width: 26, capacity: 16, height: 32 };

/** A piece drawn by an exercise, and its figures as the solver has them. */
function pieces(count: number) {
  const next = drawing();
  return Array.from({ length: count }, () => {
    const options = { width: next(10, 48), openingStep: next(1, 2), closingStep: next(1, 2) };
    const problem = made(mark.make(next(0, 1e9), 'mixed', { ...options, target: 'corner-cells', maxBundle: 8 }));
    return { problem, solver: solverFigures(problem, next) };
  });
}

function solverFigures(piece: OutlineFigures, next: (low: number, high: number) => number) {
  // The bar from which this piece hangs: its strings are what the bundles leave.
  const capacity = piece.width - piece.bundles[0] - piece.bundles[1];
  const fitted = fitPiece({ width: piece.width, capacity, startSide: next(0, 1) === 1 ? 'left' : 'right' });
  if (!fitted.ok) throw new Error(JSON.stringify([piece, fitted.problem]));
  const { height, openingStep, closingStep, closing } = piece;
  const sizes = bundleSizes({ fit: fitted.fit, height, openingStep, closingStep, closingBundle: closing[0] });
  const rows = planRows({ fit: fitted.fit, bundles: sizes });
  if (!('length' in rows)) throw new Error(JSON.stringify([piece, rows]));
  return { sizes, rows };
}

describe('the outline of an exercise', () => {
  test('is the solver’s, row by row', () => {
    for (const { problem, solver } of pieces(150)) {
      const about = `${replay} ${JSON.stringify(problem)}`;
      const rows = solver.rows.map(({ row }) => bundlesIn(OUTLINE_RULES, problem, row));
      expect(
        rows.map(([left]) => left),
        about,
      ).toEqual(solver.sizes.left);
      expect(
        rows.map(([, right]) => right),
        about,
      ).toEqual(solver.sizes.right);
      expect(
        rows.map((bundles) => OUTLINE_RULES.knots(problem, bundles)),
        about,
      ).toEqual(solver.rows.map(({ knots }) => knots));
      expect(OUTLINE_RULES.fullWidthRow(problem), about).toBe(solver.sizes.firstFullRow);
      expect(OUTLINE_RULES.firstClosingRow(problem), about).toBe(solver.sizes.firstClosingRow);
      const opening = solver.rows.slice(0, (solver.sizes.firstFullRow ?? 1) - 1);
      expect(openingCorners(OUTLINE_RULES, problem), about).toBe(
        opening.reduce((cells, { knots }) => cells + problem.width - knots, 0),
      );
    }
  });

  test('has the corner cells that the rows leave out', () => {
    for (const { problem, solver } of pieces(60)) {
      const outside = solver.rows.flatMap(({ row, firstColumn, lastColumn }) =>
        Array.from({ length: problem.width }, (_, n) => n + 1)
          .filter((column) => (column < firstColumn || column > lastColumn) && row >= problem.from && row <= problem.to)
          .map((column) => [row, column]),
      );
      expect(mark.solve(problem).cells, replay).toEqual(outside);
    }
  });

  test('has the two bundles of a carried end, one column apart', () => {
    const carried = made(
      number.make('odd', 'mixed', {
        ask: 'bundle-in-row',
        width: 25,
        capacity: 16,
        oddMethod: 'carried-end',
        startSide: 'left',
        height: 30,
        row: 1,
      }),
    );
    // 26 strands, 16 on the bar, five a side, borrow two: six strands a side, and on the right one of them is no column.
    expect(carried).toMatchObject({ bundles: [6, 5], closing: [6, 5], row: 1 });
    if (carried.ask !== 'bundle-in-row') throw new Error(carried.ask);
    expect(number.solve(carried).figure).toBe(carried.side === 'left' ? 6 : 5);
  });
});

describe('single figures of 26 wide and 32 high on a bar that takes 16', () => {
  test.each([
    [{ ask: 'spare' }, 10],
    [{ ask: 'each-side' }, 6],
    [{ ask: 'on-bar' }, 14],
    [{ ask: 'folds-to-cut' }, 13],
    [{ ask: 'full-width-row' }, 6],
    [{ ask: 'first-closing-row' }, 28],
    [{ ask: 'corner-cells' }, 30],
    [{ ask: 'knots-in-row', row: 1 }, 16],
    [{ ask: 'knots-in-row', row: 3 }, 20],
    [{ ask: 'knots-in-row', row: 20 }, 26],
    [{ ask: 'knots-in-row', row: 32 }, 16],
    [{ ask: 'bundle-in-row', row: 2 }, 5],
    [{ ask: 'bundle-in-row', row: 28 }, 2],
    [{ ask: 'corner-cells-in-row', row: 1 }, 10],
  ] as const)('%j: %i', (options, figure) =>
    expect(number.solve(made(number.make('own', 'mixed', { ...worked, closingBundle: 6, ...options })))).toEqual({
      figure,
    }),
  );

  test('are refused where they do not go together', () => {
    const make = (options: Parameters<typeof number.make>[2]) => number.make(1, 'alone', { ...worked, ...options });
    expect(make({ ask: 'knots-in-row', row: 33 })).toBeRefusedAs('out-of-range');
    expect(make({ ask: 'knots-in-row', row: 2.5 })).toBeRefusedAs('not-a-whole-number');
    expect(make({ ask: 'knots-in-row', height: 8 })).toBeRefusedAs('never-full-width');
    expect(make({ ask: 'knots-in-row', closingBundle: 13 })).toBeRefusedAs('closing-too-big');
    expect(make({ ask: 'first-closing-row', closingBundle: 1 })).toBeRefusedAs('out-of-range');
    expect(make({ ask: 'knots-in-row', capacity: 30 })).toBeRefusedAs('no-fit');
    expect(make({ ask: 'length' as never })).toBeRefusedAs('unknown-choice');
    expect(mark.make(1, 'alone', { ...worked, target: 'corner-cells', from: 9, to: 4 })).toBeRefusedAs('out-of-range');
    expect(mark.make(1, 'alone', { ...worked, target: 'edge' as never })).toBeRefusedAs('unknown-choice');
    expect(make({ ask: 'cut-length', thread: { diameter: 90, kind: 'soft' } })).toBeRefusedAs('out-of-range');
  });
});

describe('a length to be cut', () => {
  test('is the solver’s, and the worked steps come to it', () => {
    const next = drawing();
    for (let n = 0; n < 200; n += 1) {
      const problem = made(number.make(next(0, 1e9), 'mixed', { ask: 'cut-length' }));
      if (problem.ask !== 'cut-length') throw new Error(problem.ask);
      const { place, width, height, diameter, threadKind: kind, barThickness, rowPitch } = problem;
      const thread = { diameter, kind, barThickness, workingLength: 2000, measured: { rowPitch } };
      const length = pieceLength(
        place === 'side' ? 'left' : place,
        { width, height },
        thread,
        pitchesOf(thread),
      ).likely;
      expect(number.solve(problem).figure, replay).toBe(length);
      const ends = number.solution(problem).at(-1)?.values['ends'] ?? number.solution(problem).at(-1)?.values['end'];
      expect(Math.ceil(Number(ends) / 5) * 5, `${replay} ${JSON.stringify(problem)}`).toBe(length);
      expect(problem.takeUp).toBe(1.06);
      expect(problem.mountingAndFinishing, JSON.stringify(problem)).toBeGreaterThan(0);
    }
  });

  test('may be five in a hundred off, and no more', () => {
    const problem = made(number.make('cut', 'alone', { ask: 'cut-length' }));
    const { figure } = number.solve(problem);
    const outcome = (part: number) => number.judge(problem, { figure: Math.round(figure * part) }).outcome;
    expect([0.94, 0.96, 1, 1.04, 1.06].map(outcome)).toEqual(['not-right', 'right', 'right', 'right', 'not-right']);
  });
  test('is asked of straight pieces too, and the string of all folds is counted by folds', () => {
    const straight = made(
      number.make('straight', 'alone', { ask: 'base-string-in-all', width: 20, capacity: 24, height: 30 }),
    );
    if (straight.ask !== 'base-string-in-all') throw new Error(straight.ask);
    expect(straight.baseStrings).toBe(20);
    expect(number.solve(straight).figure).toBe(10 * straight.foldLength);
  });
});

describe('marking cells', () => {
  const corners = made(mark.make('own', 'alone', { ...worked, target: 'corner-cells', from: 1, to: 2 }));
  const all = mark.solve(corners).cells;

  test('takes the cells in any order, once or twice, as a list or by name', () => {
    const shuffled = [...all].reverse();
    expect(mark.judge(corners, [...shuffled, ...all]).outcome).toBe('right');
    expect(mark.judge(corners, { cells: shuffled }).outcome).toBe('right');
  });
  test('tells right, missing and extra cells row by row', () => {
    const judged = mark.judge(corners, [...all.slice(1), [3, 1]]);
    expect(judged).toMatchObject({ outcome: 'not-right', first: 'row-1' });
    expect(judged.fields['row-1']).toEqual({
      verdict: 'wrong',
      right: [2, 3, 4, 5, 22, 23, 24, 25, 26],
      missing: [1],
      extra: [],
    });
    expect(judged.fields['row-2']?.verdict).toBe('right');
    expect(judged.fields['row-3']).toEqual({ verdict: 'wrong', right: [], missing: [], extra: [1] });
  });
  test.each([
    [[[1]], 'not-cells'],
    [[[1, 2, 3]], 'not-cells'],
    [[['1', 2]], 'not-cells'],
    [[[1, Number.NaN]], 'not-cells'],
    [[[1, 27]], 'outside-the-chart'],
    [[[0, 1]], 'outside-the-chart'],
  ] as never[])('cannot read %j: %s', (cells, reason) =>
    expect(mark.judge(corners, cells)).toMatchObject({
      outcome: 'unreadable',
      fields: { 'row-1': { verdict: 'unreadable', reason } },
    }),
  );

  test('takes any cell of the row in which closing begins', () => {
    const row = made(mark.make('own', 'alone', { ...worked, target: 'first-closing-row' }));
    expect(mark.judge(row, [[28, 9]]).outcome).toBe('right');
    expect(
      mark.judge(row, [
        [28, 9],
        [27, 9],
      ]).outcome,
    ).toBe('not-right');
    expect(mark.check(row, [[5, 3]]).missteps).toEqual(['closing-from-wrong-end']);
  });
  test('finds the knots of both bundles', () =>
    expect(mark.solve(made(mark.make('own', 'alone', { ...worked, target: 'bundle-knot', from: 2 })))).toEqual({
      cells: [
        [2, 5],
        [2, 22],
      ],
    }));
});
