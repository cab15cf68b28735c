import { expect, test } from 'vitest';
import { isRingLength, planPiece, RING_FIGURES, type RingFigure, ringFigure } from '../../src/solver/index.ts';

const plan = planPiece({ width: 26, height: 32, capacity: 16 });
if (!plan.ok) throw new Error(plan.problem.code);
const floss = { diameter: 1.2, kind: 'soft' } as const;
const figureOf = (name: RingFigure, barWidth: number | null = null) => ringFigure(plan, floss, barWidth, name);

test('a bar that takes 16 columns of 2.4 mm is 39 mm wide at the least, and takes 14 to 18 of this cord', () => {
  expect(figureOf('bar-width')).toBe(39);
  expect(['capacity-low', 'capacity-likely', 'capacity-high'].map((name) => figureOf(name as RingFigure))).toEqual([
    14, 16, 18,
  ]);
});

test('a bar that was measured is taken as it is: 30 mm takes 10, 12 or 13', () => {
  expect(figureOf('bar-width', 30)).toBe(30);
  expect(figureOf('capacity-low', 30)).toBe(10);
  expect(figureOf('capacity-likely', 30)).toBe(12);
  expect(figureOf('capacity-high', 30)).toBe(13);
});

test('ten turns of a cord of 1.2 mm take 12 mm, and a column of its knots 2.16 to 2.76 mm', () => {
  expect(figureOf('ten-turns')).toBeCloseTo(12);
  expect(figureOf('thickness')).toBe(1.2);
  expect(figureOf('narrowest-column')).toBeCloseTo(2.16);
  expect(figureOf('likely-column')).toBeCloseTo(2.4);
  expect(figureOf('widest-column')).toBeCloseTo(2.76);
});

test('a measured swatch leaves no range', () => {
  const swatch = { ...floss, measured: { columnPitch: 2.5 } };
  const all = (['low', 'likely', 'high'] as const).map((end) => ringFigure(plan, swatch, 40, `capacity-${end}`));
  expect(all).toEqual([16, 16, 16]);
});

test('a gap of three cords lets 6 strands pass, and one of four lets 8, whatever the cord', () => {
  for (const diameter of [0.5, 1.2, 3]) {
    const through = (name: RingFigure) => ringFigure(plan, { ...floss, diameter }, null, name);
    expect([through('through-three-cords'), through('through-four-cords')]).toEqual([6, 8]);
  }
});

test('capacities are counts, and so is what passes a gap; all else is a length', () => {
  expect(RING_FIGURES.filter((name) => !isRingLength(name))).toEqual([
    'capacity-low',
    'capacity-likely',
    'capacity-high',
    'through-three-cords',
    'through-four-cords',
  ]);
});
