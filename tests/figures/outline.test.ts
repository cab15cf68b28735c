import { describe, expect, test } from 'vitest';
import { mergedCells } from '../../src/figures/cells.ts';
import { outline } from '../../src/figures/outline.ts';
import { showFigure } from '../../src/figures/show.ts';
import { toSvg } from '../../src/figures/svg.ts';
import { namedFigure } from '../../src/solver/index.ts';
import { figureWords } from '../../src/words/figure-words.ts';
import { drawing, replay, seed } from '../seed.ts';
import { area, drawChart, drawPlan, lantern, large, lines, named, planned, shapesOf } from './drawn.ts';

/** The size of a cell, from the sheet behind the cells. */
const cellOf = (drawn: ReturnType<typeof outline.draw>, width: number): number => {
  const [sheet] = named(drawn, 'sheet');
  return sheet?.tag === 'rect' ? sheet.width / width : Number.NaN;
};

describe('the drawing of the outline', () => {
  test(`hatches as many corner cells as the plan has, on 200 pieces at random (${replay})`, () => {
    const next = drawing(seed);
    for (let piece = 0; piece < 200; piece += 1) {
      const plan = drawPlan(next);
      const drawn = outline.draw(plan, { across: 720 });
      const size = cellOf(drawn, plan.fit.width);
      // Figures stand to a tenth of a unit, so areas are right to that.
      const cells = area(named(drawn, 'corner')) / size ** 2;
      const corners = namedFigure(plan, 'corner-cells') ?? 0;
      expect(Math.abs(cells - corners), JSON.stringify(plan.fit)).toBeLessThanOrEqual(0.02 + (corners * 0.2) / size);
    }
  });

  test('marks the knot of every bundle once', () => {
    const bundles = lantern.rows.reduce(
      (sum, row) => sum + (row.leftBundle > 1 ? 1 : 0) + (row.rightBundle > 1 ? 1 : 0),
      0,
    );
    expect(lines(named(outline.draw(lantern, { show: 'bundles' }), 'gathered'))).toBe(bundles);
    expect(named(outline.draw(lantern), 'gathered')).toHaveLength(0);
  });

  test('has a leading string’s end at the side where each row begins', () => {
    const drawn = outline.draw(lantern);
    const [sheet] = named(drawn, 'sheet');
    const middle = sheet?.tag === 'rect' ? sheet.x + sheet.width / 2 : Number.NaN;
    const ends = [...(named(drawn, 'lead', 'across')[0] as { d: string }).d.matchAll(/M([\d.]+) ([\d.]+)/g)].map(
      ([, x]) => Number(x),
    );
    expect(ends).toHaveLength(32);
    for (const [index, x] of ends.entries())
      if (index % 2 === 0) expect(x).toBeLessThan(middle);
      else expect(x).toBeGreaterThan(middle);
  });

  test('shows the rows asked for, and takes rows the piece has not got as the nearest it has', () => {
    const rows = (from: number, to: number) => outline.describe(lantern, { from, to })[1]?.values;
    expect(rows(4, 9)).toEqual({ from: 4, to: 9 });
    expect(rows(30, 99)).toEqual({ from: 30, to: 32 });
    expect(rows(9, 4)).toEqual({ from: 9, to: 9 });
    expect(rows(Number.NaN, 3)).toEqual({ from: 1, to: 3 });
  });

  test('has a cell for every cell of the chart, each in its own colour', () => {
    const next = drawing(seed);
    const chart = drawChart(next, 23, 17);
    const merged = mergedCells(23, 17, (column, row) => chart.cells[row * 23 + column] ?? -1);
    const counted = [...merged].map(([colour, data]) => {
      let cells = 0;
      for (const [, run, down] of data.matchAll(/h(\d+)v(\d+)/g)) cells += Number(run) * Number(down);
      return [colour, cells];
    });
    const counts = new Map<number, number>();
    for (const colour of chart.cells) counts.set(colour, (counts.get(colour) ?? 0) + 1);
    expect(new Map(counted as [number, number][])).toEqual(counts);
  });

  test('marks every colour but the ground where cells are large enough to see a mark', () => {
    const next = drawing(seed);
    const plan = planned({ width: 12, height: 14, capacity: 8, chart: drawChart(next, 12, 14) });
    const cells = named(outline.draw(plan), 'cells')[0];
    const marked = cells && 'shapes' in cells ? cells.shapes.filter((shape) => shape.tag === 'pattern') : [];
    expect(marked).toHaveLength(4);
    const far = planned({ width: 60, height: 80, capacity: 46, chart: drawChart(next, 60, 80) });
    expect(JSON.stringify(outline.draw(far))).not.toContain('mark-');
  });

  test('of 400 by 1000 cells stays below 200,000 characters, drawn in blocks no eye can part', () => {
    const plan = planned({ width: 400, height: 1000, capacity: 390 });
    const chart = {
      ...drawChart(() => 0, 400, 1000),
      cells: Uint8Array.from({ length: 400_000 }, (_, cell) => ((cell % 400) >> 4) % 5),
    };
    const svg = toSvg('outline', outline.draw({ ...plan, chart }), {
      id: 'o',
      words: figureWords,
      title: '',
      description: '',
    });
    expect(svg.length).toBeLessThan(200_000);
  });

  test('thins numbers out on a large piece: no more than twenty a side', () => {
    const numbers = shapesOf(outline.draw(large)).filter((shape) => shape.tag === 'text');
    expect(numbers.length).toBeLessThan(40);
    expect(numbers.map((shape) => (shape.tag === 'text' ? shape.say : ''))).toContain('80');
  });

  test('tells where a piece narrows by what is seen, even where its closing begins under the opening', () => {
    // Row 9 ends with bundles of 8, so the closing is counted back to row 3, but rows 3 and 5 still widen.
    const plan = planned({ width: 26, height: 9, capacity: 16, openingStep: 2, closingBundle: 8 });
    expect(plan.outline.firstClosingRow).toBe(3);
    expect(plan.rows.map(({ knots }) => knots)).toEqual([16, 16, 18, 18, 20, 18, 16, 14, 12]);
    const told = showFigure(outline, plan, {}, { id: 'o', words: figureWords }).description;
    expect(told).toContain('From row 6 on it takes strings in and narrows.');
  });
});
