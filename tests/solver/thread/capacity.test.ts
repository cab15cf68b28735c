import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bundleLimit, capacityRange, pitches } from '../../../src/solver/thread/index.ts';
import { tries } from '../../seed.ts';
import '../matchers.ts';

const floss = { low: 1.8, likely: 2, high: 2.3 };

describe('capacity of a bar', () => {
  it('a bar of 20 mm takes 8 to 11 columns of 1 mm floss, most likely 10', () => {
    // 20 ÷ 2.3 = 8.7; 20 ÷ 2.0 = 10; 20 ÷ 1.8 = 11.1
    expect(capacityRange({ barWidth: 20, columnPitch: floss })).toMatchObject({ low: 8, likely: 10, high: 11 });
  });

  it('a bar that holds a whole number of columns exactly holds them, however the machine rounds', () => {
    for (let columns = 2; columns <= 400; columns += 1)
      for (const pitch of [0.7, 1.1, 1.3, 2.1]) {
        const bar = columns * pitch;
        if (bar > 1000) continue;
        expect(capacityRange({ barWidth: bar, columnPitch: { low: pitch, likely: pitch, high: pitch } })).toMatchObject(
          {
            low: columns,
            likely: columns,
            high: columns,
          },
        );
      }
  });

  it('the widest pitch gives the low end, and a wider bar never takes less', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 900, noNaN: true }),
        fc.double({ min: 0, max: 100, noNaN: true }),
        fc.double({ min: 0.2, max: 10, noNaN: true }),
        fc.constantFrom('soft' as const, 'firm' as const),
        (barWidth, more, diameter, kind) => {
          const pitch = pitches({ diameter, kind });
          if (!pitch.ok) throw new Error('a good thread was refused');
          const narrow = capacityRange({ barWidth, columnPitch: pitch.column });
          const wide = capacityRange({ barWidth: barWidth + more, columnPitch: pitch.column });
          if (!narrow.ok || !wide.ok) throw new Error('a good bar was refused');
          expect(narrow.low).toBeLessThanOrEqual(narrow.likely);
          expect(narrow.likely).toBeLessThanOrEqual(narrow.high);
          for (const bound of ['low', 'likely', 'high'] as const)
            expect(wide[bound]).toBeGreaterThanOrEqual(narrow[bound]);
        },
      ),
      tries(),
    );
  });

  it('a bar or a pitch that is no measure is refused, and so are pitches that run backwards', () => {
    for (const barWidth of [0, -3, 1001, Number.NaN, Number.POSITIVE_INFINITY, '20', null, undefined])
      expect(capacityRange({ barWidth: barWidth as number, columnPitch: floss })).toBeRefusedAs(
        'not-a-number',
        'out-of-range',
      );
    for (const pitch of [
      { ...floss, low: 0 },
      { ...floss, likely: 1.7 },
      { ...floss, high: 1.9 },
      { ...floss, high: Number.NaN },
      undefined,
    ])
      expect(capacityRange({ barWidth: 20, columnPitch: pitch as typeof floss })).toBeRefusedAs(
        'not-a-number',
        'out-of-range',
      );
  });
});

describe('the most strands of a bundle', () => {
  it('a gap of 3 mm passes 6 strands of 1 mm cord', () => {
    // 0.7 · 3² = 6.3
    expect(bundleLimit({ gap: 3, diameter: 1 })).toMatchObject({ ok: true, limit: 6 });
  });

  it('however wide the gap, 8 strands are the most', () => {
    // 0.7 · 4² = 11.2
    expect(bundleLimit({ gap: 4, diameter: 1 })).toMatchObject({ ok: true, limit: 8 });
  });

  it('a gap narrower than the cord passes none', () => {
    // 0.7 · 0.9² = 0.6
    expect(bundleLimit({ gap: 0.9, diameter: 1 })).toMatchObject({ ok: true, limit: 0 });
  });

  it('a thicker cord never lets more strands through', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.1, max: 200, noNaN: true }),
        fc.double({ min: 0.2, max: 9, noNaN: true }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (gap, diameter, more) => {
          const [thin, thick] = [bundleLimit({ gap, diameter }), bundleLimit({ gap, diameter: diameter + more })];
          if (!thin.ok || !thick.ok) throw new Error('a good gap was refused');
          expect(thick.limit).toBeLessThanOrEqual(thin.limit);
        },
      ),
      tries(),
    );
  });

  it('a gap or a diameter that is no measure is refused', () => {
    expect(bundleLimit({ gap: 0, diameter: 1 })).toBeRefusedAs('out-of-range');
    expect(bundleLimit({ gap: 3, diameter: Number.NaN })).toBeRefusedAs('not-a-number');
    expect(bundleLimit({ gap: 3, diameter: 0.1 })).toBeRefusedAs('out-of-range');
  });
});
