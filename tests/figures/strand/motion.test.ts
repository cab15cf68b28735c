import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { spreadOf, standing, widen } from '../../../src/figures/strand/bundle.ts';
import { type KnotName, knots, type Path, type Point, strandModel } from '../../../src/figures/strand/index.ts';
import { movedBetween, nearest, step, type Watched, watch } from './clearance.ts';

/** Knots that are tied, not mirror images of others, with the sizes of base they are watched on. */
const tied = (Object.keys(knots) as KnotName[]).filter((knot) => !('mirrorOf' in knots[knot]));
/** Round bundles the lines are the same, only spread, which brings nothing nearer; a few are watched all the same. */
const sizesOf = (knot: KnotName): number[] =>
  ({
    'forward-half-hitch': [1, 8],
    'forward-backward': [1, 3],
    'square-first-half': [1, 4],
    'let-out': [2, 6],
    'take-in': [2, 6],
  })[knot as string] ?? [1];

const away = () => fc.double({ min: -6, max: 6, noNaN: true });
const place = () => fc.tuple(away(), away(), away());

function expectClear(seen: Watched): void {
  expect(`${seen.gap >= 0.8 ? 'clear' : seen.where}`).toBe('clear');
  for (const [id, longest] of Object.entries(seen.longest))
    expect(longest / (seen.shortest[id] ?? 0)).toBeLessThan(1.01);
}

/** Milliseconds that a machine with much else to do may take for one test. */
const busy = 60_000;

describe('tying, watched so often that nothing moves more than 0.2 d between two looks', { timeout: busy }, () => {
  for (const knot of tied)
    for (const strands of sizesOf(knot))
      it(`no cord comes nearer than 0.8 d to another or changes length by 1 %: ${knot} round ${strands}`, () => {
        expectClear(watch(knot, { strands }));
      });

  it('the mirror image is clear in its own right', () => {
    expectClear(watch('backward-half-hitch', { strands: 3 }));
    expectClear(watch('forward-half-hitch', { handedness: 'left' }));
  });

  it('the watch sees a cord that goes through another', () => {
    const still = strandModel('forward', { moment: 0 });
    const moved = still.strands.map((s) =>
      s.id === 'leading'
        ? {
            ...s,
            path: [
              [-7, 0, 0],
              [7, 0, 0.7],
            ] as Path,
          }
        : s,
    );
    expect(nearest({ strands: moved }).gap).toBeLessThan(0.5);
    expect(nearest({ strands: still.strands.slice(0, 1) }).gap).toBeGreaterThan(0.8);
  });

  it('the watch sees a cord that touches its own far part, and lets a bend be a bend', () => {
    const strand = strandModel('forward').strands[0];
    if (!strand) throw new Error('no strand');
    const hairpin: Path = [
      [0, 0, 0],
      [5, 0, 0],
      [6, 0.3, 0],
      [5, 0.6, 0],
      [0, 0.6, 0],
    ];
    expect(nearest({ strands: [{ ...strand, path: hairpin }] }).gap).toBeLessThan(0.61);
    const bend: Path = [
      [0, 0, 0],
      [1, 0, 0],
      [1, 0.9, 0],
    ];
    expect(nearest({ strands: [{ ...strand, path: bend }] }).gap).toBeGreaterThan(0.8);
  });
});

describe('the spreading of lines round a bundle', () => {
  it('brings no two places nearer to each other than they were round one base', () => {
    fc.assert(
      fc.property(place(), place(), fc.integer({ min: 2, max: 8 }), (a, b, strands) => {
        const spread = spreadOf(strands);
        const [wideA, wideB] = [widen([a], spread)[0] as Point, widen([b], spread)[0] as Point];
        expect(step(wideA, wideB)).toBeGreaterThanOrEqual(step(a, b) - 1e-9);
      }),
    );
  });

  it('keeps what is clear of one base clear of every string of the bundle', () => {
    fc.assert(
      fc.property(place(), fc.integer({ min: 2, max: 8 }), (p, strands) => {
        fc.pre(Math.hypot(p[0], p[2]) >= 0.9);
        const [x, , z] = widen([p], spreadOf(strands))[0] as Point;
        for (const [bx, bz] of standing(strands)) expect(Math.hypot(x - bx, z - bz)).toBeGreaterThan(0.8);
      }),
    );
  });
});

