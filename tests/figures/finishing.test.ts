import { describe, expect, test } from 'vitest';
import { chart } from '../../src/figures/chart.ts';
import { cutStrings } from '../../src/figures/cut-strings.ts';
import { foldsWhy } from '../../src/figures/folds-why.ts';
import { gathering } from '../../src/figures/gathering.ts';
import { isDark, markOf } from '../../src/figures/marks.ts';
import { cutList } from '../../src/solver/index.ts';
import { drawing, replay, seed } from '../seed.ts';
import { begins, drawChart, drawPlan, lantern, large, lines, named, planned, second, third } from './drawn.ts';

describe('the drawing of the gathering', () => {
  test(`leads as many singles to each side as the solver says, on 200 pieces at random (${replay})`, () => {
    const next = drawing(seed);
    for (let piece = 0; piece < 200; piece += 1) {
      const plan = drawPlan(next);
      const { perSide, middle, singles } = plan.finish;
      if (plan.fit.width < 4 || singles > 40) continue;
      const drawn = gathering.draw(plan);
      const what = JSON.stringify(plan.finish);
      expect(
        named(drawn, 'single').map((side) => lines([side])),
        what,
      ).toEqual([perSide, perSide]);
      expect(lines(named(drawn, 'joined')), what).toBe(2 * perSide);
      expect(lines(named(drawn, 'middle')), what).toBe(2);
      expect(lines(named(drawn, 'laid')), what).toBe(middle - 2);
      const last = plan.rows.at(-1);
      expect(lines(named(drawn, 'bundle')), what).toBe((last?.leftBundle ?? 0) + (last?.rightBundle ?? 0));
      expect(lines(named(drawn, 'knot')), what).toBe(last?.knots);
    }
  });

  test('has the two in the middle pass behind the bundles: they are drawn first', () => {
    const order = gathering.draw(lantern).shapes.map(({ is = '' }) => is);
    expect(order.findIndex((is) => is.includes('middle'))).toBeLessThan(order.findIndex((is) => is.includes('bundle')));
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

test('strings begin inside the drawing, whatever the piece', () => {
  for (const plan of [lantern, third, large])
    for (const [x, y] of begins(named(gathering.draw(plan), 'bundle'))) {
      expect(x).toBeGreaterThan(0);
      expect(x).toBeLessThan(360);
      expect(y).toBeGreaterThan(0);
    }
});
