import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  adviseOutline,
  advisePlan,
  type Chart,
  type Fit,
  fitPiece,
  inspect,
  type Placement,
  parseChart,
  pictureLost,
  placeChart,
  planFit,
  planPiece,
} from '../../src/solver/index.ts';
import { tries } from '../seed.ts';

const chartNamed = (name: string): Chart => {
  const read = parseChart(readFileSync(new URL(`../../content/charts/${name}.chart`, import.meta.url), 'utf8'));
  if (!read.ok) throw new Error(read.problem.code);
  return read.chart;
};

function optionsOf(input: Parameters<typeof adviseOutline>[0]): readonly Placement[] {
  const advised = adviseOutline(input);
  if (!advised.ok) throw new Error(advised.problem.code);
  return advised.options;
}

/** A placement planned and looked over in full, by the parts of the solver that know nothing of advice; null where it can't be. */
function planned(chart: Chart, fit: Fit, margins: Placement | Omit<Placement, 'lost' | 'knots' | 'rows'>) {
  const placed = placeChart(chart, margins);
  const plan = planFit({
    fit,
    alternatives: [],
    working: [],
    startSide: 'left',
    height: placed.height,
    closingBundle: margins.closingBundle,
    chart: placed,
  });
  if (!plan.ok) return null;
  const { outline, rows } = plan;
  const cut = inspect({ chart: placed, fit, bundles: outline, rows }).filter(({ code }) => code === 'picture-cut');
  return {
    lost: cut.reduce((sum, { values }) => sum + Number(values['lost']), 0),
    knots: rows.reduce((sum, { knots }) => sum + knots, 0),
    rows: rows.length,
  };
}

/** Every placement there is, each planned in full. */
function everyPlacement(chart: Chart, capacity: number, maxBundle: number): Placement[] {
  const found: Placement[] = [];
  for (let columnsLeft = 0; columnsLeft <= 4; columnsLeft += 1)
    for (let columnsRight = 0; columnsRight <= 4; columnsRight += 1) {
      const made = fitPiece({ width: chart.width + columnsLeft + columnsRight, capacity, maxBundle });
      const fits = made.ok
        ? [made.fit, ...made.alternatives]
        : 'alternatives' in made.problem
          ? made.problem.alternatives
          : [];
      for (const fit of fits)
        for (let closingBundle = 1; closingBundle <= maxBundle; closingBundle += 1)
          for (let rowsAbove = 0; rowsAbove < Math.max(1, fit.left.columns, fit.right.columns); rowsAbove += 1)
            for (let rowsBelow = 0; rowsBelow < closingBundle; rowsBelow += 1) {
              const margins = { fit, closingBundle, rowsAbove, rowsBelow, columnsLeft, columnsRight };
              const whole = planned(chart, fit, margins);
              if (whole) found.push({ ...margins, ...whole });
            }
    }
  return found;
}

const rank = ({ lost, knots, rows, fit, columnsLeft }: Placement): number[] => [
  lost,
  knots,
  rows,
  -fit.onBar,
  columnsLeft,
];
const byRank = (a: Placement, b: Placement): number => {
  const [one, two] = [rank(a), rank(b)];
  const at = one.findIndex((value, index) => value !== two[index]);
  return at < 0 ? 0 : (one[at] ?? 0) - (two[at] ?? 0);
};

const charts: fc.Arbitrary<Chart> = fc
  .record({ width: fc.integer({ min: 2, max: 9 }), height: fc.integer({ min: 1, max: 6 }) })
  .chain(({ width, height }) =>
    fc.array(fc.nat({ max: 2 }), { minLength: width * height, maxLength: width * height }).map((cells) => ({
      width,
      height,
      palette: [
        { name: 'chalk', colour: '#eeeeee', ground: true as const },
        { name: 'tar', colour: '#222222' },
        { name: 'outside', colour: 'none', blank: true as const },
      ],
      cells: Uint8Array.from(cells),
    })),
  );

