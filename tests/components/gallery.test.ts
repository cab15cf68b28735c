import { describe, expect, it, vi } from 'vitest';
import { type KnotName, knots } from '../../src/figures/strand/index.ts';

// The gallery draws the lantern, whose chart is read by the build; a plan of its own stands in for it here.
vi.mock('../../src/entries/examples.ts', async () => {
  const { planPiece } = await import('../../src/solver/index.ts');
  return { exampleOf: () => ({ plan: planPiece({ width: 26, height: 32, capacity: 16 }) }) };
});

const { figurePlates, galleryFiles, knotPlates } = await import('../../src/components/gallery.ts');
const { figures } = await import('../../src/figures/index.ts');
const { stopsOf } = await import('../../src/widgets/knot/knot-plate.ts');

describe('the gallery of plates', { timeout: 60_000 }, () => {
  it('has every knot at every stopping point', () => {
    const shown = knotPlates();
    expect(shown.map(({ knot }) => knot).sort()).toEqual(Object.keys(knots).sort());
    for (const { knot, stages } of shown)
      expect(stages.map(({ stage }) => stage.stop)).toEqual(stopsOf(knot as KnotName));
  });

  it('has every figure of a plan', () => {
    const files = figurePlates().map(({ file }) => file);
    for (const name of Object.keys(figures))
      expect(
        files.some((file) => new RegExp(`^[a-z]+(?:-[a-z]+)?-${name}(?:-|$)`).test(file)),
        name,
      ).toBe(true);
  });

  it('gives every file a name of its own, a title and its content in words', () => {
    const files = galleryFiles();
    expect(new Set(files.map(({ file }) => file)).size).toBe(files.length);
    // Drawings of the same piece are told apart by what they show of it; in other units they are the same drawing.
    const titled = files
      .filter(({ file, units }) => /^lantern-(bar|outline|piece)/.test(file) && units !== 'inches')
      .map(({ title }) => title);
    expect(titled.filter((title, at) => titled.indexOf(title) !== at)).toEqual([]);
    for (const { file, title, told } of files) {
      expect(file).toMatch(/^[a-z0-9-]+$/);
      expect(title, file).toMatch(/^[A-Z0-9]/);
      expect(told, file).not.toMatch(/\?|undefined|NaN/);
    }
  });

  it('says the shape of every drawing in figures that anybody can read', () => {
    for (const { file, svg } of galleryFiles()) {
      const [, box = ''] = /viewBox="([^"]*)"/.exec(svg()) ?? [];
      expect(box, file).toMatch(/^-?[\d.]+ -?[\d.]+ [\d.]+ [\d.]+$/);
    }
  });
});
