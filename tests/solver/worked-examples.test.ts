import { describe, expect, test } from 'vitest';
import { bundleSizes, finishSteps, fitPiece, planRows, type RowPlan, walkLead } from '../../src/solver/index.ts';

/** The figures that lessons and sheets use, spelled out; worked by hand from the craft's rules. */

interface Entered {
  readonly width: number;
  readonly capacity: number;
}

function fitted(entered: Entered) {
  const answer = fitPiece(entered);
  if (!answer.ok) throw new Error(`no fit: ${JSON.stringify(answer.problem)}`);
  return answer;
}

function planned(entered: Entered, height: number) {
  const { fit } = fitted(entered);
  const sizes = bundleSizes({ fit, height });
  const bundles = { left: sizes.left, right: sizes.right };
  const rows = planRows({ fit, bundles });
  const finish = finishSteps({ fit, bundles });
  if (!('length' in rows) || !finish.ok) throw new Error(`not planned: ${JSON.stringify([rows, finish])}`);
  return { fit, sizes, bundles, rows: [...rows], finish };
}

const knotsOf = (rows: readonly RowPlan[]): number[] => rows.map(({ knots }) => knots);
describe('26 wide and 32 high on a bar that takes 16', () => {
  const { fit, sizes, rows, finish } = planned({ width: 26, capacity: 16 }, 32);

  test('borrows two: 14 on the bar as 7 folds, 6 a side as 3 folds', () =>
    expect(fit).toMatchObject({
      onBar: 14,
      folds: 7,
      loneStrings: 0,
      borrowed: 2,
      idle: 0,
      oddMethod: null,
      carrySide: null,
      level: true,
      left: { columns: 6, strands: 6, folds: 3 },
      right: { columns: 6, strands: 6, folds: 3 },
    }));
  test('has 16 knots in its first row and is full in row 6', () =>
    expect([fit.firstRowKnots, fit.rowsToFullWidth, rows[0]?.knots, sizes.firstFullRow]).toEqual([16, 6, 16, 6]));
  test('begins to close in row 28, after 22 rows of full width', () =>
    expect([sizes.firstClosingRow, sizes.fullWidthRows]).toEqual([28, 22]));
  test('lets out to row 6 and takes in from row 28', () => {
    expect(sizes.left.slice(0, 7)).toEqual([6, 5, 4, 3, 2, 1, 1]);
    expect(sizes.left.slice(25)).toEqual([1, 1, 2, 3, 4, 5, 6]);
    expect(sizes.right).toEqual(sizes.left);
    expect(knotsOf(rows).slice(0, 7)).toEqual([16, 18, 20, 22, 24, 26, 26]);
    expect(knotsOf(rows).slice(25)).toEqual([26, 26, 24, 22, 20, 18, 16]);
  });
  test('names ten spare, five a side, odd, two borrowed, fourteen on the bar and six a side in its sum', () =>
    expect(fitted({ width: 26, capacity: 16 }).working).toEqual([
      { key: 'spare', values: { width: 26, places: 16, spare: 10 } },
      { key: 'halved', values: { spare: 10, half: 5 } },
      { key: 'half-odd', values: { half: 5 } },
      { key: 'borrow-two', values: { places: 16, onBar: 14, half: 5, bundle: 6 } },
      { key: 'on-bar', values: { onBar: 14 } },
      { key: 'folds-on-bar', values: { onBar: 14, folds: 7, loneStrings: 0 } },
      { key: 'folds-each-side', values: { bundle: 6, folds: 3 } },
      { key: 'first-row', values: { onBar: 14, bundles: 2, knots: 16 } },
      { key: 'full-width', values: { row: 6, width: 26 } },
    ]));
  test('is finished by gathering six of fourteen single strings from each side, two in the middle', () =>
    expect(finish).toMatchObject({ singles: 14, perSide: 6, middle: 2 }));
});

