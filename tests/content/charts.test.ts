import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import type { Chart } from '../../src/solver/chart.ts';
import { blankOf, groundOf, isPicture } from '../../src/solver/chart-ground.ts';
import { planChart } from '../../src/solver/chart-plan.ts';
import { formatChart, parseChart } from '../../src/solver/chart-text.ts';
import { fitPiece } from '../../src/solver/fit.ts';
import { inspect, type Warning, type WarningCode } from '../../src/solver/inspect.ts';
import { bundleSizes, outlineProblem } from '../../src/solver/outline.ts';
import type { Bundles, Fit, SideName } from '../../src/solver/piece.ts';
import { planPiece } from '../../src/solver/plan.ts';
import { planRows } from '../../src/solver/rows.ts';
import { walkLead } from '../../src/solver/walk.ts';

const folder = new URL('../../content/charts/', import.meta.url);
const files = readdirSync(folder).filter((file) => file.endsWith('.chart'));
const textOf = (file: string): string => readFileSync(fileURLToPath(new URL(file, folder)), 'utf8');

function chartOf(file: string): Chart {
  const parsed = parseChart(textOf(file));
  if (!parsed.ok) throw new Error(`${file}: ${JSON.stringify(parsed.problem)}`);
  return parsed.chart;
}

function fitOf(width: number, capacity: number): Fit {
  const result = fitPiece({ width, capacity });
  if (!result.ok) throw new Error(`${width} on ${capacity}: ${result.problem.code}`);
  return result.fit;
}

const rowOf = ({ cells, width }: Chart, row: number): number[] => [...cells.subarray((row - 1) * width, row * width)];

const box: Record<string, string> = JSON.parse(textOf('colours.json'));

describe.each(files)('%s', (file) => {
  const chart = chartOf(file);
  const inPicture = isPicture(chart);
  const blank = blankOf(chart);

  test('is written as the workbook would write it', () => {
    expect(formatChart(chart)).toBe(textOf(file));
  });

  test('has a title and two to six colours, each one tied somewhere', () => {
    expect(chart.title).toMatch(/^[A-Z][a-z]/);
    const colours = chart.palette.filter((entry) => !entry.blank);
    expect(colours.length).toBeGreaterThanOrEqual(2);
    expect(colours.length).toBeLessThanOrEqual(6);
    expect(new Set(chart.cells).size).toBe(chart.palette.length);
  });

  test('takes its colours from the one box of colours', () => {
    for (const { name, colour, blank: outside } of chart.palette) expect(outside ? 'none' : box[name]).toBe(colour);
  });

  test('begins with a plain row of its ground', () => {
    const first = new Set(rowOf(chart, 1).filter((index) => index !== blank));
    expect([...first]).toEqual([groundOf(chart)]);
    expect(chart.palette[groundOf(chart)]?.ground).toBe(true);
  });

  test('has at most four colours in a row', () => {
    for (let row = 1; row <= chart.height; row += 1) {
      const colours = new Set(rowOf(chart, row).filter((index) => index !== blank));
      expect(colours.size, `row ${row}`).toBeLessThanOrEqual(4);
    }
  });

  test('has something of its picture in most rows', () => {
    const rows = Array.from({ length: chart.height }, (_, above) => rowOf(chart, above + 1).some(inPicture));
    expect(rows.filter(Boolean).length).toBeGreaterThan(chart.height * 0.6);
  });
});

describe('the charts together', () => {
  const sizes = files.map(chartOf).map(({ width, height }) => ({ width, height }));

  test('are at least twelve, from 12 to 40 columns wide and 14 to 60 rows high, odd and even', () => {
    expect(files.length).toBeGreaterThanOrEqual(12);
    for (const { width, height } of sizes) {
      expect(width).toBeGreaterThanOrEqual(12);
      expect(width).toBeLessThanOrEqual(40);
      expect(height).toBeGreaterThanOrEqual(14);
      expect(height).toBeLessThanOrEqual(60);
    }
    const widths = new Set(sizes.map(({ width }) => width));
    for (const width of [12, 15, 17, 18, 21, 24, 26, 29, 32, 40]) expect(widths).toContain(width);
    expect([...widths].filter((width) => width % 2 === 1).length).toBeGreaterThanOrEqual(5);
  });

  test('use every colour of the box', () => {
    const used = new Set(files.flatMap((file) => chartOf(file).palette.map(({ name }) => name)));
    for (const name of Object.keys(box)) expect(used).toContain(name);
  });

  test('hold one with cells outside its shape', () => {
    expect(files.filter((file) => blankOf(chartOf(file)) !== null)).toContain('mussel.chart');
  });
});

