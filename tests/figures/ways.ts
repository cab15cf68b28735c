import { ROW_FAULTS } from '../../src/figures/fault.ts';
import type { FigureName } from '../../src/figures/index.ts';

/** Each figure in every way it can be asked for. */
export const WAYS: Record<FigureName, object[]> = {
  back: [{}, { row: 9 }, { across: 640 }],
  bar: [{ stage: 'capacity' }, { stage: 'shared' }, { stage: 'fitted' }, { across: 640 }],
  'capacity-range': [
    {},
    { units: 'inches' },
    { plan: true },
    { barWidth: 24, thread: { diameter: 1.5, kind: 'firm' }, plan: true },
  ],
  chart: [{}, { marks: true }],
  closing: [{}, { rows: 3, coloured: true }],
  'cut-strings': [{}, { units: 'inches' }],
  evening: [{}, { hands: 'practised' }, { hands: 'steady', across: 720 }],
  fault: ROW_FAULTS.flatMap((fault) => [{ fault }, { fault, mended: true }]),
  'folds-why': [{}],
  gathering: [{}, { unequal: true }],
  'level-ends': [{}, { slipped: true }],
  opening: [{}, { rows: 2, coloured: true }],
  outline: [
    {},
    { show: 'bundles', row: 2 },
    { from: 3, to: 6, row: 4 },
    { across: 720 },
    { lost: true, added: { rowsAbove: 1, rowsBelow: 0, columnsLeft: 1 } },
  ],
  placing: [{}, { advised: true }],
  silhouette: [{}, { wish: 'waist' }, { wish: 'waist', across: 640 }],
  'steady-ring': [{}, { turned: true }],
  swatch: [{}],
  'tight-float': [{}, { tight: true }],
  'trial-row': [{}, { crowded: true }, { crowded: true, across: 640 }],
  'row-read': [{}, { row: 1 }, { row: 2 }, { row: 9999 }],
  'ten-turns': [
    {},
    { units: 'inches' },
    { units: 'inches', thread: { diameter: 0.2, kind: 'soft' } },
    { units: 'inches', thread: { diameter: 10, kind: 'firm' } },
    { thread: { diameter: 0.2, kind: 'soft' } },
    { thread: { diameter: 10, kind: 'firm' } },
  ],
  'ways-to-hang': [{}, { most: 2 }],
  row: [{}, { row: 2, knot: 1 }, { row: 3, knot: 0 }, { row: 7, coloured: true }, { row: 9999, knot: 9999 }],
};
