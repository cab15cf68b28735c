import { describe, expect, it } from 'vitest';
import { pieceLength } from '../../../src/solver/thread/base-string.ts';
import { pitchesOf } from '../../../src/solver/thread/pitch.ts';
import { readThread, type Thread } from '../../../src/solver/thread/thread.ts';

function lengthOf(place: 'bar' | 'left' | 'right' | 'lone', size: { width: number; height: number }, thread: Thread) {
  const read = readThread(thread);
  if (!read.ok) throw new Error(read.problem.code);
  return pieceLength(place, size, read.thread, pitchesOf(read.thread));
}

const floss = { diameter: 1, kind: 'soft' } as const;
const evening = { width: 12, height: 14 };

describe('base strings', () => {
  it("a fold on the bar of the evening's piece is cut 345 to 395 mm, most likely 370", () => {
    // One end, likely: π(2 + 1) + 2 = 11.425; 14 rows · 2.1 · 1.06 = 31.164;
    // D = 0.8 · 1.15 √12 = 3.187, finishing 12 · (3.187 + 1) = 50.244; and 90: in all 182.832.
    // Both ends 365.665, cut 370. Low 342.420, cut 345; high 393.691, cut 395.
    expect(lengthOf('bar', evening, floss)).toEqual({ low: 345, likely: 370, high: 395, source: 'estimate' });
  });

  it('a side fold goes half round the ring instead', () => {
    // Per end π(2 + 1)/2 + 5 = 9.712 for 11.425; likely 2 · 181.120 = 362.240; low 338.995, high 390.266.
    expect(lengthOf('left', evening, floss)).toEqual({ low: 340, likely: 365, high: 395, source: 'estimate' });
    expect(lengthOf('right', evening, floss)).toEqual(lengthOf('left', evening, floss));
  });

  it('a lone string is one end, with 40 mm more for its hidden tail', () => {
    // 1.2 mm waxed cord on a 2.5 mm bar, 21 × 24. π · 3.7 + 2.4 + 40 = 54.024; 24 · 2.52 · 1.06 = 64.109;
    // D = 1.2 · 1.15 √21 = 6.324, finishing 12 · 7.524 = 90.287; and 90: 298.420. Low 281.673, high 315.167.
    const cord = { diameter: 1.2, kind: 'firm', barThickness: 2.5 } as const;
    expect(lengthOf('lone', { width: 21, height: 24 }, cord)).toEqual({
      low: 285,
      likely: 300,
      high: 320,
      source: 'estimate',
    });
    // Its fold on the bar: 2 · (298.420 − 40) = 516.840.
    expect(lengthOf('bar', { width: 21, height: 24 }, cord)).toMatchObject({ low: 485, likely: 520, high: 555 });
  });

  it('with a measured row pitch the rows are taken from the swatch', () => {
    // Pitch 2: 14 · 2 · 1.06 = 29.68; one end 11.425 + 29.68 + 50.244 + 90 = 181.348, both 362.697.
    const length = lengthOf('bar', evening, { ...floss, measured: { rowPitch: 2 } });
    expect(length).toMatchObject({ likely: 365, source: 'measured' });
    expect(lengthOf('bar', evening, { ...floss, measured: { columnPitch: 2 } }).source).toBe('estimate');
  });

  it('a piece that comes out at a whole 5 mm is cut there, however the machine rounds', () => {
    // The row pitch is worked back from the length of one lone end.
    const without = Math.PI * 3 + 2 + 40 + 12 * (1.15 * Math.sqrt(12) * 0.8 + 1) + 90;
    for (let target = 200; target <= 500; target += 5)
      for (const height of [7, 10, 33]) {
        const rowPitch = (target - without) / (height * 1.06);
        const { likely } = lengthOf('lone', { width: 12, height }, { ...floss, measured: { rowPitch } });
        expect(likely).toBe(target);
      }
  });
});
