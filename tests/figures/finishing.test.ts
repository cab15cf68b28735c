import { describe, expect, test } from 'vitest';
import { chart } from '../../src/figures/chart.ts';
import { cutStrings } from '../../src/figures/cut-strings.ts';
import { foldsWhy } from '../../src/figures/folds-why.ts';
import { type GatheringCords, gathering, gatheringCords } from '../../src/figures/gathering.ts';
import { isDark, markOf } from '../../src/figures/marks.ts';
import { type Course, PiecePainter, stringPath } from '../../src/figures/piece/index.ts';
import { PAINTS } from '../../src/figures/piece/pen.ts';
import { crossingsOf } from '../../src/figures/strand/index.ts';
import { cutList } from '../../src/solver/index.ts';
import { drawing, replay, seed } from '../seed.ts';
import {
  drawChart,
  drawPlan,
  evening,
  lantern,
  large,
  lines,
  named,
  planned,
  second,
  shapesOf,
  small,
  third,
} from './drawn.ts';
import { greatestGap } from './piece/pieces.ts';

/** Whom a string passes in one of its lines, each with whether it lies over it. */
function passed({ model }: GatheringCords, column: number, what: Course): { id: string; over: boolean }[] {
  const own = model.strings.find(({ id }) => id === `base-${column}`);
  const path = own?.parts.flatMap((part) => (part.is === 'line' && part.what === what ? [part.path] : []))[0];
  if (!path) throw new Error(`string ${column} has no ${what}`);
  return crossingsOf([
    { id: 'own', path },
    ...model.strings
      .filter((string) => string !== own)
      .map((string) => ({ id: string.id, path: stringPath(model, string) })),
  ])
    .filter(({ strand, meets }) => strand === 'own' && meets !== 'own')
    .map(({ meets, over }) => ({ id: meets, over }));
}
const columns = (from: number, to: number): string[] =>
  Array.from({ length: to - from + 1 }, (_, i) => `base-${from + i}`);

