import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bundleSizes, fitPiece, planRows } from '../../../src/solver/index.ts';
import { calibrate, cutList } from '../../../src/solver/thread/index.ts';
import { tries } from '../../seed.ts';
import '../matchers.ts';

describe('a measured swatch', () => {
  it('ten columns in 21 mm, eight rows in 17.6 mm and 80 knots from 1.2 m in 24 minutes', () => {
    const swatch = { columns: 10, width: 21, rows: 8, height: 17.6, knots: 80, used: 1200, seconds: 1440 };
    expect(calibrate(swatch)).toEqual({
      ok: true,
      columnPitch: expect.closeTo(2.1, 12),
      rowPitch: expect.closeTo(2.2, 12),
      perKnot: 15,
      secondsPerKnot: 18,
    });
  });

  it('a figure with a part missing is missing', () => {
    expect(calibrate({})).toEqual({ ok: true });
    expect(calibrate({ columns: 10, width: 20 })).toEqual({ ok: true, columnPitch: 2 });
    expect(calibrate({ columns: 10, height: 20 })).toEqual({ ok: true });
    expect(calibrate({ rows: 10, height: 20, columns: null })).toEqual({ ok: true, rowPitch: 2 });
    expect(calibrate({ knots: 10, seconds: 200 })).toEqual({ ok: true, secondsPerKnot: 20 });
    expect(calibrate({ knots: 10, used: 150 })).toEqual({ ok: true, perKnot: 15 });
    expect(calibrate({ used: 150, seconds: 200 })).toEqual({ ok: true });
  });

  it('a bad part is refused even where its partner is missing', () => {
    expect(calibrate({ columns: 0 })).toBeRefusedAs('out-of-range');
    expect(calibrate({ columns: 2.5, width: 5 })).toBeRefusedAs('not-a-whole-number');
    expect(calibrate({ rows: 4, height: Number.NaN })).toBeRefusedAs('not-a-number');
    expect(calibrate({ knots: -1, used: 100 })).toBeRefusedAs('out-of-range');
    expect(calibrate({ knots: 10, seconds: Number.POSITIVE_INFINITY })).toBeRefusedAs('not-a-number');
    expect(calibrate({ knots: 10, used: '150' as unknown as number })).toBeRefusedAs('not-a-number');
  });

  it('a figure that no cord gives is refused by its name', () => {
    const answer = calibrate({ columns: 2, width: 1000 });
    expect(answer).toMatchObject({ ok: false, problem: { code: 'out-of-range', field: 'columnPitch', entered: 500 } });
  });

  it('whatever it gives, the cut list takes', () => {
    const fitted = fitPiece({ width: 12, capacity: 8 });
    if (!fitted.ok) throw new Error(fitted.problem.code);
    const { fit } = fitted;
    const bundles = bundleSizes({ fit, height: 14 });
    const rows = planRows({ fit, bundles });
    if (!Array.isArray(rows)) throw new Error('no rows');
    const part = (max: number) => fc.option(fc.integer({ min: 1, max }), { nil: undefined });
    const swatches = fc.record({
      columns: part(400),
      width: part(5000),
      rows: part(1000),
      height: part(5000),
      knots: part(100_000),
      used: part(1_000_000),
      seconds: part(1_000_000),
    });
    fc.assert(
      fc.property(swatches, (swatch) => {
        const measured = calibrate(swatch);
        if (!measured.ok) return;
        expect(cutList({ fit, bundles, rows, thread: { diameter: 1, kind: 'soft', measured } }).ok).toBe(true);
      }),
      tries(),
    );
  });
});
