import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  countRange,
  duration,
  durationRange,
  length,
  lengthRange,
  lengthRanges,
  lengths,
  sourceWord,
  span,
  type UnitSystem,
} from '../../src/words/units.ts';
import { tries } from '../seed.ts';

const plain = (text: string): string => text.replaceAll('\u00a0', ' ');

/** A length as it is said, back in mm: an independent reading of the text. */
function inMm(text: string): number {
  const [, whole = '', eighths = '', glyph = '', unit = ''] =
    /^(?:about )?([\d.,]*)(?: ?(\d)\/8)?([¼½¾]?) (mm|cm|m|in|yd)/.exec(plain(text)) ?? [];
  const parts = { '¼': 0.25, '½': 0.5, '¾': 0.75 }[glyph] ?? Number(eighths || 0) / 8;
  const per = { mm: 1, cm: 10, m: 1000, in: 25.4, yd: 914.4 }[unit] ?? Number.NaN;
  return (Number(whole.replaceAll(',', '') || 0) + parts) * per;
}

describe('lengths', () => {
  test.each([
    [1.2, '1.2 mm'],
    [24, '24 mm'],
    [29.5, '29.5 mm'],
    [30, '3 cm'],
    [45, '4.5 cm'],
    [620, '62 cm'],
    [625, '62.5 cm'],
    [2000, '200 cm'],
    [2995, '299.5 cm'],
    [3040, '3 m'],
    [12_400, '12.4 m'],
    [123_456, '123 m'],
    [0, '0 mm'],
  ])('%s mm are %s', (mm, text) => expect(plain(length(mm, 'metric'))).toBe(text));

  test.each([
    [1.2, '0.05 in'],
    [10, '3/8 in'],
    [25.4, '1 in'],
    [35, '1 3/8 in'],
    [38.1, '1½ in'],
    [620, '24½ in'],
    [1000, '39½ in'],
    [2000, '78½ in'],
    [12_400, '13.6 yd'],
    [0, '0 in'],
  ])('%s mm are %s on an inch rule', (mm, text) => expect(plain(length(mm, 'inches'))).toBe(text));

  test.each(['metric', 'inches'] as const)(
    'what is said in %s is within half a step of the truth, and a string to cut is never said shorter',
    (units: UnitSystem) =>
      fc.assert(
        fc.property(fc.double({ min: 0.2, max: 400_000, noNaN: true }), (mm) => {
          const step = mm < 6.3 ? 0.26 : mm < 76 ? 3.2 : mm < 914 ? 6.4 : mm < 3000 ? 13 : mm < 91_000 ? 100 : 1000;
          expect(Math.abs(inMm(length(mm, units)) - mm)).toBeLessThanOrEqual(step / 2 + 1e-6 + mm * 1e-9);
          expect(inMm(length(mm, units, true))).toBeGreaterThanOrEqual(mm - 1e-3);
        }),
        tries(500),
      ),
  );

  test('a length cut to the next 5 mm is said as it is', () => {
    for (let mm = 100; mm < 3000; mm += 5) expect(inMm(length(mm, 'metric'))).toBeCloseTo(mm, 6);
  });

  test('both units come together for the switch', () => {
    expect(lengths(620)).toEqual({ metric: '62\u00a0cm', inches: '24½\u00a0in' });
  });
});

describe('ranges', () => {
  const estimate = { low: 560, likely: 620, high: 680, source: 'estimate' } as const;

  test('an estimate is said with about and its range, in one unit', () => {
    expect(plain(lengthRange(estimate, 'metric'))).toBe('about 62 cm (56–68)');
    expect(plain(lengthRange({ low: 2800, likely: 3100, high: 3400, source: 'estimate' }, 'metric'))).toBe(
      'about 3.1 m (2.8–3.4)',
    );
    expect(plain(lengthRanges(estimate).inches)).toBe('about 24½ in (22–26¾)');
  });

  test('a measured figure is said alone, and keeps a range only where it has one', () => {
    expect(plain(lengthRange({ low: 620, likely: 620, high: 620, source: 'measured' }, 'metric'))).toBe('62 cm');
    expect(plain(lengthRange({ ...estimate, source: 'measured' }, 'metric'))).toBe('62 cm (56–68)');
    expect(sourceWord('measured')).toBe('measured');
  });

  test('counts have ranges too', () => {
    expect(countRange({ low: 2, likely: 3, high: 4, source: 'estimate' }, 'card')).toBe('about 3 cards (2–4)');
    expect(countRange({ low: 1, likely: 1, high: 1, source: 'estimate' }, 'card')).toBe('1 card');
    expect([span(14, 17), span(16, 16)]).toEqual(['14 to 17', '16']);
  });
});

describe('time', () => {
  test.each([
    [0, '0 seconds'],
    [1, '1 second'],
    [45, '45 seconds'],
    [90, '2 minutes'],
    [55 * 60, '55 minutes'],
    [59.6 * 60, '1 hour'],
    [80 * 60, '1 hour 20 minutes'],
    [119 * 60, '2 hours'],
    [36_500, '10 hours'],
  ])('%s seconds are %s', (seconds, text) => expect(duration(seconds)).toBe(text));

  test('a time has a range like a length', () => {
    expect(durationRange({ low: 2400, likely: 3300, high: 4800, source: 'estimate' })).toBe(
      'about 55 minutes (40 minutes to 1 hour 20 minutes)',
    );
    expect(durationRange({ low: 60, likely: 60, high: 60, source: 'measured' })).toBe('60 seconds');
  });
});
