import { describe, expect, test } from 'vitest';
import { backCords } from '../../src/figures/back.ts';
import { closing } from '../../src/figures/closing.ts';
import type { CordRows } from '../../src/figures/cord-rows.ts';
import { opening } from '../../src/figures/opening.ts';
import { stringPath, topOf } from '../../src/figures/piece/index.ts';
import { type RowOptions, row, rowCords } from '../../src/figures/row.ts';
import { showFigure } from '../../src/figures/show.ts';
import { stackCords } from '../../src/figures/stack.ts';
import { crossingsOf } from '../../src/figures/strand/index.ts';
import { type Plan, walkLead } from '../../src/solver/index.ts';
import { colourRuns, rowFloats } from '../../src/solver/thread/row-floats.ts';
import { rowFigureWords } from '../../src/words/figures/row.ts';
import { drawing, replay, seed } from '../seed.ts';
import { drawChart, drawPlan, lantern, lines, named, planned, third } from './drawn.ts';
import { expanded, greatestGap } from './piece/pieces.ts';

const show = { id: 'row', words: rowFigureWords };
const knotsIn = ({ model }: CordRows, number: number): number =>
  model.places.filter(({ knot }) => knot?.row === number).length;

/** How the leading string passes the base strings on its way from the row above to a row: each column, over or under. */
function passesInto(plan: Plan, number: number): string[] {
  const { model } = rowCords(plan, { row: number }).cords;
  const links = model.strings.flatMap(({ parts }) =>
    parts.flatMap((part) => (part.is === 'line' && part.what === 'link' ? [part.path] : [])),
  );
  const top = topOf(model.laid, number);
  const way = links.find(
    (path) => (path[0]?.[1] ?? top) > 0 && (path[0]?.[1] ?? top) < top && (path.at(-1)?.[1] ?? 0) > top,
  );
  if (!way) throw new Error(`nothing leads into row ${number}`);
  // Between the rows only: in them the knots have their own order.
  const strands = [
    { id: 'leading', path: way.slice(1, -1) },
    ...model.strings
      .filter(({ role }) => role === 'base')
      .map((string) => ({ id: string.id, path: stringPath(model, string) })),
  ];
  return crossingsOf(strands)
    .filter(({ strand, meets }) => strand === 'leading' && meets !== 'leading')
    .map(({ meets, over }) => `${over ? 'over' : 'under'} ${meets.replace('base-', '')}`);
}

