import { describe, expect, it } from 'vitest';
import {
  type Crossing,
  type KnotName,
  orderDown,
  passes,
  type StrandModel,
  strandModel,
} from '../../../src/figures/strand/index.ts';

/** Milliseconds that a machine with much else to do may take for one test. */
const busy = 30_000;

/** What one cord meets, in order along it: `+bar` over the bar, `-bar` under it. */
const meets = ({ crossings }: StrandModel, strand: string): string =>
  crossings
    .filter((crossing) => crossing.strand === strand)
    .map(
      ({ meets: other, over }) =>
        `${over ? '+' : '-'}${other === strand ? 'own' : other.replace(/^base-?\d*$/, 'base')}`,
    )
    .join(' ');

const among = (model: StrandModel, strand: string, ids: readonly string[]): Crossing[] =>
  model.crossings.filter((crossing) => crossing.strand === strand && ids.includes(crossing.meets));

/** The passes round the base alone, without the cord's meetings with itself. */
const round = (model: StrandModel, strand: string): string =>
  passes(model, strand)
    .split(' ')
    .filter((word) => /^[ou]/.test(word))
    .join(' ');

describe("a lark's head", { timeout: busy }, () => {
  it('is under the loop, over the bar, under the bar, over both ends, under the bar, over the bar, under the loop', () => {
    for (const moment of ['brought-through', 'drawn-up'] as const)
      expect(meets(strandModel('larks-head', { moment }), 'fold')).toBe('-own +bar -bar +own +own -bar +bar -own');
  });

  it('has its loop behind the bar before the ends go over it', () => {
    expect(meets(strandModel('larks-head', { moment: 'passed-behind' }), 'fold')).toBe('-bar -bar');
  });

  it('hangs two ends of one fold, one left and one right, of equal length', () => {
    const fold = strandModel('larks-head').strands.find(({ id }) => id === 'fold')?.path ?? [];
    const [first, last] = [fold[0], fold.at(-1)];
    expect(first?.[0]).toBeLessThan(0);
    expect(last?.[0]).toBeCloseTo(-(first?.[0] ?? 0));
    expect(last?.[1]).toBeCloseTo(first?.[1] ?? 0);
    expect(first?.[1]).toBeGreaterThan(9);
  });
});

describe('a lone string', { timeout: busy }, () => {
  it('makes two turns round the bar, each over its own earlier stroke', () => {
    for (const moment of ['brought-through-again', 'drawn-up'] as const)
      expect(passes(strandModel('lone-string', { moment }), 'lone', ['bar'])).toBe('o1 u1 s o2 u2 s');
  });

  it('has its tail behind the hanging end when both leave the picture', () => {
    const lone = strandModel('lone-string').strands.find(({ id }) => id === 'lone')?.path ?? [];
    expect(lone.at(-1)?.[2]).toBeLessThan((lone[0]?.[2] ?? 0) - 0.8);
    expect(lone.at(-1)?.[1]).toBeGreaterThan(7);
    expect(lone[0]?.[1]).toBeGreaterThan(7);
  });
});