/** The ring each picture was drawn for: how many knotted columns its bar takes. */
const drawnFor: Record<string, number> = JSON.parse(textOf('rings.json'));
/** Those whose outline is the ordinary one. */
const RINGS: readonly [file: string, capacity: number][] = Object.entries(drawnFor)
  .map(([id, capacity]): [string, number] => [`${id}.chart`, capacity])
  .filter(([file]) => files.includes(file) && blankOf(chartOf(file)) === null);

/** Solid pictures cannot do without floats behind them; everything else can be drawn around. */
const FLOATS: ReadonlySet<WarningCode> = new Set(['float-too-long']);

function warnings(file: string, capacity: number, startSide: SideName): Warning[] {
  const chart = chartOf(file);
  const fit = fitOf(chart.width, capacity);
  const bundles = bundleSizes({ fit, height: chart.height });
  const rows = planRows({ fit, bundles, startSide, chart });
  if ('problem' in rows) throw new Error(`${file}: ${rows.problem.code}`);
  return inspect({ chart, fit, bundles, rows });
}

describe('a picture on the ring it was drawn for', () => {
  test.each(RINGS)('%s loses nothing to the corner cells of a bar that takes %i', (file, capacity) => {
    const chart = chartOf(file);
    const inPicture = isPicture(chart);
    const outline = bundleSizes({ fit: fitOf(chart.width, capacity), height: chart.height });
    expect(outline.problem).toBeUndefined();
    for (let row = 1; row <= chart.height; row += 1) {
      const left = outline.left[row - 1] ?? 0;
      const right = outline.right[row - 1] ?? 0;
      const cells = rowOf(chart, row);
      const corners = [...cells.slice(0, left - 1), ...cells.slice(chart.width - right + 1)];
      expect(corners.some(inPicture), `row ${row}`).toBe(false);
    }
  });

  test('every chart has its ring, and every ring its chart', () => {
    expect(Object.keys(drawnFor).map((id) => `${id}.chart`)).toEqual([...files].sort());
  });

  test('every chart can be planned on its ring, in the shape that it has', () => {
    for (const [id, capacity] of Object.entries(drawnFor)) {
      const chart = chartOf(`${id}.chart`);
      const plan = planChart({ chart, capacity });
      if (!plan.ok) throw new Error(`${id}: ${plan.problem.code}`);
      const tied = chart.cells.filter((index) => index !== blankOf(chart)).length;
      const knots = plan.rows.reduce((sum, row) => sum + row.knots, 0);
      if (blankOf(chart) === null) {
        const usual = planPiece({ width: chart.width, height: chart.height, capacity, chart });
        expect(usual.ok && usual.rows, id).toEqual(plan.rows);
      } else expect(knots, id).toBe(tied);
      expect(walkLead(plan.rows).ok, id).toBe(true);
    }
  });

  test('the shell of the mussel is an outline that can be tied on a bar that takes 6', () => {
    const chart = chartOf('mussel.chart');
    const blank = blankOf(chart);
    const rows = Array.from({ length: chart.height }, (_, above) => rowOf(chart, above + 1));
    const bundles: Bundles = {
      left: rows.map((cells) => cells.findIndex((index) => index !== blank) + 1),
      right: rows.map((cells) => chart.width - cells.findLastIndex((index) => index !== blank)),
    };
    expect(outlineProblem(fitOf(chart.width, 6), bundles)).toBeNull();
    rows.forEach((cells, above) => {
      const inside = cells.slice((bundles.left[above] ?? 0) - 1, chart.width - (bundles.right[above] ?? 0) + 1);
      expect(inside, `row ${above + 1} has no hole`).not.toContain(blank);
    });
  });

  test.each(RINGS)('%s on a bar that takes %i asks for no colour change on a turning knot', (file, capacity) => {
    expect(warnings(file, capacity, 'left').filter(({ code }) => !FLOATS.has(code))).toEqual([]);
  });

  test('the lantern is the worked example: 26 columns, 32 rows, and nothing to warn about from either side', () => {
    expect(chartOf('lantern.chart')).toMatchObject({ title: 'Lantern', width: 26, height: 32 });
    expect(warnings('lantern.chart', 16, 'left')).toEqual([]);
    expect(warnings('lantern.chart', 16, 'right')).toEqual([]);
  });

  test('the piece of the evening is 12 columns by 14 rows in four colours', () => {
    const buoy = chartOf('little-buoy.chart');
    expect(buoy).toMatchObject({ width: 12, height: 14 });
    expect(buoy.palette).toHaveLength(4);
  });
});