describe('the drawing of the gathering', () => {
  test(`leads as many singles to each side as the solver says, each round all that its bundle holds by then, on 200 pieces at random (${replay})`, () => {
    const next = drawing(seed);
    for (let piece = 0; piece < 200; piece += 1) {
      const plan = drawPlan(next);
      const { perSide } = plan.finish;
      const cords = gatheringCords(plan);
      const { model, fewer } = cords;
      const what = `${JSON.stringify(plan.finish)} of ${JSON.stringify(plan.fit)}`;
      expect(cords.perSide + fewer, what).toBe(plan.fit.width < 4 ? cords.perSide : perSide);
      expect(
        model.strings.filter(({ role }) => role === 'base'),
        what,
      ).toHaveLength(plan.fit.width - 2 * fewer + (plan.fit.carrySide ? 1 : 0));
      expect(model.knots, what).toBe((plan.rows.at(-1)?.knots ?? 0) - 2 * fewer);
      if (fewer || plan.fit.width < 4) continue;
      expect(greatestGap(model), what).toBeLessThan(1e-6);
      const last = plan.rows.at(-1);
      for (const side of ['left', 'right'] as const) {
        const bundle = (side === 'left' ? last?.leftBundle : last?.rightBundle) ?? 0;
        const strands = bundle + (plan.fit.carrySide === side ? 1 : 0);
        expect(
          model.places.flatMap(({ shape }) => (shape.startsWith(`gathering-${side}`) ? [shape] : [])),
          what,
        ).toEqual(Array.from({ length: perSide }, (_, i) => `gathering-${side} ${Math.min(8, strands + i)}`));
        const singles = Array.from({ length: perSide }, (_, i) =>
          side === 'left' ? bundle + 1 + i : plan.fit.width - bundle - i,
        );
        // Each ties the knot that is its own, in order.
        expect(
          singles.map((column) =>
            model.strings
              .find(({ id }) => id === `base-${column}`)
              ?.parts.flatMap((part) => (part.is === 'shape' ? [model.places[part.place]?.y] : [])),
          ),
          what,
        ).toEqual(model.places.flatMap(({ shape, y }) => (shape.startsWith(`gathering-${side}`) ? [[y]] : [])));
      }
      expect(
        model.places.filter(({ shape }) => shape.startsWith('square-knot')),
        what,
      ).toHaveLength(2);
    }
  });

  test('has the two in the middle pass behind all strings of their bundle, and no other string on its way cross one', () => {
    for (const plan of [third, small, evening]) {
      const cords = gatheringCords(plan);
      const { width } = plan.fit;
      const { perSide, middle } = plan.finish;
      const last = plan.rows.at(-1);
      const left = (last?.leftBundle ?? 0) + perSide;
      const right = width - (last?.rightBundle ?? 0) - perSide + 1;
      expect(right - left - 1).toBe(middle);
      for (const [column, ids] of [
        [left + 1, columns(1, left)],
        [right - 1, columns(right, width)],
      ] as const) {
        const met = passed(cords, column, 'way').filter(({ id }) => id.startsWith('base'));
        expect(
          met.every(({ over }) => !over),
          `string ${column} of ${width}`,
        ).toBe(true);
        expect([...new Set(met.map(({ id }) => id))].sort(), `string ${column} of ${width}`).toEqual([...ids].sort());
      }
      for (let order = 1; order <= perSide; order += 1)
        for (const column of [left - perSide + order, right + perSide - order])
          expect(
            passed(cords, column, 'way').filter(({ id }) => id.startsWith('base')),
            `string ${column}`,
          ).toEqual([]);
    }
  });

  test('paints the two that tie in the accent down to their ends, and first, since they pass behind the bundles', () => {
    const { model } = gatheringCords(lantern);
    expect(model.moved.map(({ column }) => column)).toEqual([13, 14]);
    const parts = new PiecePainter('end', 'cord').parts(model);
    const [finishing = ''] = parts.flatMap(({ key, svg }) => (key === 'finishing' ? [svg] : []));
    const bodies = [...finishing.matchAll(/class="pc-b([^>]*)\/>/g)].map(([, rest = '']) =>
      rest.includes(PAINTS.moved),
    );
    // Each of them on its way, from one square knot to the next, and its end.
    expect(bodies.filter(Boolean)).toHaveLength(6);
    expect(bodies.indexOf(false)).toBeGreaterThanOrEqual(2);
    const square = parts.filter(({ key, svg }) => key.startsWith('shape') && svg.includes(PAINTS.moved));
    expect(square.length).toBeGreaterThan(0);
  });

  test('leaves strings out of a wide piece, and says how many there are', () => {
    const cords = gatheringCords(large);
    expect([cords.perSide, cords.fewer]).toEqual([12, large.finish.perSide - 12]);
    const drawn = gathering.draw(large);
    expect(lines(named(drawn, 'tear'))).toBe(8);
    const said = shapesOf(drawn).flatMap((shape) =>
      shape.tag === 'text' && typeof shape.say === 'string' ? [Number(shape.say)] : [],
    );
    expect(Math.max(...said)).toBe(large.finish.perSide);
    expect(said).not.toContain(8);
    expect(
      drawn.shapes.flatMap((shape) => (shape.tag === 'text' && typeof shape.say !== 'string' ? [shape.say] : [])),
    ).toContainEqual({ key: 'label-gathered', values: { count: large.finish.perSide } });
  });

  test('ties too few strings for that together: the last round the others', () => {
    for (const width of [2, 3]) {
      const { model } = gatheringCords(planned({ width, height: 5, capacity: 4 }));
      expect(model.places.filter(({ shape }) => /^(gathering|square)/.test(shape)).map(({ shape }) => shape)).toEqual([
        `gathering-left ${width - 1} told`,
      ]);
      expect(greatestGap(model)).toBeLessThan(1e-6);
    }
  });

  test('lays the third in the middle against the bundle of the starting side', () => {
    expect(third.finish.middle).toBe(3);
    expect(gathering.describe(third).find(({ key }) => key === 'gathering-laid')?.values).toEqual({ side: 'left' });
  });
});

describe('the drawing of the strings to cut', () => {
  test('has one line for each string, as long as it is likely to be, to one scale', () => {
    const pieces = [
      { place: 'bar', count: 7, length: { low: 900, likely: 1000, high: 1200 } },
      { place: 'left', count: 3, length: { low: 450, likely: 500, high: 600 } },
      { place: 'lone', count: 1, length: { low: 250, likely: 250, high: 250 } },
    ] as const;
    const drawn = cutStrings.draw(lantern, { pieces });
    const long = (place: string) => {
      const [heap] = named(drawn, place, 'across');
      const [, from, to] = /M([\d.]+) [\d.]+H([\d.]+)/.exec(heap && 'd' in heap ? heap.d : '') ?? [];
      return Number(to) - Number(from);
    };
    expect(pieces.map(({ place }) => lines(named(drawn, place, 'across')))).toEqual([7, 3, 1]);
    expect(long('left') / long('bar')).toBeCloseTo(0.5, 2);
    expect(long('lone') / long('bar')).toBeCloseTo(0.25, 2);
    // A range is shown where there is one; only folds are folded.
    expect(named(drawn, 'range')).toHaveLength(2);
    expect(lines(named(drawn, 'fold-line'))).toBe(2);
  });

  test('has the solver’s own cut list where no pieces are given', () => {
    const thread = { diameter: 0.8, kind: 'firm' } as const;
    const cut = cutList({ fit: third.fit, bundles: third.outline, rows: third.rows, thread });
    if (!cut.ok) throw new Error(cut.problem.code);
    expect(
      cutStrings
        .describe(third, { thread })
        .slice(1)
        .map(({ values }) => [values['place'], values['count'], values['likely']]),
    ).toEqual(cut.pieces.map(({ place, count, length }) => [place, count, length.likely]));
  });
});

describe('the drawing of why sides are even', () => {
  test('puts the odd half of this piece beside the even side it becomes', () => {
    const count = (plan: typeof lantern) => {
      const drawn = foldsWhy.draw(plan);
      return [named(drawn, 'folds').map((shape) => lines([shape])), lines(named(drawn, 'single'))];
    };
    expect(count(lantern)).toEqual([[1, 2, 3], 1]);
    expect(count(second)).toEqual([[1, 1, 2], 1]);
    expect(foldsWhy.describe(lantern)[0]?.values).toEqual({ odd: 5, even: 6 });
    expect(foldsWhy.describe(second)[0]?.values).toEqual({ odd: 3, even: 4 });
  });
});

describe('the finished picture', () => {
  test('has the cells inside the outline and no others', () => {
    const next = drawing(seed);
    const plan = planned({ width: 26, height: 32, capacity: 16, chart: drawChart(next, 26, 32) });
    const group = named(chart.draw(plan), 'cells')[0];
    let cells = 0;
    for (const shape of group && 'shapes' in group ? group.shapes : [])
      if (shape.tag === 'path' && shape.fill)
        for (const [, run, down] of shape.d.matchAll(/h(\d+)v(\d+)/g)) cells += Number(run) * Number(down);
    expect(cells).toBe(plan.rows.reduce((sum, { knots }) => sum + knots, 0));
  });

  test('of a chart alone has no ring, and leaves blank cells out', () => {
    const one = {
      width: 3,
      height: 2,
      palette: [
        { name: 'tar', colour: '#222' },
        { name: 'blank', colour: 'none', blank: true as const },
      ],
      cells: Uint8Array.from([0, 1, 0, 1, 1, 0]),
    };
    const drawn = chart.draw({ chart: one });
    expect(named(drawn, 'metal')).toHaveLength(0);
    const left = [...JSON.stringify(drawn).matchAll(/h(\d+)v(\d+)h/g)].map(
      ([, run, down]) => Number(run) * Number(down),
    );
    expect(left.sort()).toEqual([1, 2]);
    expect(chart.describe({ chart: one }).map(({ key }) => key)).toEqual(['chart-alone', 'chart-colours']);
  });

  test('has a mark of its own for each of 32 colours', () => {
    expect(new Set(Array.from({ length: 32 }, (_, index) => markOf(index))).size).toBe(32);
    expect(markOf(0)).not.toBe('');
  });

  test('has light marks on dark colours and dark marks on light ones', () => {
    expect(['#000000', '#1f1d1b', '#2b5d7d', '#123'].map(isDark)).toEqual([true, true, true, true]);
    expect(['#ffffff', '#f2ead8', '#d9b779', '#fff', 'none'].map(isDark)).toEqual([false, false, false, false, true]);
  });
});