describe('the drawing of a row', () => {
  test(`ties as many knots as are tied, on strings as many as the piece is wide, on 300 rows at random (${replay})`, () => {
    const next = drawing(seed);
    for (let piece = 0; piece < 300; piece += 1) {
      const plan = drawPlan(next);
      const own = plan.rows[next(0, plan.rows.length - 1)];
      if (!own || own.knots > 28) continue;
      const knot = next(0, own.knots);
      const options = { row: own.row, knot };
      const { cords } = rowCords(plan, options);
      const what = `row ${own.row}, ${knot} tied, of ${JSON.stringify(plan.fit)}`;
      expect(knotsIn(cords, own.row), what).toBe(knot);
      const before = plan.rows[own.row - 2];
      const alike = before?.leftBundle === own.leftBundle && before.rightBundle === own.rightBundle;
      expect(knotsIn(cords, own.row - 1), what).toBe(before && !alike ? before.knots : 0);
      expect(lines(named(row.draw(plan, options), 'waiting')), what).toBe(own.knots - knot);
      const bases = cords.model.strings.filter(({ role }) => role === 'base');
      expect(bases.length, what).toBe(plan.fit.width + (plan.fit.carrySide ? 1 : 0));
      expect(greatestGap(cords.model), what).toBeLessThan(1e-6);
    }
  });

  test('paints each of its knots once, and all of them in its windows', () => {
    const plan = planned({ width: 12, height: 14, capacity: 8 });
    const { svg } = showFigure(row, plan, { row: 5 }, show);
    const { cords } = rowCords(plan, { row: 5 });
    const shapes = new Map(Object.keys(cords.model.shapes).map((name) => [name, 0]));
    const drawn = expanded(svg).filter(({ tag, through }) => tag.name === 'use' && through.at(-1) !== undefined);
    // A use of a shape leads to drawn cords at once; a use of several of them leads to further uses. What lies behind the
    // base strings is painted before them, by itself.
    const one = drawn.filter(({ tag }) => !/-(?:[0-9a-z]+[lr]\d+)$/.test(tag.at['href'] ?? ''));
    const [knots, behind] = [false, true].map((under) =>
      one.filter(({ tag }) => /u$/.test(tag.at['href'] ?? '') === under),
    );
    expect(behind).toHaveLength(12);
    expect(shapes.size).toBeGreaterThan(1);
    expect(knots).toHaveLength(12);
  });

  test('draws both edges and the place of work of a row too wide to be drawn whole', () => {
    const wide = planned({ width: 60, height: 40, capacity: 50 });
    const drawn = row.draw(wide, { row: 20, knot: 33 });
    expect(named(drawn, 'tear')).toHaveLength(2);
    expect(drawn.shapes.filter(({ tag }) => tag === 'window')).toHaveLength(3);
    const { cords } = rowCords(wide, { row: 20, knot: 33 });
    const seen = wide.rows[19]?.runs.length ? Array.from({ length: 60 }, (_, i) => cords.x((i + 0.5) * 2.8)) : [];
    expect(seen.filter((x) => x !== null)).toHaveLength(24);
    // The end of the leading string hangs among the strings that are drawn.
    const ends = cords.model.strings.flatMap(({ parts }) =>
      parts.flatMap((part) => (part.is === 'line' && part.what === 'end' ? [part.path.at(-1)] : [])),
    );
    expect(ends.map((end) => end && cords.x(end[0]))).not.toContain(null);
    expect(ends).toHaveLength(1);
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
    const moved = (number: number): number[] =>
      rowCords(lantern, { row: number }).cords.model.moved.map(({ column }) => column);
    expect([1, 2, 6, 7, 27, 28, 32].map(moved)).toEqual([[], [6, 21], [2, 25], [], [], [2, 25], [6, 21]]);
  });

  test('passes in front of the string let out at its start, and behind the two that it is carried behind', () => {
    expect(passesInto(lantern, 2)).toEqual(['over 21']);
    expect(passesInto(lantern, 3)).toEqual(['over 5']);
    expect(passesInto(lantern, 28)).toEqual(['under 26', 'under 25']);
    expect(passesInto(lantern, 29)).toEqual(['over 3']);
  });

  test('is in the chart’s colours when it is asked to be, with every knot still there', () => {
    const next = drawing(seed);
    const plan = planned({ width: 12, height: 14, capacity: 8, chart: drawChart(next, 12, 14) });
    const own = (options: RowOptions) => rowCords(plan, { row: 5, ...options }).cords;
    const colours = (cords: CordRows) => new Set(cords.model.places.map(({ colour }) => colour));
    expect(knotsIn(own({ coloured: true }), 5)).toBe(12);
    expect(knotsIn(own({}), 5)).toBe(12);
    expect(colours(own({ coloured: true })).size).toBeGreaterThan(2);
    expect(colours(own({}))).toEqual(new Set([null]));
    const { svg } = showFigure(row, plan, { row: 5, coloured: true }, show);
    for (const index of new Set(plan.rows[4]?.runs.map(({ colour = 0 }) => colour)))
      expect(svg).toContain(`color="${plan.chart?.palette[index]?.colour}"`);
  });

  test('names knots, columns and places in full words', () => {
    const { title, steps } = showFigure(row, lantern, { row: 2, knot: 5 }, { id: 'row', words: rowFigureWords });
    expect([title, ...steps]).toEqual([
      'Row 2: 18 knots, beginning on the right.',
      'Row 1 hangs above it, so that each string can be followed.',
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
      for (const some of [plan.rows.slice(0, rows), plan.rows.slice(-rows)]) {
        const cords = stackCords(plan, some, {});
        expect(some.map(({ row: number }) => knotsIn(cords, number))).toEqual(some.map(({ knots }) => knots));
        expect(greatestGap(cords.model), JSON.stringify(plan.fit)).toBeLessThan(1e-6);
      }
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
    const accents = (rows: typeof third.rows) =>
      stackCords(third, rows, {}).model.moved.map(({ row: number, column }) => `${number}: ${column}`);
    expect(accents(third.rows.slice(0, 5))).toEqual(['2: 4', '2: 18', '3: 3', '3: 19', '4: 2', '4: 20']);
    expect(accents(third.rows.slice(-4))).toEqual(['24: 2', '24: 20', '25: 3', '25: 19', '26: 4', '26: 18']);
  });
});

describe('the drawing of a row from behind', () => {
  test(`lets every float of the row hang before the bases that it passes, on 60 rows at random (${replay})`, () => {
    const next = drawing(seed);
    for (let row = 1; row <= 60; row += 1) {
      const width = next(6, 30);
      const plan = planned({ width, height: 6, capacity: width, chart: drawChart(next, width, 6) });
      const number = next(1, 6);
      const { model } = backCords(plan, { row: number });
      const floats = rowFloats(colourRuns(plan.rows[number - 1]?.runs ?? []));
      const hung = model.strings.flatMap(({ parts }) =>
        parts.flatMap((part) => (part.is === 'line' && part.what === 'float' ? [part.path] : [])),
      );
      // Others come down to this row from an earlier one.
      const inside = hung.filter((path) => (path[0]?.[1] ?? 0) > 0);
      expect(inside.length).toBe(floats.length);
      const bases = model.strings
        .filter(({ role }) => role === 'base')
        .map((string) => ({ id: string.id, path: stringPath(model, string) }));
      const passed = inside.map((path) =>
        crossingsOf([{ id: 'float', path }, ...bases])
          .filter(({ strand, meets, x }) => strand === 'float' && meets !== 'float' && x > 0)
          .filter(({ over }) => over),
      );
      const most = (counts: readonly number[]): number[] => [...counts].sort((a, b) => b - a);
      const wanted = most(floats.map(({ columns }) => columns));
      for (const [i, count] of most(passed.map(({ length }) => length)).entries())
        expect(count).toBeGreaterThanOrEqual(wanted[i] ?? 0);
    }
  });

  test('has left and right changed over, and each colour lower than the one before', () => {
    const next = drawing(7);
    const plan = planned({ width: 12, height: 14, capacity: 8, chart: drawChart(next, 12, 14) });
    const cords = backCords(plan, { row: 5 });
    expect(cords.model.view).toBe('back');
    expect(cords.x(1) ?? 0).toBeGreaterThan(cords.x(30) ?? 0);
    const lows = new Map<string, number>();
    for (const { id, parts } of cords.model.strings)
      for (const part of parts)
        if (part.is === 'line' && part.what === 'float' && (part.path[0]?.[1] ?? 0) > 0)
          lows.set(id, Math.max(...part.path.map(([, y]) => y)));
    expect(new Set([...lows.values()].map((y) => y.toFixed(2))).size).toBe(lows.size);
  });
});