describe('24 wide on a bar that takes 16', () => {
  const { fit, sizes, finish } = planned({ width: 24, capacity: 16 }, 20);

  test('borrows nothing: 8 folds on the bar, 4 strings a side', () =>
    expect(fit).toMatchObject({
      onBar: 16,
      folds: 8,
      loneStrings: 0,
      borrowed: 0,
      idle: 0,
      left: { columns: 4, strands: 4, folds: 2 },
      right: { columns: 4, strands: 4, folds: 2 },
    }));
  test('has 18 knots in its first row and is full in row 4', () => {
    expect([fit.firstRowKnots, fit.rowsToFullWidth]).toEqual([18, 4]);
    expect(sizes).toMatchObject({ firstFullRow: 4, firstClosingRow: 18, fullWidthRows: 14 });
  });
  test('names eight spare and four a side, even, in its sum, and borrows nothing', () =>
    expect(fitted({ width: 24, capacity: 16 }).working).toEqual([
      { key: 'spare', values: { width: 24, places: 16, spare: 8 } },
      { key: 'halved', values: { spare: 8, half: 4 } },
      { key: 'half-even', values: { half: 4 } },
      { key: 'on-bar', values: { onBar: 16 } },
      { key: 'folds-on-bar', values: { onBar: 16, folds: 8, loneStrings: 0 } },
      { key: 'folds-each-side', values: { bundle: 4, folds: 2 } },
      { key: 'first-row', values: { onBar: 16, bundles: 2, knots: 18 } },
      { key: 'full-width', values: { row: 4, width: 24 } },
    ]));
  test('is finished by gathering seven of sixteen from each side', () =>
    expect(finish).toMatchObject({ singles: 16, perSide: 7, middle: 2 }));
});

describe('21 wide on a bar that takes 15', () => {
  const { alternatives } = fitted({ width: 21, capacity: 15 });
  const { fit, sizes, finish } = planned({ width: 21, capacity: 15 }, 14);

  test('borrows two: 13 on the bar as 6 folds and a lone string, 4 a side', () =>
    expect(fit).toMatchObject({
      onBar: 13,
      folds: 6,
      loneStrings: 1,
      borrowed: 2,
      idle: 0,
      oddMethod: 'lone-string',
      carrySide: null,
      left: { columns: 4, strands: 4, folds: 2 },
      right: { columns: 4, strands: 4, folds: 2 },
      firstRowKnots: 15,
      rowsToFullWidth: 4,
    }));
  test('has its full width from row 4 and closes from row 12', () =>
    expect(sizes).toMatchObject({ firstFullRow: 4, firstClosingRow: 12, fullWidthRows: 8 }));
  test('can be made level with a carried end: 14 on the bar, 4 strands a side, 3 columns on the right', () =>
    expect(alternatives[0]).toMatchObject({
      onBar: 14,
      folds: 7,
      loneStrings: 0,
      oddMethod: 'carried-end',
      carrySide: 'right',
      level: true,
      idle: 1,
      borrowed: 0,
      left: { columns: 4, strands: 4 },
      right: { columns: 3, strands: 4 },
    }));
  test('can be made lopsided with all fifteen on the bar: 4 on the left, 2 on the right', () =>
    expect(alternatives).toContainEqual(
      expect.objectContaining({
        onBar: 15,
        level: false,
        borrowed: 0,
        left: { columns: 4, strands: 4, folds: 2 },
        right: { columns: 2, strands: 2, folds: 1 },
      }),
    ));
  test('is finished by gathering five of thirteen from each side, three in the middle', () =>
    expect(finish).toMatchObject({ singles: 13, perSide: 5, middle: 3 }));
});

