import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { parseChart } from '../../src/solver/chart-text.ts';
import { fitPiece } from '../../src/solver/fit.ts';
import { outlineOf, outlineProblem } from '../../src/solver/outline.ts';
import type { Bundles, Fit } from '../../src/solver/piece.ts';
import { planPiece } from '../../src/solver/plan.ts';
import { planRows } from '../../src/solver/rows.ts';
import { silhouette, type WantedShape, waistShape, wantedShape } from '../../src/solver/silhouette.ts';
import { walkLead } from '../../src/solver/walk.ts';
import { drawing, replay } from '../seed.ts';

const next = drawing();

function fitOf(width: number, capacity: number): Fit {
  const made = fitPiece({ width, capacity });
  if (!made.ok) throw new Error(`${width} on ${capacity}: ${made.problem.code}`);
  return made.fit;
}

function nearest(fit: Fit, wanted: WantedShape, maxBundle = 8) {
  const found = silhouette({ fit, wanted, maxBundle });
  if (!found.ok) throw new Error(JSON.stringify(found.problem));
  return found;
}

const missed = ({ left, right }: Bundles, { first, last }: WantedShape, width: number): number =>
  left.reduce(
    (sum, size, index) =>
      sum + Math.abs(size - (first[index] ?? 0)) + Math.abs(width - (right[index] ?? 0) + 1 - (last[index] ?? 0)),
    0,
  );
const held = ({ left, right }: Bundles): number => [...left, ...right].reduce((sum, size) => sum + size, 0);
const inTurn = ({ left, right }: Bundles): number[] => left.flatMap((size, index) => [size, right[index] ?? 0]);

/** Every outline there is for so many rows, by trying; no bundle over `most`. */
function everyOutline(fit: Fit, rows: number, most: number): Bundles[] {
  const start: Bundles = { left: [Math.max(1, fit.left.columns)], right: [Math.max(1, fit.right.columns)] };
  let found: Bundles[] = [start];
  for (let row = 2; row <= rows; row += 1)
    found = found.flatMap(({ left, right }) =>
      [-1, 0, 1].flatMap((byLeft) =>
        [-1, 0, 1].map((byRight) => ({
          left: [...left, (left.at(-1) ?? 0) + byLeft],
          right: [...right, (right.at(-1) ?? 0) + byRight],
        })),
      ),
    );
  return found.filter(
    (bundles) =>
      outlineProblem(fit, bundles) === null && [...bundles.left, ...bundles.right].every((size) => size <= most),
  );
}

function wish(width: number, rows: number): WantedShape {
  const first = Array.from({ length: rows }, () => next(1, width));
  return { first, last: first.map((from) => next(from, width)) };
}

/** The first of two lists of sizes that is smaller where they differ. */
function before(one: readonly number[], other: readonly number[]): boolean {
  const at = one.findIndex((size, index) => size !== other[index]);
  return at >= 0 && (one[at] ?? 0) < (other[at] ?? 0);
}

describe('the outline nearest to a wish', () => {
  test('is the best of all there are: fewest cells missed, then fewest knots, then the smaller bundle first', () => {
    for (const [width, capacity, rows] of [
      [2, 2, 3],
      [3, 3, 4],
      [4, 4, 4],
      [6, 2, 4],
      [8, 4, 5],
      [9, 5, 4],
      [12, 8, 5],
      [12, 4, 4],
    ] as const) {
      const fit = fitOf(width, capacity);
      for (let turn = 0; turn < 12; turn += 1) {
        const maxBundle = next(2, 5);
        const wanted = wish(width, rows);
        const most = Math.max(maxBundle, fit.left.columns, fit.right.columns);
        const best = everyOutline(fit, rows, most).reduce((kept, other) => {
          const [a, b] = [missed(kept, wanted, width), missed(other, wanted, width)];
          if (a !== b) return a < b ? kept : other;
          if (held(kept) !== held(other)) return held(kept) > held(other) ? kept : other;
          return before(inTurn(other), inTurn(kept)) ? other : kept;
        });
        const found = nearest(fit, wanted, maxBundle);
        const what = `${replay}: ${width} on ${capacity}, ${JSON.stringify(wanted)}`;
        expect({ left: found.left, right: found.right }, what).toEqual(best);
        expect(found.differing, what).toBe(missed(best, wanted, width));
      }
    }
  });

  test('can always be tied, and its leading string never jumps', () => {
    for (let turn = 0; turn < 120; turn += 1) {
      const width = next(4, 60);
      const made = fitPiece({ width, capacity: next(2, width) });
      if (!made.ok) continue;
      const { fit } = made;
      const wanted = wish(width, next(12, 80));
      const found = silhouette({ fit, wanted });
      if (!found.ok) {
        expect(found.problem.code).toBe('too-short');
        continue;
      }
      expect(outlineProblem(fit, found), replay).toBeNull();
      expect(found.differing).toBe(missed(found, wanted, width));
      const rows = planRows({ fit, bundles: found });
      if (!Array.isArray(rows)) throw new Error(JSON.stringify(rows));
      expect(walkLead(rows).ok, replay).toBe(true);
    }
  });

  test('gives an outline back as it is', () => {
    const fit = fitOf(26, 16);
    const left = [6, 5, 4, 4, 3, 2, 2, 3, 4, 5, 4, 3];
    const right = [6, 5, 4, 3, 2, 1, 1, 1, 2, 3, 4, 5];
    const found = nearest(fit, { first: left, last: right.map((size) => 27 - size) });
    expect(found).toEqual({ ok: true, left, right, differing: 0 });
  });

  test('misses as many cells in the mirror', () => {
    for (let turn = 0; turn < 40; turn += 1) {
      const fit = fitOf(24, 16);
      const wanted = wish(24, next(6, 30));
      const mirrored = { first: wanted.last.map((last) => 25 - last), last: wanted.first.map((first) => 25 - first) };
      expect(nearest(fit, mirrored).differing, replay).toBe(nearest(fit, wanted).differing);
    }
  });

  test('goes no wider with its bundles than was asked for, or than was mounted', () => {
    const wanted = { first: Array.from({ length: 30 }, () => 12), last: Array.from({ length: 30 }, () => 13) };
    expect(Math.max(...nearest(fitOf(24, 16), wanted, 3).left)).toBe(4);
    expect(Math.max(...nearest(fitOf(24, 24), wanted, 3).left)).toBe(3);
    expect(Math.max(...nearest(fitOf(24, 24), wanted, 9).left)).toBe(9);
  });

  test('a waist that steps in at once by three is met half way: 12 columns on a bar of 8', () => {
    const wanted = waistShape(12, 12, 8);
    expect(wanted.first).toEqual([1, 1, 1, 1, 4, 4, 4, 4, 1, 1, 1, 1]);
    const found = nearest(fitOf(12, 8), wanted);
    expect(found.left).toEqual([2, 1, 1, 2, 3, 4, 4, 3, 2, 1, 1, 1]);
    expect(found.differing).toBe(10);
  });
});

