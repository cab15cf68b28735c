import { describe, expect, test } from 'vitest';
import type { Chart } from '../../src/solver/chart.ts';
import { CONDITION_NAMES, type Condition, holds } from '../../src/solver/conditions.ts';
import { type Plan, type PlanInput, planPiece } from '../../src/solver/plan.ts';

function planOf(input: PlanInput): Plan {
  const plan = planPiece(input);
  if (!plan.ok) throw new Error(plan.problem.code);
  return plan;
}

/** A chart of the lantern's size with one picture cell in this place, counted row by row from 0. */
function chartWith(cell: number): Chart {
  const cells = new Uint8Array(26 * 32);
  cells[cell] = 1;
  const palette = [
    { name: 'chalk', colour: '#eeeeee', ground: true as const },
    { name: 'tar', colour: '#222222' },
  ];
  return { width: 26, height: 32, palette, cells };
}

const TWO_COLOURS: Chart = {
  width: 26,
  height: 32,
  palette: [
    { name: 'chalk', colour: '#f4ead5', ground: true },
    { name: 'tar', colour: '#20283c' },
  ],
  cells: Uint8Array.from({ length: 26 * 32 }, (_, cell) => (cell % 26 > 12 && cell > 260 ? 1 : 0)),
};
const LANTERN = { width: 26, height: 32, capacity: 16 };

/** For each condition a piece of which it holds, and one that differs in just that. */
const PIECES: Readonly<Record<Condition, readonly [holds: PlanInput, not: PlanInput]>> = {
  straight: [{ width: 16, height: 32, capacity: 16 }, LANTERN],
  bundles: [LANTERN, { width: 16, height: 32, capacity: 16 }],
  borrows: [LANTERN, { ...LANTERN, width: 24 }],
  'half-even': [{ ...LANTERN, width: 24 }, LANTERN],
  idle: [{ ...LANTERN, capacity: 15 }, LANTERN],
  'even-width': [LANTERN, { width: 21, height: 18, capacity: 15 }],
  'odd-width': [{ width: 21, height: 18, capacity: 15 }, LANTERN],
  'lone-string': [
    { width: 21, height: 18, capacity: 15 },
    { width: 21, height: 18, capacity: 15, oddMethod: 'carried-end' },
  ],
  'carried-end': [
    { width: 21, height: 18, capacity: 15, oddMethod: 'carried-end' },
    { width: 21, height: 18, capacity: 15 },
  ],
  'carried-alone': [
    { width: 9, height: 20, capacity: 6, oddMethod: 'carried-end' },
    { width: 21, height: 20, capacity: 15, oddMethod: 'carried-end' },
  ],
  'opens-each-row': [LANTERN, { ...LANTERN, openingStep: 2 }],
  'opens-slowly': [{ ...LANTERN, openingStep: 2 }, LANTERN],
  closes: [LANTERN, { ...LANTERN, closingBundle: 1 }],
  'closes-each-row': [LANTERN, { ...LANTERN, closingStep: 2 }],
  'closes-slowly': [{ ...LANTERN, closingStep: 2 }, LANTERN],
  'several-closing-rows': [LANTERN, { ...LANTERN, closingBundle: 2 }],
  'carries-behind': [LANTERN, { ...LANTERN, height: 5 }],
  'ends-alike': [LANTERN, { width: 21, height: 18, capacity: 15, oddMethod: 'carried-end' }],
  'full-width': [LANTERN, { ...LANTERN, height: 7 }],
  coloured: [{ ...LANTERN, chart: TWO_COLOURS }, LANTERN],
  'unequal-ends': [{ ...LANTERN, closingBundle: 3 }, LANTERN],
  corners: [LANTERN, { width: 16, height: 32, capacity: 16 }],
  gathers: [
    { width: 4, height: 4, capacity: 4 },
    { width: 3, height: 4, capacity: 3 },
  ],
  'strings-to-gather': [LANTERN, { width: 12, height: 14, capacity: 8, closingBundle: 5 }],
  'middle-three': [{ width: 21, height: 18, capacity: 15 }, LANTERN],
  'odd-capacity': [{ ...LANTERN, capacity: 15 }, LANTERN],
  lopsided: [LANTERN, { width: 2, height: 2, capacity: 2 }],
  'picture-whole': [
    { ...LANTERN, chart: chartWith(26 * 16) },
    { ...LANTERN, chart: chartWith(0) },
  ],
  'picture-cut': [
    { ...LANTERN, chart: chartWith(0) },
    { ...LANTERN, chart: chartWith(26 * 16) },
  ],
  'starts-left': [LANTERN, { ...LANTERN, startSide: 'right' }],
  'starts-right': [{ ...LANTERN, startSide: 'right' }, LANTERN],
};

describe('what can be so of one piece and not of another', () => {
  test.each(CONDITION_NAMES)('%s is told from its opposite', (condition) => {
    const [so, not] = PIECES[condition];
    expect([holds(planOf(so), condition), holds(planOf(so), `!${condition}`)]).toEqual([true, false]);
    expect([holds(planOf(not), condition), holds(planOf(not), `!${condition}`)]).toEqual([false, true]);
  });

  test('a straight piece neither opens nor closes, whatever its steps', () => {
    const plan = planOf({ width: 16, height: 32, capacity: 16, openingStep: 3, closingStep: 3 });
    for (const condition of ['opens-each-row', 'opens-slowly', 'closes', 'closes-each-row', 'closes-slowly'] as const)
      expect(holds(plan, condition), condition).toBe(false);
  });

  test('a piece too short for its full width is not called slow', () => {
    const plan = planOf({ ...LANTERN, height: 2 });
    expect(holds(plan, 'opens-slowly')).toBe(false);
    expect(holds(plan, 'closes-slowly')).toBe(false);
  });
});