describe('a square knot', { timeout: busy }, () => {
  const sizes = [1, 2, 4, 8];
  const tied: ['brought-through-again' | 'drawn-up', string][] = [
    ['brought-through-again', 'loose'],
    ['drawn-up', 'drawn up'],
  ];

  for (const [moment, state] of tied) {
    it(`has one cord over the core in both halves and the other under it, ${state}`, () => {
      for (const strands of sizes) {
        const model = strandModel('square-knot', { strands, moment });
        expect(round(model, 'left-cord')).toBe('o1 o2');
        expect(round(model, 'right-cord')).toBe('u1 u2');
      }
    });

    it(`changes cords from half to half where it spirals, ${state}`, () => {
      for (const strands of sizes) {
        const model = strandModel('square-spiral', { strands, moment });
        expect(round(model, 'left-cord')).toBe('o1 u1');
        expect(round(model, 'right-cord')).toBe('u1 o1');
      }
    });
  }

  it('starts with the left cord over the core and under the right, the right under the core and over the left', () => {
    for (const strands of sizes)
      for (const moment of ['brought-through', 'drawn-up'] as const) {
        const model = strandModel('square-first-half', { strands, moment });
        expect(round(model, 'left-cord')).toBe('o1');
        expect(round(model, 'right-cord')).toBe('u1');
        const left = among(model, 'left-cord', ['right-cord']);
        expect(left.at(0)?.over).toBe(false);
        expect(left.at(-1)?.over).toBe(false);
        const core = among(
          model,
          'left-cord',
          model.strands.filter(({ role }) => role === 'base').map(({ id }) => id),
        );
        expect(left.at(-1)?.at).toBeGreaterThan(core.at(-1)?.at ?? Infinity);
        expect(left.at(0)?.at).toBeLessThan(core[0]?.at ?? 0);
      }
  });

  it('is crossed, while loose, exactly so', () => {
    const half = strandModel('square-first-half', { moment: 'brought-through' });
    expect(meets(half, 'left-cord')).toBe('-right-cord +base +right-cord -right-cord');
    expect(meets(half, 'right-cord')).toBe('+left-cord -left-cord -base +left-cord');
    const whole = strandModel('square-knot', { moment: 'brought-through-again' });
    expect(meets(whole, 'left-cord')).toBe(
      '-right-cord +base +right-cord -right-cord -right-cord +base +right-cord -right-cord',
    );
    const spiral = strandModel('square-spiral', { moment: 'brought-through-again' });
    expect(meets(spiral, 'left-cord')).toBe(
      '-right-cord +base +right-cord -right-cord +right-cord -right-cord -base +right-cord',
    );
  });

  /** The strokes over and under the core, half by half: which way each goes, and whether over. */
  const strokes = (knot: KnotName): string[] => {
    const model = strandModel(knot, { strands: 1 });
    const all = ['left-cord', 'right-cord'].flatMap((id) =>
      among(model, id, ['base']).map(({ at, y, over }) => {
        const path = model.strands.find((strand) => strand.id === id)?.path ?? [];
        let walked = 0;
        let i = 1;
        for (; i < path.length - 1 && walked < at; i++)
          walked += Math.hypot(...[0, 1, 2].map((k) => (path[i]?.[k] ?? 0) - (path[i - 1]?.[k] ?? 0)));
        return {
          y,
          word: `${over ? 'over' : 'under'} to the ${(path[i]?.[0] ?? 0) > (path[i - 1]?.[0] ?? 0) ? 'right' : 'left'}`,
        };
      }),
    );
    const sorted = all.sort((a, b) => a.y - b.y).map(({ word }) => word);
    return [sorted.slice(0, 2).sort().join(', '), sorted.slice(2).sort().join(', ')];
  };

  it('has halves that are mirror images of each other', () => {
    expect(strokes('square-knot')).toEqual([
      'over to the right, under to the left',
      'over to the left, under to the right',
    ]);
  });

  it('spirals when its halves are not mirror images', () => {
    expect(strokes('square-spiral')).toEqual([
      'over to the right, under to the left',
      'over to the right, under to the left',
    ]);
  });
});

describe('a gathering knot', { timeout: busy }, () => {
  it('is an ordinary knot tied round the bundle with a single string', () => {
    for (const knot of ['gathering-left', 'gathering-right'] as const)
      for (const strands of [1, 2, 4, 6, 8]) {
        const model = strandModel(knot, { strands });
        expect(passes(model, 'single')).toBe('o1 u1 s o2 u2 s o3');
        expect(orderDown(model, 'single')).toBe('u1 o1 u2 o2 o3');
      }
  });

  it('takes the string in: it comes from beside the bundle and leaves downwards against its far side', () => {
    const single = strandModel('gathering-left', { strands: 4 }).strands.find(({ id }) => id === 'single')?.path ?? [];
    expect(single[0]?.[0]).toBeGreaterThan(4);
    expect(single.at(-1)?.[0]).toBeLessThan(-1);
    expect(single.at(-1)?.[0]).toBeGreaterThan(-3);
    expect(single.at(-1)?.[1]).toBeGreaterThan(9);
  });
});