describe('moments', { timeout: busy }, () => {
  it('run from rest to drawn up in the order of the tying', () => {
    for (const knot of tied) {
      const { stops } = strandModel(knot);
      expect(stops.map(({ t }) => t)).toEqual(stops.map(({ t }) => t).sort((a, b) => a - b));
      expect(stops[0]?.t).toBe(0);
      expect(stops.at(-1)?.t).toBe(1);
    }
  });

  it('have the four stopping points in every row knot', () => {
    for (const knot of ['forward', 'backward', 'forward-backward', 'backward-forward'] as const) {
      const names = strandModel(knot).stops.map(({ name }) => name);
      for (const name of ['laid-over', 'passed-behind', 'brought-through', 'drawn-up'] as const)
        expect(names).toContain(name);
    }
  });

  it('outside 0 to 1 are the nearest of these, and no number is drawn up', () => {
    const end = strandModel('forward');
    for (const moment of [1, 7, Number.NaN]) expect(strandModel('forward', { moment })).toEqual(end);
    expect(strandModel('forward', { moment: -3 })).toEqual(strandModel('forward', { moment: 0 }));
  });

  it('give the same figure each time', () => {
    expect(strandModel('forward', { moment: 0.91, strands: 3 })).toEqual(
      strandModel('forward', { moment: 0.91, strands: 3 }),
    );
  });

  it('let every free end leave the picture at the same place from brought through to drawn up', () => {
    for (const knot of tied) {
      const { stops } = strandModel(knot, { moment: 0 });
      const [through, up] = stops.slice(-2);
      if (up?.name !== 'drawn-up' || !through) continue;
      for (const strands of sizesOf(knot)) {
        const places = [0, 0.2, 0.5, 0.8, 1].map((part) =>
          leaving(strandModel(knot, { strands, moment: through.t + part * (1 - through.t), crossings: false })),
        );
        expect(places[0]?.length).toBeGreaterThan(0);
        for (const place of places)
          for (const [i, p] of place.entries()) expect(step(p, places[0]?.[i] as Point)).toBeLessThan(0.05);
      }
    }
  });
});

/** Where each moving cord's end last crosses the edge of the picture; nothing for one that ends inside it. */
function leaving({ strands, frame }: ReturnType<typeof strandModel>): Point[] {
  const inside = (p: Point): boolean =>
    p[0] >= frame.left && p[0] <= frame.right && p[1] >= frame.top && p[1] <= frame.bottom;
  return strands.flatMap(({ path }) => {
    if (path.length === 2 || inside(path.at(-1) as Point)) return [];
    const i = path.findLastIndex(inside);
    const [a, b] = [path[i] as Point, path[i + 1] as Point];
    let [low, high] = [0, 1];
    const at = (t: number): Point => [a[0] + (b[0] - a[0]) * t, a[1] + (b[1] - a[1]) * t, a[2] + (b[2] - a[2]) * t];
    for (let k = 0; k < 40; k++) {
      const middle = (low + high) / 2;
      if (inside(at(middle))) low = middle;
      else high = middle;
    }
    return [at(low)];
  });
}

describe('every string', { timeout: busy }, () => {
  it('is one unbroken line: no step longer than 1 d where it bends', () => {
    for (const knot of tied)
      for (const moment of [0, 0.3, 0.6, 1])
        for (const { path } of strandModel(knot, { strands: 4, moment }).strands) {
          expect(path.length).toBeGreaterThan(1);
          for (const p of path) expect(p.every(Number.isFinite)).toBe(true);
          for (let i = 2; i < path.length; i++) {
            const [a, b, c] = [path[i - 2] as Point, path[i - 1] as Point, path[i] as Point];
            const bends = step(a, b) + step(b, c) - step(a, c) > 0.02;
            if (bends) expect(Math.min(step(a, b), step(b, c))).toBeLessThan(1);
          }
        }
  });

  it('of a bundle stays where it is, 1 d from its neighbour, while the leading string moves', () => {
    for (const strands of [2, 3, 5, 8]) {
      const [early, late] = [0.2, 1].map((moment) => strandModel('forward', { strands, moment }));
      const bases = late?.strands.filter(({ role }) => role === 'base') ?? [];
      expect(bases).toHaveLength(strands);
      for (const base of bases) expect(early?.strands.find(({ id }) => id === base.id)?.path).toEqual(base.path);
      for (let i = 1; i < bases.length; i++)
        expect(step(bases[i - 1]?.path[0] as Point, bases[i]?.path[0] as Point)).toBeCloseTo(1);
    }
  });

  it('moves smoothly: no jump at any stopping point', () => {
    for (const knot of tied)
      for (const { t } of strandModel(knot).stops) {
        const before = strandModel(knot, { moment: t - 1e-6 });
        const after = strandModel(knot, { moment: t + 1e-6 });
        for (const [i, { path }] of before.strands.entries())
          expect(movedBetween(path, after.strands[i]?.path ?? [])).toBeLessThan(0.2);
      }
  });
});
