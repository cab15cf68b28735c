import { describe, expect, it } from 'vitest';
import { pitches } from '../../../src/solver/thread/index.ts';
import '../matchers.ts';

describe('pitches of a thread', () => {
  it('1 mm floss is knotted 1.8 to 2.3 mm a column and 1.8 to 2.4 mm a row', () => {
    expect(pitches({ diameter: 1, kind: 'soft' })).toEqual({
      ok: true,
      column: { low: 1.8, likely: 2, high: 2.3, source: 'estimate' },
      row: { low: 1.8, likely: 2.1, high: 2.4, source: 'estimate' },
    });
  });

  it('2 mm waxed cord is knotted 4.8 to 6 mm a column', () => {
    expect(pitches({ diameter: 2, kind: 'firm' })).toMatchObject({
      column: { low: 4.8, likely: 5.4, high: 6, source: 'estimate' },
      row: { low: 3.6, likely: 4.2, high: 4.8, source: 'estimate' },
    });
  });

  it('a measured pitch replaces its estimate and no other', () => {
    expect(pitches({ diameter: 1, kind: 'soft', measured: { columnPitch: 2.05 } })).toMatchObject({
      column: { low: 2.05, likely: 2.05, high: 2.05, source: 'measured' },
      row: { likely: 2.1, source: 'estimate' },
    });
    expect(pitches({ diameter: 1, kind: 'soft', measured: { rowPitch: 1.95 } })).toMatchObject({
      column: { likely: 2, source: 'estimate' },
      row: { low: 1.95, likely: 1.95, high: 1.95, source: 'measured' },
    });
  });

  it('a diameter outside 0.2 to 10 mm, a kind of thread nobody sells and an impossible pitch are refused', () => {
    expect(pitches({ diameter: 0.19, kind: 'soft' })).toBeRefusedAs('out-of-range');
    expect(pitches({ diameter: 10.1, kind: 'soft' })).toBeRefusedAs('out-of-range');
    expect(pitches({ diameter: Number.NaN, kind: 'soft' })).toBeRefusedAs('not-a-number');
    expect(pitches({ diameter: 1, kind: 'iron' as 'firm' })).toBeRefusedAs('unknown-choice');
    expect(pitches({ diameter: 1, kind: 'soft', measured: { columnPitch: 0 } })).toBeRefusedAs('out-of-range');
    expect(pitches({ diameter: 1, kind: 'soft', measured: { rowPitch: Number.NaN } })).toBeRefusedAs('not-a-number');
  });
});
