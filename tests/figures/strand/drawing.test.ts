import { describe, expect, it } from 'vitest';
import { overStretches } from '../../../src/figures/strand/depth.ts';
import {
  drawModel,
  type KnotName,
  knots,
  type Path,
  type StrandModel,
  strandModel,
  tell,
} from '../../../src/figures/strand/index.ts';

/** Milliseconds that a machine with much else to do may take for one test. */
const busy = 30_000;

const names = Object.keys(knots) as KnotName[];

/** The cords of a model in steps so short that a crossing is never missed between two of them. */
const inSteps = (model: StrandModel): { path: Path; radius: number }[] =>
  model.strands.map(({ path, radius }) => ({
    radius,
    path: path.flatMap((p, i): Path => {
      const q = path[i + 1];
      if (!q) return [p];
      const parts = Math.ceil(Math.hypot(q[0] - p[0], q[1] - p[1], q[2] - p[2]) / 0.5);
      return Array.from(
        { length: parts },
        (_, k) =>
          [0, 1, 2].map((a) => (p[a] ?? 0) + (((q[a] ?? 0) - (p[a] ?? 0)) * k) / parts) as unknown as Path[number],
      );
    }),
  }));

describe('what is drawn over what', { timeout: busy }, () => {
  it('is what the crossings say, in every figure: the cord on top is the last one drawn at that place', () => {
    for (const knot of names.filter((name) => !('mirrorOf' in knots[name])))
      for (const moment of knot === 'forward' || knot === 'larks-head' ? [0.4, 0.9, 1] : [1]) {
        const model = strandModel(knot, { strands: 2, moment });
        const fine = inSteps(model);
        const order = overStretches(fine);
        for (const { strand, meets, over, x, y, pass } of model.crossings) {
          if (!over || pass) continue;
          const drawnAt = (id: string): number => {
            const s = model.strands.findIndex((one) => one.id === id);
            return order.findLastIndex(({ strand: which, from, to }) => {
              if (which !== s) return false;
              const path = fine[s]?.path ?? [];
              for (let i = from; i <= to; i++) {
                const [a, b] = [path[i], path[i + 1]];
                if (!a || !b) continue;
                const [ux, uy] = [b[0] - a[0], b[1] - a[1]];
                const t = Math.min(1, Math.max(0, ((x - a[0]) * ux + (y - a[1]) * uy) / (ux * ux + uy * uy || 1)));
                if (Math.hypot(a[0] + ux * t - x, a[1] + uy * t - y) < 1e-6) return true;
              }
              return false;
            });
          };
          expect(drawnAt(strand)).toBeGreaterThan(drawnAt(meets));
        }
      }
  });

  it('needs nothing drawn again where no cords meet', () => {
    expect(overStretches(inSteps(strandModel('forward', { moment: 0 })))).toEqual([]);
  });
});

describe('a drawing', { timeout: busy }, () => {
  it('is plain SVG: no raster, no filter, no style sheet, no figure that is not a number', () => {
    for (const knot of names)
      for (const handedness of ['left', 'right'] as const) {
        const svg = drawModel(strandModel(knot, { strands: 2, moment: 'brought-through', handedness }));
        expect(svg).not.toMatch(/<image|filter|<style|NaN|undefined|Infinity|transform/);
        expect(svg.startsWith('<svg xmlns="http://www.w3.org/2000/svg" viewBox="')).toBe(true);
      }
  });

  it('takes its colours from the house or from the maker', () => {
    expect(drawModel(strandModel('forward'))).toContain('var(--cord-lead,');
    expect(drawModel(strandModel('forward'))).toContain('var(--cord-gap,');
    const own = drawModel(strandModel('forward', { colours: { leading: '#123456', base: 'tan' } }));
    expect(own).toContain('stroke="#123456"');
    expect(own).toContain('stroke="tan"');
    expect(own).not.toContain('--cord-lead');
  });

  it('has a name and a description where it is given them, in text that cannot break out', () => {
    const svg = drawModel(strandModel('forward'), {
      title: 'Over & <under>',
      description: 'Left to right',
      id: 'plate',
    });
    expect(svg).toContain(
      '<title id="plate-title">Over &amp; &lt;under&gt;</title><desc id="plate-desc">Left to right</desc>',
    );
    expect(drawModel(strandModel('forward'))).toContain('aria-hidden="true"');
  });

  it('shares no id with another drawing on the page', () => {
    const ids = names.flatMap((knot) => [
      ...new Set(
        [...drawModel(strandModel(knot, { moment: 'laid-over' })).matchAll(/ id="([^"]+)"/g)].map(([, id]) => id),
      ),
    ]);
    expect(new Set(ids).size).toBe(ids.length);
  });

  it('refers only to lines it holds', () => {
    const svg = drawModel(strandModel('forward-backward', { strands: 4 }));
    const held = new Set([...svg.matchAll(/ id="([^"]+)"/g)].map(([, id]) => id));
    for (const [, id] of svg.matchAll(/href="#([^"]+)"/g)) expect(held.has(id)).toBe(true);
  });

  it('stays light: at most 60 kB, whatever the knot', () => {
    for (const knot of names) expect(drawModel(strandModel(knot, { strands: 4 })).length).toBeLessThan(60_000);
  });
});

describe('a figure told in words', { timeout: busy }, () => {
  const keys = (knot: KnotName, strands = 1) => tell(strandModel(knot, { strands })).map(({ key }) => key);

  it('follows the leading string from where it comes to where it leaves', () => {
    expect(tell(strandModel('forward-half-hitch'))).toEqual([
      { key: 'starts', values: { strand: 'leading', side: 'left' } },
      { key: 'passes-under-itself', values: { strand: 'leading' } },
      { key: 'passes-over', values: { strand: 'leading', meets: 'base' } },
      { key: 'passes-under', values: { strand: 'leading', meets: 'base' } },
      { key: 'passes-over-itself', values: { strand: 'leading' } },
      { key: 'ends', values: { strand: 'leading', side: 'left' } },
    ]);
  });

  it('counts a bundle as one', () => {
    const told = tell(strandModel('forward', { strands: 5 }));
    expect(told.filter(({ key }) => key === 'passes-over-bundle').map(({ values }) => values['count'])).toEqual([
      5, 5, 5,
    ]);
    expect(told.filter(({ key }) => key === 'passes-under-bundle').map(({ values }) => values['count'])).toEqual([
      5, 5,
    ]);
  });

  it("tells a lark's head from end to end", () => {
    expect(keys('larks-head')).toEqual([
      'starts',
      'passes-under-itself',
      'passes-over',
      'passes-under',
      'passes-over-itself',
      'passes-over-itself',
      'passes-under',
      'passes-over',
      'passes-under-itself',
      'ends',
    ]);
  });

  it('is mirrored with the figure', () => {
    const sides = (handedness: 'left' | 'right') =>
      tell(strandModel('forward', { handedness })).flatMap(({ values }) => values['side'] ?? []);
    expect(sides('right')).toEqual(['left', 'right']);
    expect(sides('left')).toEqual(['right', 'left']);
  });

  it('has something to tell of every figure', () => {
    for (const knot of names) {
      const told = tell(strandModel(knot, { strands: 2 }));
      expect(told.length).toBeGreaterThan(2);
      expect(told.some(({ key }) => key.startsWith('passes'))).toBe(true);
    }
  });
});
