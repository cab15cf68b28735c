import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fitPiece } from '../../../src/solver/index.ts';
import { safeFit } from '../../../src/solver/thread/index.ts';
import { tries } from '../../seed.ts';
import '../matchers.ts';

describe('a safe plan', () => {
  it('the plan for the likely capacity is safe where the low capacity takes its strings too', () => {
    // 26 wide on 16: 14 on the bar. A bar that takes only 14 or 15 still takes them.
    const answer = safeFit({ width: 26, capacity: { low: 14, likely: 16, high: 17 } });
    expect(answer).toMatchObject({ ok: true, safe: true, low: null, likely: { onBar: 14 } });
  });

  it('where it is not safe the plan for the low capacity stands beside it', () => {
    // On 13 only: an idle place leaves 12, spare 14, seven a side, borrow two: 10 on the bar, 8 a side.
    const answer = safeFit({ width: 26, capacity: { low: 13, likely: 16, high: 17 } });
    expect(answer).toMatchObject({
      ok: true,
      safe: false,
      likely: { onBar: 14 },
      low: { ok: true, fit: { onBar: 10, left: { strands: 8 } } },
    });
  });

  it('where the low capacity can not be made at all, its problem stands beside the likely plan', () => {
    // On 9: an idle place leaves 8, spare 18, nine a side, borrow two: 6 on the bar, 10 a side, over the most.
    const answer = safeFit({ width: 26, capacity: { low: 9, likely: 16, high: 17 } });
    expect(answer).toMatchObject({ ok: true, safe: false, low: { ok: false, problem: { code: 'bundle-too-big' } } });
  });

  it('where the likely capacity gives no plan, that is the answer', () => {
    expect(safeFit({ width: 40, capacity: { low: 8, likely: 9, high: 10 } })).toBeRefusedAs('bundle-too-big');
    expect(safeFit({ width: 40, capacity: { low: 8, likely: Number.NaN, high: 10 } })).toBeRefusedAs(
      'not-a-whole-number',
    );
  });

  it('a safe plan can be mounted on every capacity of the range, and one that is not can not', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 2, max: 60 }),
        fc.integer({ min: 2, max: 50 }),
        fc.nat({ max: 6 }),
        fc.nat({ max: 6 }),
        fc.constantFrom('lone-string' as const, 'carried-end' as const),
        (width, low, up, further, oddMethod) => {
          const capacity = { low, likely: low + up, high: low + up + further };
          const answer = safeFit({ width, capacity, oddMethod });
          if (!answer.ok) return;
          const { likely, safe } = answer;
          for (let places = low; places <= capacity.high; places += 1)
            if (safe) expect(likely.onBar).toBeLessThanOrEqual(places);
          if (!safe) expect(likely.onBar).toBeGreaterThan(low);
          expect(Math.max(likely.left.strands, likely.right.strands)).toBeLessThanOrEqual(likely.maxBundle);
          if (answer.low) expect(answer.low).toEqual(fitPiece({ width, capacity: low, oddMethod }));
        },
      ),
      tries(),
    );
  });

  it('where the likely capacity gives no plan a smaller one gives none either', () => {
    for (let width = 2; width <= 60; width += 1)
      for (const oddMethod of ['lone-string', 'carried-end'] as const) {
        let smaller = false;
        for (let capacity = 2; capacity <= width; capacity += 1) {
          const { ok } = fitPiece({ width, capacity, oddMethod });
          expect(smaller && !ok, `${width} on ${capacity}, ${oddMethod}`).toBe(false);
          smaller ||= ok;
        }
      }
  });
});
