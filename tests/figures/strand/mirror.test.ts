import { describe, expect, it } from 'vitest';
import {
  type KnotName,
  knots,
  mirrorId,
  mirrorKnot,
  mirrorModel,
  type StrandModel,
  strandModel,
} from '../../../src/figures/strand/index.ts';
import { bundleSizes, fitPiece, planRows, walkLead } from '../../../src/solver/index.ts';

/** Milliseconds that a machine with much else to do may take for one test. */
const busy = 30_000;

const names = Object.keys(knots) as KnotName[];
const pairs: [KnotName, KnotName][] = [
  ['forward', 'backward'],
  ['forward-backward', 'backward-forward'],
  ['forward-half-hitch', 'backward-half-hitch'],
  ['row-end-right', 'row-end-left'],
  ['gathering-right', 'gathering-left'],
  ['let-out', 'let-out-right'],
  ['take-in', 'take-in-right'],
  ['carry-behind', 'carry-behind-right'],
];

/** The side a cord comes from and the side it leaves to. */
function sides(model: StrandModel, id = 'leading'): [string, string] {
  const path = model.strands.find((strand) => strand.id === id)?.path ?? [];
  return [path[0], path.at(-1)].map((p) => ((p?.[0] ?? 0) < 0 ? 'left' : 'right')) as [string, string];
}

describe('where the leading string starts and ends', { timeout: busy }, () => {
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

describe('a whole piece', { timeout: busy }, () => {
  it('is walked by the leading string as its knots are drawn: every run ends on the side where its figure ends', () => {
    const met = new Set<string>();
    for (const [width, capacity] of [
      [12, 8],
      [26, 16],
      [21, 15],
    ] as const)
      for (const startSide of ['left', 'right'] as const) {
        const fitted = fitPiece({ width, capacity, startSide });
        if (!fitted.ok) throw new Error('no fit');
        const bundles = bundleSizes({ fit: fitted.fit, height: 18 });
        const rows = planRows({ fit: fitted.fit, bundles, startSide });
        if (!Array.isArray(rows)) throw new Error('no plan');
        const walk = walkLead(rows);
        if (!walk.ok) throw new Error('the leading string would have to jump');
        for (const { row, run, at, ends } of walk.path) {
          const { knot, strands } = rows[row - 1]?.runs[run] ?? { knot: 'forward' as const, strands: 1 };
          const [from, to] = sides(strandModel(knot, { strands, moment: 'brought-through-again' }));
          expect(Math.sign(ends - at)).toBe(from === to ? 0 : to === 'right' ? 1 : -1);
          met.add(`${knot} ${strands}`);
        }
      }
    expect(met.size).toBeGreaterThan(8);
  });
});

describe('mirror images', { timeout: busy }, () => {
  for (const [one, other] of pairs)
    it(`a ${other} knot is a ${one} knot in the mirror, string by string`, () => {
      for (const moment of [0, 0.33, 0.7, 1])
        for (const strands of [1, 3]) {
          const a = strandModel(one, { moment, strands });
          const b = strandModel(other, { moment, strands });
          expect(b.knot).toBe(other);
          const bases = a.strands.filter(({ id }) => /^base-\d+$/.test(id)).length;
          for (const { id, path } of a.strands) {
            const twin = b.strands.find((strand) => strand.id === mirrorId(id, bases));
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
      const model = strandModel(knot, { strands: 3, moment: 'brought-through' });
      expect(mirrorModel(mirrorModel(model))).toEqual(model);
      expect(mirrorKnot(mirrorKnot(knot))).toBe(knot);
    }
  });

  it('have the same strings by name, each on the other side', () => {
    for (const knot of names) {
      const right = strandModel(knot, { strands: 3, moment: 0 });
      const left = strandModel(knot, { strands: 3, moment: 0, handedness: 'left' });
      expect(left.strands.map(({ id }) => id)).toEqual(right.strands.map(({ id }) => id));
      const across = (model: StrandModel) =>
        model.strands.filter(({ id }) => /^base-\d/.test(id)).map(({ path }) => path[0]?.[0] ?? 0);
      expect(across(left)).toEqual([...across(left)].sort((a, b) => a - b));
    }
  });

  it('count the strings of a bundle from the left, as before', () => {
    const model = strandModel('backward', { strands: 4 });
    const across = model.strands.filter(({ role }) => role === 'base').map(({ id, path }) => [id, path[0]?.[0]]);
    expect(across).toEqual([
      ['base-1', -0.75],
      ['base-2', -0.25],
      ['base-3', 0.25],
      ['base-4', 0.75],
    ]);
  });
});