describe('a wish that can’t be met', () => {
  const fit = fitOf(12, 8);
  test('has a hole where a row has no cell', () => {
    const found = silhouette({ fit, wanted: { first: [1, 13, 1], last: [12, 0, 12] } });
    expect(found).toMatchObject({ ok: false, problem: { code: 'hole', row: 2 } });
  });
  test('is too short where one row would leave a single string to finish with, and hears that two rows would do', () => {
    const none = { columns: 0, strands: 0, folds: 0 };
    const lopsided = { ...fitOf(6, 2), left: { columns: 4, strands: 4, folds: 2 }, right: none };
    const rows = (count: number) => ({
      first: Array.from({ length: count }, () => 1),
      last: Array.from({ length: count }, () => 6),
    });
    expect(silhouette({ fit: lopsided, wanted: rows(1) })).toMatchObject({
      ok: false,
      problem: { code: 'too-short', values: { height: 1, shortestHeight: 2 } },
    });
    expect(silhouette({ fit: lopsided, wanted: rows(2) })).toMatchObject({ ok: true, left: [4, 3], right: [1, 1] });
  });
  test.each([
    ['no rows', { first: [], last: [] }, 'no-rows'],
    ['sides of other lengths', { first: [1, 1], last: [12] }, 'sides-differ-in-length'],
    ['a column that is none', { first: [1, 2.5], last: [12, 12] }, 'not-a-whole-number'],
    ['a column beyond the edge', { first: [1, 1], last: [12, 13] }, 'out-of-range'],
    ['nothing', undefined, 'no-rows'],
  ])('is told by its problem: %s', (_, wanted, code) => {
    expect(silhouette({ fit, wanted: wanted as never })).toMatchObject({ ok: false, problem: { code } });
  });
  test('and a bundle of no size is none', () =>
    expect(silhouette({ fit, wanted: { first: [1], last: [12] }, maxBundle: 1 })).toMatchObject({
      ok: false,
      problem: { code: 'out-of-range', field: 'maxBundle' },
    }));
});

describe('a chart with blank cells', () => {
  const read = parseChart(readFileSync(new URL('../../content/charts/mussel.chart', import.meta.url), 'utf8'));
  if (!read.ok) throw new Error('the mussel can’t be read');
  const { chart } = read;

  test('says its own shape: the mussel begins six columns in and is eighteen wide in the middle', () => {
    const { first, last } = wantedShape(chart);
    expect([first[0], last[0]]).toEqual([6, 13]);
    expect([Math.min(...first), Math.max(...last)]).toEqual([1, 18]);
  });
  test('is followed by a plan: the mussel on a bar of 6, cell for cell', () => {
    const plan = planPiece({ width: 18, height: 27, capacity: 6, chart, followChart: true });
    if (!plan.ok) throw new Error(plan.problem.code);
    expect(plan.outline).toMatchObject({ ...outlineOf(plan.outline), firstFullRow: 11, fullWidthRows: 9 });
    expect(plan.outline.left).toEqual([...wantedShape(chart).first]);
    expect(plan.rows.reduce((sum, row) => sum + row.knots, 0)).toBe(
      [...chart.cells].filter((index) => chart.palette[index]?.blank !== true).length,
    );
  });
  test('changes nothing where there is no chart to follow', () => {
    const piece = { width: 18, height: 27, capacity: 6 };
    expect(planPiece({ ...piece, followChart: true })).toEqual(planPiece(piece));
  });
});

test('an outline with two waists begins to close where its last widening ends', () => {
  const bundles = { left: [3, 2, 1, 1, 2, 2, 1, 1, 1, 2, 3], right: [3, 2, 1, 1, 1, 1, 1, 1, 1, 1, 2] };
  expect(outlineOf(bundles)).toMatchObject({ firstFullRow: 3, fullWidthRows: 5, firstClosingRow: 10 });
});
