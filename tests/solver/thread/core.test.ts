import { describe, expect, it } from 'vitest';
import { coreDiameter, coreSpread, halfHitchLength } from '../../../src/solver/thread/index.ts';

describe('a core of several strands', () => {
  it('two strands are twice as wide as one; three to eight are packed as closely as circles go', () => {
    expect([1, 2, 3, 4, 5, 6, 7, 8].map(coreDiameter)).toEqual([1, 2, 2.155, 2.414, 2.701, 3, 3, 3.305]);
  });

  it('three and four strands agree with the geometry of three and four touching circles', () => {
    // Three: 1 + 2/√3 = 2.1547. Four: 1 + √2 = 2.4142. Five: 1 + 1/sin 36° = 2.7013.
    expect(coreDiameter(3)).toBeCloseTo(1 + 2 / Math.sqrt(3), 3);
    expect(coreDiameter(4)).toBeCloseTo(1 + Math.SQRT2, 3);
    expect(coreDiameter(5)).toBeCloseTo(1 + 1 / Math.sin(Math.PI / 5), 3);
  });

  it('beyond eight strands it grows as the square root of their number', () => {
    // 1.15 · √9 = 3.45; 1.15 · √16 = 4.6
    expect(coreDiameter(9)).toBeCloseTo(3.45, 12);
    expect(coreDiameter(16)).toBeCloseTo(4.6, 12);
  });

  it('more strands never make a thinner core', () => {
    for (let strands = 1; strands <= 400; strands += 1)
      expect(coreDiameter(strands)).toBeGreaterThanOrEqual(coreDiameter(strands - 1));
  });

  it('no strand, or no whole number of strands, is no core', () => {
    for (const strands of [0, -1, 2.5, Number.NaN, Number.POSITIVE_INFINITY]) expect(coreDiameter(strands)).toBe(0);
  });

  it('floss flattens to between 0.65 of its round width and all of it; firm cord hardly at all', () => {
    // Four strands of 2 mm: round 2 · 2.414 = 4.828 mm.
    const soft = coreSpread(4, { diameter: 2, kind: 'soft' });
    expect(soft.low).toBeCloseTo(4.828 * 0.65, 12);
    expect(soft.likely).toBeCloseTo(4.828 * 0.8, 12);
    expect(soft.high).toBeCloseTo(4.828, 12);
    const firm = coreSpread(4, { diameter: 2, kind: 'firm' });
    expect(firm.low).toBeCloseTo(4.828 * 0.9, 12);
    expect(firm.likely).toBeCloseTo(4.828, 12);
    expect(firm.high).toBeCloseTo(4.828 * 1.1, 12);
  });

  it('a half hitch of 1 mm cord round a 1 mm core takes 6.36 mm', () => {
    // √((π · 2)² + 1²) = √(39.4784 + 1) = √40.4784 = 6.36226
    expect(halfHitchLength(1, 1)).toBeCloseTo(6.36226, 4);
  });
});