describe('the moves without a knot', { timeout: busy }, () => {
  it('carry the leading string behind both edge strings, from one side to the other', () => {
    const model = strandModel('carry-behind');
    expect(passes(model, 'leading')).toBe('u1');
    const lead = model.strands.find(({ id }) => id === 'leading')?.path ?? [];
    expect([lead[0]?.[0], lead.at(-1)?.[0]].map((x) => (x ?? 0) < 0)).toEqual([true, false]);
  });

  it('let the innermost string out behind the leading string', () => {
    for (const strands of [2, 3, 8]) {
      expect(meets(strandModel('let-out', { strands }), 'freed')).toBe('-leading');
      expect(meets(strandModel('let-out', { strands, moment: 0 }), 'freed')).toBe('');
    }
  });

  it('take the next string in behind the leading string, next to the bundle', () => {
    for (const strands of [2, 3, 8]) {
      const model = strandModel('take-in', { strands });
      expect(meets(model, 'joining')).toBe('-leading');
      expect(model.strands.filter(({ role }) => role === 'base')).toHaveLength(strands - 1);
    }
  });
});

describe('the end of a row', { timeout: busy }, () => {
  it('has an ordinary knot beside the edge, then the turning knot round the whole bundle', () => {
    for (const strands of [2, 3, 5, 8]) {
      const model = strandModel('row-end-right', { strands });
      const edge = model.strands.filter(({ id }) => /^base-/.test(id)).map(({ id }) => id);
      expect(passes(model, 'leading', edge)).toBe('o1 u1 s u2 o2 ŝ');
      expect(orderDown(model, 'leading', edge)).toBe('u1 o1 o2 u2');
      expect(passes(model, 'leading', ['neighbour'])).toMatch(/^o1 u1 s o2 u2 s o3 /);
      expect(orderDown(model, 'leading', ['neighbour'])).toBe('u1 o1 u2 o2 o3 o4');
    }
  });

  it('turns back in front of the neighbour, to the inner side', () => {
    for (const strands of [1, 4]) {
      const model = strandModel('row-end-right', { strands });
      const lead = model.strands.find(({ id }) => id === 'leading')?.path ?? [];
      expect(lead.at(-1)?.[0]).toBeLessThan(-8);
      expect(
        among(model, 'leading', ['neighbour'])
          .map(({ over }) => (over ? 'o' : 'u'))
          .join(''),
      ).toBe('ououoo');
    }
  });
});

describe('strings along the back', { timeout: busy }, () => {
  it('pass behind every base they do not tie', () => {
    expect(meets(strandModel('float'), 'resting')).toBe('-base -base -base -base -base');
  });

  it('are caught between the base and the stroke behind it', () => {
    for (const moment of ['brought-through-again', 'drawn-up'] as const) {
      const model = strandModel('caught-float', { moment });
      expect(passes(model, 'leading')).toBe('o1 u1 s o2 u2 s o3');
      const resting = meets(model, 'resting');
      expect(resting).toContain('-base');
      expect(resting).toContain('+leading');
    }
  });

  it('are both held by the knot that joins a new leading string', () => {
    for (const moment of ['brought-through-again', 'drawn-up'] as const) {
      const model = strandModel('join', { moment });
      expect(meets(model, 'old')).toContain('-base');
      expect(meets(model, 'old')).toContain('+new');
      expect(round(model, 'new')).toBe('u1 o1 u2 o2 u3 o3');
      expect(meets(model, 'new')).toContain('-old');
    }
  });
});