describe('advice where a picture is cut', () => {
  test('the lantern on its own bar of 16 loses nothing and needs no plain row: 14 on the bar, 772 knots', () => {
    const [best] = optionsOf({ chart: chartNamed('lantern'), capacity: 16, splits: 'answer' });
    expect(best).toMatchObject({ rowsAbove: 0, rowsBelow: 0, columnsLeft: 0, columnsRight: 0, lost: 0, rows: 32 });
    expect(best?.fit.onBar).toBe(14);
  });

  test('the heron on a bar of 8 loses its crown and its reeds, and is whole with 1 plain row above and 3 below', () => {
    const chart = chartNamed('heron');
    const plan = planPiece({ width: 21, height: 40, capacity: 8, chart });
    if (!plan.ok) throw new Error(plan.problem.code);
    const warned = inspect({ chart, fit: plan.fit, bundles: plan.outline, rows: plan.rows })
      .filter(({ code }) => code === 'picture-cut')
      .reduce((sum, { values }) => sum + Number(values['lost']), 0);
    expect(warned).toBeGreaterThan(0);
    expect(pictureLost(plan)).toBe(warned);
    expect(advisePlan(plan)).toMatchObject({ rowsAbove: 1, rowsBelow: 3, columnsLeft: 0, lost: 0, rows: 44 });
    const slow = planPiece({ width: 21, height: 40, capacity: 8, openingStep: 2, chart });
    expect(slow.ok && advisePlan(slow)).toBeNull();
    expect([pictureLost({ ...plan, chart: null }), advisePlan({ ...plan, chart: null })]).toEqual([null, null]);
  });

  test('is what looking at every placement in full gives, in its order', () => {
    fc.assert(
      fc.property(
        charts,
        fc.integer({ min: 2, max: 10 }),
        fc.integer({ min: 2, max: 5 }),
        (chart, capacity, maxBundle) => {
          const all = everyPlacement(chart, capacity, maxBundle).sort(byRank);
          const advised = adviseOutline({ chart, capacity, maxBundle, limit: 12 });
          if (all.length === 0) {
            expect(advised).toMatchObject({ ok: false, problem: { code: 'no-fit' } });
            return;
          }
          if (!advised.ok) throw new Error(advised.problem.code);
          expect(advised.options.map(rank)).toEqual(all.slice(0, 12).map(rank));
          for (const option of advised.options)
            expect(planned(chart, option.fit, option)).toEqual({
              lost: option.lost,
              knots: option.knots,
              rows: option.rows,
            });
        },
      ),
      tries(12),
    );
  });

  test('with the answer alone, every way has the split of the fitting sum for its width', () => {
    for (const { fit } of optionsOf({ chart: chartNamed('heron'), capacity: 12, splits: 'answer', limit: 50 })) {
      const made = fitPiece({ width: fit.width, capacity: 12 });
      expect(made.ok && made.fit).toEqual(fit);
    }
  });

  test('gives as many ways as asked for, 12 if nothing is said, and never a worse one first', () => {
    const chart = chartNamed('heron');
    expect(optionsOf({ chart, capacity: 12 })).toHaveLength(12);
    const many = optionsOf({ chart, capacity: 12, limit: 200 });
    expect(many).toHaveLength(200);
    expect([...many].sort(byRank).map(rank)).toEqual(many.map(rank));
    expect(optionsOf({ chart, capacity: 12, limit: 1 })).toEqual(many.slice(0, 1));
  });

  test('refuses what is no chart, figures out of range, and a bar on which nothing can be made', () => {
    const chart = chartNamed('lantern');
    const codeOf = (input: unknown) => {
      const advised = adviseOutline(input as never);
      return advised.ok ? 'ok' : advised.problem.code;
    };
    expect(codeOf(undefined)).toBe('no-chart');
    expect(codeOf({ chart: { ...chart, width: 25 }, capacity: 16 })).toBe('chart-mistake');
    expect(codeOf({ chart, capacity: 1 })).toBe('out-of-range');
    expect(codeOf({ chart, capacity: 16.5 })).toBe('not-a-whole-number');
    expect(codeOf({ chart, capacity: 16, maxBundle: 41 })).toBe('out-of-range');
    expect(codeOf({ chart, capacity: 16, limit: 0 })).toBe('out-of-range');
    expect(codeOf({ chart, capacity: 16, splits: 'some' })).toBe('unknown-choice');
    expect(codeOf({ chart, capacity: 4 })).toBe('no-fit');
  });
});

describe('a chart with plain ground round it', () => {
  const chart = chartNamed('paper-boat');
  const placed = placeChart(chart, { rowsAbove: 2, rowsBelow: 1, columnsLeft: 3, columnsRight: 4 });

  test('is as much larger as was added, its picture is moved with it, and all else is ground', () => {
    expect([placed.width, placed.height]).toEqual([chart.width + 7, chart.height + 3]);
    const ground = chart.palette.findIndex((entry) => entry.ground);
    for (let row = 0; row < placed.height; row += 1)
      for (let column = 0; column < placed.width; column += 1) {
        const [y, x] = [row - 2, column - 3];
        const inside = y >= 0 && y < chart.height && x >= 0 && x < chart.width;
        expect(placed.cells[row * placed.width + column]).toBe(inside ? chart.cells[y * chart.width + x] : ground);
      }
  });

  test('keeps the ground of a chart that names none, even where the new rim would have another commonest colour', () => {
    const { ground, ...plain } = chart.palette[0] ?? { name: '', colour: '', ground: true };
    const unnamed: Chart = { ...chart, palette: [plain, ...chart.palette.slice(1)] };
    const wider = placeChart(unnamed, { rowsAbove: 0, rowsBelow: 0, columnsLeft: 1, columnsRight: 1 });
    expect(ground).toBe(true);
    expect(wider.palette.map((entry) => entry.ground)).toEqual([true, undefined, undefined, undefined, undefined]);
  });
});
