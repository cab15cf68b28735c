import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  isStop,
  type KnotName,
  knots,
  REPLAY,
  replayed,
  snapped,
  stopAfter,
  stopAt,
  stopBefore,
  strandModel,
} from '../../../src/figures/strand/index.ts';

const stopsOf = (knot: KnotName) => strandModel(knot, { moment: 0, crossings: false }).stops;
const names = Object.keys(knots) as KnotName[];
const { stops } = strandModel('forward', { moment: 0 });
const whole = (stops.length - 1) * (REPLAY.stage + REPLAY.rest);

describe('steps from stage to stage', () => {
  it('go through every stopping point of every knot once, forward and back', () => {
    for (const knot of names) {
      const all = stopsOf(knot);
      const [forward, back] = [[0], [1]];
      while ((forward.at(-1) ?? 1) < 1) forward.push(stopAfter(all, forward.at(-1) ?? 1));
      while ((back.at(-1) ?? 0) > 0) back.push(stopBefore(all, back.at(-1) ?? 0));
      expect(forward, knot).toEqual(all.map(({ t }) => t));
      expect(back.reverse(), knot).toEqual(forward);
    }
  });

  it('stay at the ends, and lead from between two stages to either', () => {
    expect(stopAfter(stops, 1)).toBe(1);
    expect(stopBefore(stops, 0)).toBe(0);
    const [first, second] = [stops[1]?.t ?? 0, stops[2]?.t ?? 0];
    const between = (first + second) / 2;
    expect([stopBefore(stops, between), stopAfter(stops, between)]).toEqual([first, second]);
    expect(stopAt(stops, between)).toBe(2);
    expect([isStop(stops, between), isStop(stops, second)]).toEqual([false, true]);
  });

  it('leave no hundredth from which a slider cannot move on, and no stage that it cannot stand on', () => {
    for (const knot of names) {
      const all = stopsOf(knot);
      const met = Array.from({ length: 101 }, (_, i) => snapped(all, i / 100));
      for (const { t } of all) expect(met, knot).toContain(t);
      for (let i = 1; i < met.length; i++) expect(met[i], knot).toBeGreaterThan(met[i - 1] ?? 1);
    }
  });
});

describe('a slow replay', () => {
  it('begins where it is, never goes back, and ends at the last stage', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 0.999, noNaN: true }), (from) => {
        const seen = Array.from({ length: 400 }, (_, i) => replayed(stops, from, (i * whole) / 399).t);
        expect(seen[0]).toBeCloseTo(from);
        for (let i = 1; i < seen.length; i++) expect(seen[i]).toBeGreaterThanOrEqual(seen[i - 1] ?? 1);
        expect(replayed(stops, from, whole)).toEqual({ t: 1, over: true });
      }),
    );
  });

  it('takes a stage as long as any other, and rests at each but the last', () => {
    for (const [i, { t }] of stops.entries()) {
      if (i === 0) continue;
      const arrives = i * REPLAY.stage + (i - 1) * REPLAY.rest;
      expect(replayed(stops, 0, arrives + 1e-6).t).toBeCloseTo(t, 4);
      expect(replayed(stops, 0, arrives - REPLAY.stage / 2).t).toBeLessThan(t);
      if (t < 1) expect(replayed(stops, 0, arrives + REPLAY.rest * 0.99)).toEqual({ t, over: false });
    }
  });

  it('goes on at the same pace from between two stages', () => {
    const [a, b] = [stops[1]?.t ?? 0, stops[2]?.t ?? 0];
    expect(replayed(stops, (a + b) / 2, REPLAY.stage / 2 + 1e-6).t).toBeCloseTo(b, 4);
    expect(replayed(stops, (a + b) / 2, REPLAY.stage / 4).t).toBeCloseTo(a + (b - a) * 0.75, 4);
  });
});
