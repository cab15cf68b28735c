import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { knotLength } from '../../../src/solver/thread/knot-length.ts';
import { pitchesOf } from '../../../src/solver/thread/pitch.ts';
import { readThread, type Thread } from '../../../src/solver/thread/thread.ts';
import { tries } from '../../seed.ts';

function perKnot(strands: number, thread: Thread) {
  const read = readThread(thread);
  if (!read.ok) throw new Error(read.problem.code);
  return knotLength(strands, read.thread, pitchesOf(read.thread));
}

const floss = { diameter: 1, kind: 'soft' } as const;

describe('leading string in a knot', () => {
  it('a knot of 1 mm floss on a single base takes 12.4 to 15.0 mm, most likely 13.5', () => {
    // D = 0.8: 2 · √((π · 1.8)² + 1) + 2.0 = 2 · √32.9775 + 2 = 2 · 5.74260 + 2 = 13.4852
    // D = 0.65: 2 · √((π · 1.65)² + 1) + 1.8 = 12.3584. D = 1: 2 · √((π · 2)² + 1) + 2.3 = 15.0245
    const length = perKnot(1, floss);
    expect(length.low).toBeCloseTo(12.3584, 4);
    expect(length.likely).toBeCloseTo(13.4852, 4);
    expect(length.high).toBeCloseTo(15.0245, 4);
    expect(length.source).toBe('estimate');
  });

  it('a knot round a bundle of two goes round both', () => {
    // D = 1.6: 2 · √((π · 2.6)² + 1) + 2.0 = 2 · √67.7186 + 2 = 2 · 8.22913 + 2 = 18.4583
    expect(perKnot(2, floss).likely).toBeCloseTo(18.4583, 4);
  });

  it('a measured knot replaces the one on a single base, and a bundle grows as the estimate does', () => {
    // 15 mm measured; bundle of two: 15 · 18.45825 / 13.48521 = 20.5317
    const swatch = { ...floss, measured: { perKnot: 15 } };
    expect(perKnot(1, swatch)).toEqual({ low: 15, likely: 15, high: 15, source: 'measured' });
    const bundle = perKnot(2, swatch);
    expect(bundle.likely).toBeCloseTo(20.5317, 4);
    expect(bundle.source).toBe('measured');
    // Low 15 · 16.38907 / 12.35841 = 19.8922; high 15 · 21.25536 / 15.02453 = 21.2207
    expect(bundle.low).toBeCloseTo(19.8922, 3);
    expect(bundle.high).toBeCloseTo(21.2207, 3);
  });

  it('a measured column pitch counts in a knot that was not measured itself', () => {
    const wider = perKnot(1, { ...floss, measured: { columnPitch: 2.5 } });
    // 11.4852 + 2.5
    expect(wider.likely).toBeCloseTo(13.9852, 4);
    expect(wider.source).toBe('estimate');
  });

  it('more strands and thicker cord never take less, and low ≤ likely ≤ high', () => {
    const measured = fc.option(fc.record({ perKnot: fc.double({ min: 0.5, max: 500, noNaN: true }) }), {
      nil: undefined,
    });
    fc.assert(
      fc.property(
        fc.double({ min: 0.2, max: 9, noNaN: true }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.constantFrom('soft' as const, 'firm' as const),
        fc.integer({ min: 1, max: 41 }),
        measured,
        (diameter, thicker, kind, strands, swatch) => {
          const here = perKnot(strands, { diameter, kind, measured: swatch });
          const more = perKnot(strands + 1, { diameter, kind, measured: swatch });
          expect(here.low).toBeLessThanOrEqual(here.likely);
          expect(here.likely).toBeLessThanOrEqual(here.high);
          for (const bound of ['low', 'likely', 'high'] as const) {
            expect(more[bound]).toBeGreaterThanOrEqual(here[bound]);
            if (!swatch)
              expect(perKnot(strands, { diameter: diameter + thicker, kind })[bound]).toBeGreaterThanOrEqual(
                here[bound],
              );
          }
        },
      ),
      tries(),
    );
  });
});
