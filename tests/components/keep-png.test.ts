import { expect, it } from 'vitest';
import { wallSize } from '../../src/components/keep-png.ts';

it('a plate is kept as large as a wall of 1920 × 1080 shows it, in its own shape', () => {
  expect(wallSize(1200, 1200)).toEqual({ width: 1080, height: 1080 });
  expect(wallSize(1200, 300)).toEqual({ width: 1920, height: 480 });
  expect(wallSize(1200, 2400)).toEqual({ width: 540, height: 1080 });
  expect(wallSize(1920, 1080)).toEqual({ width: 1920, height: 1080 });
});
