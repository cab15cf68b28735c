import { describe, expect, test } from 'vitest';
import { bar } from '../../src/figures/bar.ts';
import {
  BAR_THICK,
  foldOver,
  KEPT_DOWN,
  larksHead,
  loneString,
  smooth,
  WIRE_THICK,
} from '../../src/figures/bar-cords.ts';
import * as kept from '../../src/figures/piece/kept.ts';
import { HEAD_IN_FRONT, headStretches, thinned } from '../../src/figures/piece/pen.ts';
import { BAR_AT, BAR_RADIUS, foldOver as foldOverRing, WIRE_RADIUS } from '../../src/figures/piece/ring.ts';
import { showFigure } from '../../src/figures/show.ts';
import type { Path } from '../../src/figures/strand/index.ts';
import { barWords } from '../../src/words/figures/bar.ts';
import { drawing, replay, seed } from '../seed.ts';
import { drawPlan, evening, lantern, large, lines, named, planned, second, shapesOf, third, used } from './drawn.ts';

const say = (plan: Parameters<typeof bar.draw>[0], stage?: 'capacity' | 'shared' | 'fitted') => {
  const { title, steps } = showFigure(bar, plan, { stage }, { id: 'bar', words: barWords });
  return [title, ...steps];
};

describe('the drawing of the bar', () => {
  test('of the lantern hangs 7 folds on the bar and 3 on each side, and shows two places given up', () => {
    const drawn = bar.draw(lantern);
    expect(used(drawn, 'fold')).toBe(7);
    expect(used(drawn, 'lone')).toBe(0);
    expect(named(drawn, 'folds').map((side) => lines([side]))).toEqual([3, 0, 3, 0]);
    expect(named(drawn, 'place', 'given')).toHaveLength(2);
    expect(lines(named(drawn, 'lent'))).toBe(2);
  });

  test('of the lantern at full capacity hangs 8 folds, and nothing beside the bar', () => {
    const drawn = bar.draw(lantern, { stage: 'capacity' });
    expect(used(drawn, 'fold')).toBe(8);
    expect(named(drawn, 'folds')).toHaveLength(0);
    expect(named(drawn, 'cell', 'open')).toHaveLength(2);
  });

  test('of the lantern with its spare strings halved leaves one string without a partner on each side', () => {
    const drawn = bar.draw(lantern, { stage: 'shared' });
    expect(named(drawn, 'folds').map((side) => lines([side]))).toEqual([2, 0, 2, 0]);
    expect(lines(named(drawn, 'single'))).toBe(2);
    expect(lines(named(drawn, 'missing'))).toBe(2);
  });

  test('of the second example leaves no string without a partner, so nothing is borrowed', () => {
    expect(lines(named(bar.draw(second, { stage: 'shared' }), 'single'))).toBe(0);
    expect(named(bar.draw(second), 'place')).toHaveLength(0);
  });

  test('of the third example fixes a lone string beside 6 folds', () => {
    const drawn = bar.draw(third);
    expect([used(drawn, 'fold'), used(drawn, 'lone')]).toEqual([6, 1]);
  });

  test(`hangs as many folds and strings as the fit has, on 300 pieces at random (${replay})`, () => {
    const next = drawing(seed);
    for (let piece = 0; piece < 300; piece += 1) {
      const plan = drawPlan(next);
      const { fit } = plan;
      const drawn = bar.draw(plan);
      const what = JSON.stringify(fit);
      expect(used(drawn, 'fold'), what).toBe(fit.folds);
      expect(used(drawn, 'lone'), what).toBe(fit.loneStrings);
      expect(lines(named(drawn, 'folds')), what).toBe(fit.left.folds + fit.right.folds);
      // Each fold has one leg before the ring's wire and one behind it.
      expect(lines(named(drawn, 'legs')) + lines(named(drawn, 'lent')), what).toBe(fit.left.folds + fit.right.folds);
      expect(named(drawn, 'place', 'given'), what).toHaveLength(fit.borrowed);
      const empty = fit.capacity - Math.min(fit.capacity, fit.width) + fit.idle;
      expect(named(drawn, 'place').length - fit.borrowed, what).toBe(Math.min(12, empty));
      // The first cell of each part is its frame; every other cell adds one line.
      const parts = named(drawn, 'cell');
      expect(lines(parts), what).toBe(fit.width);
    }
  });

  test('has every borrowed string in the accent, also where a split borrows more than one from an end', () => {
    for (const fit of [lantern.fit, ...lantern.alternatives]) {
      const drawn = bar.draw({ fit, startSide: 'left' });
      const accent = lines(named(drawn, 'lent')) + lines(named(drawn, 'must', 'folds'));
      expect(accent, JSON.stringify(fit)).toBe(fit.borrowed);
    }
  });

  test('keeps one scale for all stages, so that they can stand side by side', () => {
    const numbers = (stage: 'capacity' | 'shared' | 'fitted') =>
      shapesOf(bar.draw(lantern, { stage })).flatMap((shape) =>
        shape.tag === 'text' && typeof shape.say === 'string' ? [[shape.say, shape.x.toFixed(2)]] : [],
      );
    expect(numbers('shared')).toEqual(numbers('fitted'));
    expect(numbers('capacity')).toEqual(numbers('fitted'));
  });

  test('leaves the idle place where row 1 ends', () => {
    const at = (startSide: 'left' | 'right'): number => {
      const plan = planned({ width: 25, height: 20, capacity: 16, startSide });
      const [place] = named(bar.draw(plan, { stage: 'shared' }), 'place');
      return place?.tag === 'rect' ? place.x + place.width / 2 : Number.NaN;
    };
    expect(at('left')).toBeGreaterThan(180);
    expect(at('right')).toBeCloseTo(360 - at('left'), 6);
  });

  test('draws a carried end outside the columns, on the side where row 1 ends', () => {
    const plan = planned({ width: 25, height: 20, capacity: 16, oddMethod: 'carried-end' });
    const drawn = bar.draw(plan);
    expect(lines(named(drawn, 'folds')) * 2 + used(drawn, 'fold') * 2).toBe(26);
    expect(lines(named(drawn, 'cell'))).toBe(25);
  });

  test('of the lantern takes less than 12,000 characters, and so does one of 60 columns', () => {
    for (const plan of [lantern, evening, large])
      for (const stage of ['capacity', 'shared', 'fitted'] as const)
        expect(showFigure(bar, plan, { stage }, { id: 'plate-of-the-bar', words: barWords }).svg.length).toBeLessThan(
          12_000,
        );
  });

  test('says in words what it shows', () => {
    expect(say(lantern, 'shared')).toEqual([
      'Half of the spare strings on each side, before anything is borrowed: 26 columns on a bar that takes 16.',
      'On the bar hang 16 strings: 8 folds.',
      'On the left, 5 strings through the ring beside the bar: 2 folds and one string over. A fold gives two strings, so the one over has no partner.',
      'On the right, 5 strings through the ring beside the bar: 2 folds and one string over. A fold gives two strings, so the one over has no partner.',
    ]);
    expect(say(lantern)).toEqual([
      'How 26 columns fit a bar that takes 16.',
      'On the bar hang 14 strings: 7 folds.',
      'Two places of the bar are given up, one at each end: those two strings hang beside the bar, one on each side, so that each side is even.',
      'On the left, 6 strings through the ring beside the bar: 3 folds, every string with its partner.',
      'On the right, 6 strings through the ring beside the bar: 3 folds, every string with its partner.',
    ]);
    expect(say(third, 'capacity')).toEqual([
      'Every place of a bar that takes 15 is taken; the chart is 21 columns wide.',
      'On the bar hang 15 strings: 7 folds and a lone string.',
      'Of the 21 strings, 6 find no place on the bar: those are the spare strings.',
    ]);
  });
});

