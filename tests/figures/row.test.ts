import { describe, expect, test } from 'vitest';
import { closing } from '../../src/figures/closing.ts';
import { opening } from '../../src/figures/opening.ts';
import { row } from '../../src/figures/row.ts';
import { showFigure } from '../../src/figures/show.ts';
import { walkLead } from '../../src/solver/index.ts';
import { rowFigureWords } from '../../src/words/figures/row.ts';
import { drawing, replay, seed } from '../seed.ts';
import { begins, drawChart, drawPlan, lantern, lines, named, planned, third } from './drawn.ts';

describe('the drawing of a row', () => {
  test(`ties as many knots as are tied, on strings as many as the piece is wide, on 300 rows at random (${replay})`, () => {
    const next = drawing(seed);
    for (let piece = 0; piece < 300; piece += 1) {
      const plan = drawPlan(next);
      const own = plan.rows[next(0, plan.rows.length - 1)];
      if (!own || own.knots > 28) continue;
      const knot = next(0, own.knots);
      const drawn = row.draw(plan, { row: own.row, knot });
      const what = `row ${own.row}, ${knot} tied, of ${JSON.stringify(plan.fit)}`;
      expect(lines(named(drawn, 'knot')), what).toBe(knot);
      expect(lines(named(drawn, 'waiting')), what).toBe(own.knots - knot);
      const strings = ['base', 'bundle', 'moved'].reduce((sum, name) => sum + lines(named(drawn, name)), 0);
      expect(strings, what).toBe(plan.fit.width);
    }
  });

  test('draws both edges and the place of work of a row too wide to be drawn whole', () => {
    const wide = planned({ width: 60, height: 40, capacity: 50 });
    const drawn = row.draw(wide, { row: 20, knot: 33 });
    expect(named(drawn, 'tear')).toHaveLength(2);
    const strings = lines(named(drawn, 'base'));
    expect(strings).toBeGreaterThan(20);
    expect(strings).toBeLessThan(30);
    // The end of the leading string hangs among the strings that are drawn.
    const [end] = begins(named(drawn, 'lead', 'end'));
    expect(end?.[0]).toBeGreaterThan(30);
    expect(end?.[0]).toBeLessThan(330);
  });

  test('lets the leading string come from where the row above ended', () => {
    const from = (number: number) => row.describe(lantern, { row: number, knot: 0 }).at(-1)?.values;
    const walk = walkLead(lantern.rows);
    if (!walk.ok) throw new Error('the leading string must not jump');
    for (const { row: number, runs } of lantern.rows) {
      const first = walk.path.find((place) => place.row === number);
      expect(from(number)).toMatchObject({ start: first?.at, at: first?.at });
      const last = walk.path.findLast((place) => place.row === number);
      expect(row.describe(lantern, { row: number }).at(-1)?.values).toMatchObject({ at: last?.ends });
      expect(runs.length).toBeGreaterThan(0);
    }
  });

  test('has a string in the accent at each edge where one is let out or taken in', () => {
    const moved = (number: number): number => lines(named(row.draw(lantern, { row: number }), 'moved'));
    expect([1, 2, 6, 7, 27, 28, 32].map(moved)).toEqual([0, 2, 2, 0, 0, 2, 2]);
  });

  test('has the leading string behind the edge strings where it is carried behind them, before them elsewhere', () => {
    const order = (number: number): string[] =>
      row
        .draw(lantern, { row: number })
        .shapes.map(({ is = '' }) => is)
        .filter((is) => is === 'lead' || is === 'base');
    expect(order(28)).toEqual(['lead', 'base']);
    expect(order(2)).toEqual(['base', 'lead']);
  });

  test('is in the chart’s colours when it is asked to be, with every knot still there', () => {
    const next = drawing(seed);
    const plan = planned({ width: 12, height: 14, capacity: 8, chart: drawChart(next, 12, 14) });
    const knots = (coloured: boolean) => named(row.draw(plan, { row: 5, coloured }), 'knot');
    expect(lines(knots(true))).toBe(12);
    expect(lines(knots(false))).toBe(12);
    expect(knots(true).some((shape) => shape.tag === 'cord' && shape.colour !== undefined)).toBe(true);
    expect(knots(false).some((shape) => shape.tag === 'cord' && shape.colour !== undefined)).toBe(false);
  });

  test('names knots, columns and places in full words', () => {
    const { title, steps } = showFigure(row, lantern, { row: 2, knot: 5 }, { id: 'row', words: rowFigureWords });
    expect([title, ...steps]).toEqual([
      'Row 2: 18 knots, beginning on the right.',
      '5 of 18 knots are tied so far.',
      'First, the innermost string of the right bundle passes behind the leading string to its inner side.',
      'String 6 leaves the left bundle.',
      'String 21 leaves the right bundle.',
      'Column 22: 1 forward-backward knot round the bundle of 5 strings.',
      'Columns 21 to 6: 16 backward knots.',
      'Column 5: 1 backward-forward knot round the bundle of 5 strings.',
      'The leading string starts between strings 21 and 22 and is now between strings 17 and 18.',
    ]);
  });
});

describe('the drawing of several rows', () => {
  test(`ties every knot of them, on 100 pieces at random (${replay})`, () => {
    const next = drawing(seed);
    for (let piece = 0; piece < 100; piece += 1) {
      const plan = drawPlan(next);
      if (plan.fit.width > 60) continue;
      const rows = next(1, Math.min(9, plan.rows.length));
      const sum = (some: typeof plan.rows) => some.reduce((all, { knots }) => all + knots, 0);
      expect(lines(named(opening.draw(plan, { rows }), 'knot'))).toBe(sum(plan.rows.slice(0, rows)));
      expect(lines(named(closing.draw(plan, { rows }), 'knot'))).toBe(sum(plan.rows.slice(-rows)));
    }
  });

  test('shows the lantern opening until one row after its full width, and closing from one row before the first', () => {
    expect(
      opening
        .describe(lantern)
        .filter(({ key }) => key === 'opening-row')
        .map(({ values }) => values['knots']),
    ).toEqual([16, 18, 20, 22, 24, 26, 26]);
    expect(
      closing
        .describe(lantern)
        .filter(({ key }) => key === 'closing-row')
        .map(({ values }) => values['knots']),
    ).toEqual([26, 24, 22, 20, 18, 16]);
  });

  test('has each string that changes over in the accent, once a side and row', () => {
    expect(lines(named(opening.draw(third), 'moved'))).toBe(6);
    expect(lines(named(closing.draw(third), 'moved'))).toBe(6);
  });
});
