import { describe, expect, it } from 'vitest';
import {
  crossingsOf,
  type KnotName,
  knots,
  orderDown,
  passes,
  strandModel,
} from '../../../src/figures/strand/index.ts';
import { againstDepth, flipped } from './flipped.ts';

/** Milliseconds that a machine with much else to do may take for one test. */
const busy = 30_000;

/** The craft, section 5: passes in order along the leading string, and their order down the base from the ring. */
const craft: {
  knot: KnotName;
  moment: 'drawn-up' | 'brought-through' | 'brought-through-again';
  passes: string;
  down: string;
}[] = [
  { knot: 'forward-half-hitch', moment: 'drawn-up', passes: 'o1 u1 s', down: 'u1 o1' },
  { knot: 'forward-half-hitch', moment: 'brought-through', passes: 'o1 u1 s', down: 'u1 o1' },
  { knot: 'forward', moment: 'drawn-up', passes: 'o1 u1 s o2 u2 s o3', down: 'u1 o1 u2 o2 o3' },
  { knot: 'forward', moment: 'brought-through-again', passes: 'o1 u1 s o2 u2 s o3', down: 'u1 o1 u2 o2 o3' },
  {
    knot: 'forward-backward',
    moment: 'brought-through-again',
    passes: 'o1 u1 s o2 o3 u2 s o4',
    down: 'u1 o1 o2 u2 o3 o4',
  },
  { knot: 'forward-backward', moment: 'drawn-up', passes: 'o1 u1 s u2 o2 ŝ', down: 'u1 o1 o2 u2' },
];
const mirrorOf: Partial<Record<KnotName, KnotName>> = {
  'forward-half-hitch': 'backward-half-hitch',
  forward: 'backward',
  'forward-backward': 'backward-forward',
};
const sizes = [1, 2, 3, 4, 5, 6, 7, 8];

describe('passes of the leading string', { timeout: busy }, () => {
  for (const row of craft)
    for (const knot of [row.knot, mirrorOf[row.knot] as KnotName])
      for (const strands of sizes)
        it(`a ${knot} knot, ${row.moment}, round ${strands} is ${row.passes}, and ${row.down} down the base`, () => {
          const model = strandModel(knot, { strands, moment: row.moment });
          expect(passes(model, 'leading')).toBe(row.passes);
          expect(orderDown(model, 'leading')).toBe(row.down);
          const own = model.crossings.filter((c) => c.strand === 'leading' && c.meets === 'leading');
          expect(own).toHaveLength(2 * row.passes.replaceAll(/[^sŝ]/g, '').length);
        });

  it('the left-handed figure of every knot keeps the same passes and order', () => {
    for (const { knot, moment, passes: list, down } of craft)
      for (const strands of [1, 2, 5, 8]) {
        const model = strandModel(knot, { strands, moment, handedness: 'left' });
        expect([passes(model, 'leading'), orderDown(model, 'leading')]).toEqual([list, down]);
      }
  });

  it('no crossing can be turned over and still pass for the knot', () => {
    for (const { knot, moment, passes: list } of craft)
      for (const strands of [1, 3]) {
        const model = strandModel(knot, { strands, moment });
        for (const i of model.crossings.keys()) expect(passes(flipped(model, i), 'leading')).not.toBe(list);
      }
  });

  it('a knot drawn with its front to the back is not the same knot', () => {
    const model = strandModel('forward', { strands: 2 });
    const inverted = model.strands.map((s) => ({
      ...s,
      path: s.path.map(([x, y, z]): [number, number, number] => [x, y, -z]),
    }));
    expect(passes({ strands: inverted, crossings: crossingsOf(inverted) }, 'leading')).toBe('u1 o1 ŝ u2 o2 ŝ u3');
  });

  it('a pass that misses one string of the bundle is called broken', () => {
    const model = strandModel('forward-half-hitch', { strands: 3 });
    const missing = model.crossings.findIndex(
      ({ strand, meets, over }) => strand === 'leading' && meets === 'base-2' && !over,
    );
    const crossings = model.crossings.filter((_, i) => i !== missing);
    expect(passes({ ...model, crossings }, 'leading')).toBe('o1 u1-broken s');
  });
});

describe('crossings', { timeout: busy }, () => {
  it('are over where the cord is nearer to the viewer and under where it is not, in every figure at every stop', () => {
    for (const knot of Object.keys(knots) as KnotName[])
      for (const { name } of strandModel(knot, { moment: 0 }).stops)
        expect(againstDepth(strandModel(knot, { strands: 2, moment: name })), `${knot} ${name}`).toEqual([]);
  });

  it('contradict the lines as soon as one is turned over, in every figure at every stop', () => {
    for (const knot of Object.keys(knots) as KnotName[])
      for (const { name } of strandModel(knot, { moment: 0 }).stops) {
        const model = strandModel(knot, { strands: 2, moment: name });
        for (const which of model.crossings.keys())
          expect(againstDepth(flipped(model, which)), `${knot} ${name}, crossing ${which}`).toHaveLength(2);
      }
  });

  it('are over from one string and under from the other, at the same place of both', () => {
    for (const { knot, moment } of craft)
      for (const strands of [1, 4, 8]) {
        const { crossings } = strandModel(knot, { strands, moment });
        expect(crossings.length % 2).toBe(0);
        for (const one of crossings) {
          const other = crossings.filter((c) => c.strand === one.meets && c.at === one.there && c.there === one.at);
          expect(other).toHaveLength(1);
          expect(other[0]?.over).toBe(!one.over);
          expect(other[0]?.meets).toBe(one.strand);
        }
      }
  });

  it('of a string with itself are listed twice, first the earlier pass, then the later', () => {
    const own = strandModel('forward').crossings.filter(
      ({ strand, meets }) => strand === 'leading' && meets === 'leading',
    );
    expect(own.map(({ pass }) => pass)).toEqual(['earlier', 'later', 'earlier', 'later']);
    for (const { pass, at, there } of own) expect(pass === 'earlier' ? at < there : at > there).toBe(true);
  });

  it('are listed in order along each string', () => {
    const { crossings, strands } = strandModel('forward-backward', { strands: 4, moment: 'brought-through-again' });
    for (const { id } of strands) {
      const along = crossings.filter(({ strand }) => strand === id).map(({ at }) => at);
      expect(along).toEqual([...along].sort((a, b) => a - b));
      expect(along.length).toBeGreaterThan(0);
    }
  });

  it('leave at least 0.8 d between the two cords in the drawn-up knots', () => {
    for (const { knot } of craft)
      for (const { gap } of strandModel(knot, { strands: 2 }).crossings) expect(gap).toBeGreaterThan(0.8);
  });
});