describe('what the bar holds', () => {
  const rounded = (paths: readonly Path[]): number[][][] =>
    paths.map((path) => thinned(path).map((point) => [point[0], point[1]].map((part) => Number(part.toFixed(2)) + 0)));
  const cut = (name: string, line: Path, low: number) => {
    const { behind, before } = headStretches(
      name,
      line.filter(([, y]) => y < low),
      0.3,
    );
    return { behind: rounded(behind), before: rounded(before) };
  };

  test('is the strand model’s lark’s head and lone string, corner by corner', () => {
    expect(larksHead).toEqual(cut('larks-head', kept.larksHead, KEPT_DOWN.fold));
    expect(loneString).toEqual(cut('lone-string', kept.loneString, KEPT_DOWN.lone));
  });

  test('lies over and under as a lark’s head does: its ends over the bar, its loop over both ends', () => {
    const [loop, ...ends] = [...larksHead.before].reverse();
    const across = (stretch: typeof loop = []) => stretch.map(([x]) => x);
    const down = (stretch: typeof loop = []) => stretch.map(([, y]) => y);
    // Two ends go over the bar from above it to below it.
    expect(ends).toHaveLength(2);
    for (const end of ends) {
      expect(Math.min(...down(end))).toBeLessThan(-BAR_RADIUS);
      expect(Math.max(...down(end))).toBeGreaterThan(BAR_RADIUS);
    }
    // The loop, painted last, covers where both ends go on below the bar; they are painted before the bar is.
    const under = larksHead.behind.filter((stretch) => Math.max(...down(stretch)) > 2.5);
    expect(under).toHaveLength(2);
    for (const end of under)
      for (const [x, y] of end)
        if (y > 1.7 && y < 2.2) expect(x > Math.min(...across(loop)) && x < Math.max(...across(loop))).toBe(true);
    expect(Math.min(...down(loop))).toBeGreaterThan(BAR_RADIUS);
    // So it does in space: where the loop crosses, it is nearer than either end.
    const near = kept.larksHead.filter(([, y]) => y > 1.6 && y < 2.6);
    const looped = near.filter(([x, , z]) => Math.abs(x) < 0.9 && z > HEAD_IN_FRONT);
    const hidden = near.filter(([x, , z]) => Math.abs(x) < 0.9 && z <= HEAD_IN_FRONT);
    expect(looped.length).toBeGreaterThan(2);
    expect(hidden.length).toBeGreaterThan(2);
    expect(Math.min(...looped.map(([, , z]) => z)) - Math.max(...hidden.map(([, , z]) => z))).toBeGreaterThan(0.3);
  });

  test('lies over the ring’s wire beside the bar as in the whole piece', () => {
    const { front, back } = foldOverRing(0);
    for (const leg of [front, back])
      expect(leg.map(([x, y]) => [Math.abs(x), y - BAR_AT])).toEqual(
        foldOver.map(([x, y]) => [expect.closeTo(x, 1), expect.closeTo(y, 6)]),
      );
    expect([2 * BAR_RADIUS, 2 * WIRE_RADIUS]).toEqual([BAR_THICK, WIRE_THICK]);
  });

  test('is drawn as smooth lines from end to end', () => {
    expect(
      smooth([
        [0, 0],
        [10, 0],
      ]),
    ).toBe('M0 0L10 0');
    expect(
      smooth([
        [0, 0],
        [10, 0],
        [10, 10],
        [20, 10],
      ]),
    ).toBe('M0 0Q10 0 10 5Q10 10 20 10');
  });

  test('is painted before and after the bar, each string once in either', () => {
    for (const plan of [lantern, third, evening]) {
      const drawn = bar.draw(plan);
      const order = drawn.shapes.map((shape) => (shape.tag === 'use' ? shape.href : (shape.is ?? '')));
      const metal = order.lastIndexOf('metal');
      const places = order.flatMap((href, i) =>
        /^(fold|lone)/.test(href) && href !== 'folds' ? [[href, i] as const] : [],
      );
      for (const [href, at] of places) expect(at < metal, href).toBe(href.endsWith('behind'));
      expect(used(drawn, 'fold-behind')).toBe(used(drawn, 'fold'));
      expect(used(drawn, 'lone-behind')).toBe(used(drawn, 'lone'));
    }
  });
});
