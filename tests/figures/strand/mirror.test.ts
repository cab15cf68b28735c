import { describe, expect, it } from 'vitest';
import { type KnotName, knots, mirrorId, mirrorKnot, mirrorModel, strandModel, type StrandModel } from '../../../src/figures/strand/index.ts';

const names = Object.keys(knots) as KnotName[];
const pairs: [KnotName, KnotName][] = [
  ['forward', 'backward'],
  ['forward-backward', 'backward-forward'],
  ['forward-half-hitch', 'backward-half-hitch'],
];

/** The side a cord comes from and the side it leaves to. */
function sides(model: StrandModel, id = 'leading'): [string, string] {
  const path = model.strands.find((strand) => strand.id === id)?.path ?? [];
  return [path[0], path.at(-1)].map((p) => ((p?.[0] ?? 0) < 0 ? 'left' : 'right')) as [string, string];
}

describe('where the leading string starts and ends', () => {
  const craft: [KnotName, string, string][] = [
    ['forward', 'left', 'right'],
    ['backward', 'right', 'left'],
    ['forward-backward', 'left', 'left'],
    ['backward-forward', 'right', 'right'],
    ['forward-half-hitch', 'left', 'left'],
    ['backward-half-hitch', 'right', 'right'],
  ];
  for (const [knot, from, to] of craft)
    it(`a ${knot} knot starts on the ${from} and ends on the ${to}, on every bundle`, () => {
      for (const strands of [1, 2, 3, 4, 5, 6, 7, 8])
        for (const moment of ['brought-through-again', 'drawn-up'] as const)
          expect(sides(strandModel(knot, { strands, moment }))).toEqual([from, to]);
    });

  it('is on the other side for a left-handed maker', () => {
    for (const [knot, from, to] of craft) {
      const other = { left: 'right', right: 'left' } as Record<string, string>;
      expect(sides(strandModel(knot, { handedness: 'left' }))).toEqual([other[from], other[to]]);
    }
  });
});

describe('mirror images', () => {
  for (const [one, other] of pairs)
    it(`a ${other} knot is a ${one} knot in the mirror, string by string`, () => {
      for (const moment of [0, 0.33, 0.7, 1])
        for (const strands of [1, 3]) {
          const a = strandModel(one, { moment, strands });
          const b = strandModel(other, { moment, strands });
          expect(b.knot).toBe(other);
          for (const { id, path } of a.strands) {
            const twin = b.strands.find((strand) => strand.id === mirrorId(id, strands));
            expect(twin?.path.map(([x, y, z]) => [-x + 0, y, z])).toEqual(path.map(([x, y, z]) => [x + 0, y, z]));
          }
        }
    });

  it('a left-handed figure names the knot that it shows', () => {
    for (const [one, other] of pairs) {
      expect(strandModel(one, { handedness: 'left' })).toEqual(strandModel(other));
      expect(strandModel(other, { handedness: 'left' })).toEqual(strandModel(one));
    }
  });

  it('twice mirrored is as it was, for every figure', () => {
    for (const knot of names) {
      const model = strandModel(knot, { strands: 3 });
      expect(mirrorModel(mirrorModel(model))).toEqual(model);
      expect(mirrorKnot(mirrorKnot(knot))).toBe(knot);
    }
  });

  it('count the strings of a bundle from the left, as before', () => {
    const model = strandModel('backward', { strands: 4 });
    const across = model.strands.filter(({ role }) => role === 'base').map(({ id, path }) => [id, path[0]?.[0]]);
    expect(across).toEqual([['base-1', -0.75], ['base-2', -0.25], ['base-3', 0.25], ['base-4', 0.75]]);
  });
});