describe('the evening’s piece, 12 wide and 14 high on a bar that takes 8', () => {
  const { fit, sizes, rows, finish } = planned({ width: 12, capacity: 8 }, 14);

  test('has 8 on the bar and 2 a side', () =>
    expect(fit).toMatchObject({ onBar: 8, folds: 4, left: { columns: 2, folds: 1 }, right: { columns: 2, folds: 1 } }));
  test('has 164 knots', () => {
    expect(knotsOf(rows)).toEqual([10, 12, 12, 12, 12, 12, 12, 12, 12, 12, 12, 12, 12, 10]);
    expect(knotsOf(rows).reduce((sum, knots) => sum + knots, 0)).toBe(164);
    expect(sizes).toMatchObject({ firstFullRow: 2, firstClosingRow: 14, fullWidthRows: 12 });
  });
  test('is tied in row 1 with a turning knot, eight forward knots and a turning knot', () =>
    expect(rows[0]).toMatchObject({
      direction: 'rightward',
      startMove: 'none',
      firstColumn: 2,
      lastColumn: 11,
      runs: [
        { knot: 'backward-forward', columns: [2, 2], count: 1, strands: 2 },
        { knot: 'forward', columns: [3, 10], count: 8, strands: 1 },
        { knot: 'forward-backward', columns: [11, 11], count: 1, strands: 2 },
      ],
    }));
  test('lets out on both sides in row 2: a turning knot on the right edge string, then backward knots to the left edge', () =>
    expect(rows[1]).toMatchObject({
      direction: 'leftward',
      startMove: 'let-out',
      runs: [
        { knot: 'forward-backward', columns: [12, 12], count: 1, strands: 1 },
        { knot: 'backward', columns: [11, 1], count: 11, strands: 1 },
      ],
    }));
  test('takes two strings in at both edges in row 14, the string carried behind the two on the right', () => {
    expect(rows[12]).toMatchObject({
      direction: 'rightward',
      startMove: 'none',
      runs: [{ knot: 'forward', columns: [1, 12], count: 12 }],
    });
    expect(rows[13]).toMatchObject({
      direction: 'leftward',
      startMove: 'carry-behind',
      runs: [
        { knot: 'forward-backward', columns: [11, 11], strands: 2 },
        { knot: 'backward', columns: [10, 3], count: 8 },
        { knot: 'backward-forward', columns: [2, 2], strands: 2 },
      ],
    });
  });
  test('leads its string from inside the left bundle to inside the right, out to the left, and in again', () => {
    const walk = walkLead(rows);
    if (!walk.ok) throw new Error(JSON.stringify(walk));
    expect(walk.path.slice(0, 6)).toEqual([
      { row: 1, run: 0, at: 2, ends: 2 },
      { row: 1, run: 1, at: 2, ends: 10 },
      { row: 1, run: 2, at: 10, ends: 10 },
      { row: 2, run: 0, at: 11, ends: 11 },
      { row: 2, run: 1, at: 11, ends: 0 },
      { row: 3, run: 0, at: 0, ends: 12 },
    ]);
    expect(walk.path.slice(-3)).toEqual([
      { row: 14, run: 0, at: 10, ends: 10 },
      { row: 14, run: 1, at: 10, ends: 2 },
      { row: 14, run: 2, at: 2, ends: 2 },
    ]);
  });
  test('is finished by gathering three of eight single strings from each side, two in the middle', () =>
    expect(finish).toMatchObject({ singles: 8, perSide: 3, middle: 2 }));
});

describe('figures the fitting sum turns on', () => {
  test('9 wide on a bar of 3 cannot be split level with a lone string, whatever the bundles', () => {
    const answer = fitPiece({ width: 9, capacity: 3, maxBundle: 40 });
    expect(answer).toMatchObject({ ok: false, problem: { code: 'too-narrow' } });
    // 5 on the bar and 2 a side is the first that goes.
    if (!answer.ok) expect(answer.problem.values['smallestCapacity']).toBe(5);
  });
  test('9 wide on a bar of 3 goes level with a carried end: 2 on the bar, 4 strands a side', () =>
    expect(fitPiece({ width: 9, capacity: 3, oddMethod: 'carried-end' })).toMatchObject({
      ok: true,
      fit: {
        onBar: 2,
        left: { columns: 4, strands: 4 },
        right: { columns: 3, strands: 4 },
        idle: 1,
        borrowed: 0,
        firstRowKnots: 4,
      },
    }));
  test('40 wide on a bar of 16 asks 12 a side: a bar of 24 or a width of 32 would do', () => {
    const answer = fitPiece({ width: 40, capacity: 16 });
    expect(answer).toMatchObject({ ok: false, problem: { code: 'bundle-too-big' } });
    if (!answer.ok) expect(answer.problem.values).toMatchObject({ smallestCapacity: 24, greatestWidth: 32 });
  });
  test('11 wide on a bar of 12 is straight from row 1 and needs a lone string', () =>
    expect(fitPiece({ width: 11, capacity: 12, oddMethod: 'carried-end' })).toMatchObject({
      ok: true,
      fit: {
        onBar: 11,
        folds: 5,
        loneStrings: 1,
        oddMethod: 'lone-string',
        carrySide: null,
        borrowed: 0,
        idle: 0,
        firstRowKnots: 11,
        rowsToFullWidth: 1,
      },
    }));
  test('a carried end rides on the left where row 1 begins on the right', () =>
    expect(fitPiece({ width: 21, capacity: 15, oddMethod: 'carried-end', startSide: 'right' })).toMatchObject({
      ok: true,
      fit: { carrySide: 'left', left: { columns: 3, strands: 4 }, right: { columns: 4, strands: 4 } },
    }));
});
