import type { OddMethod, SideName } from './piece.ts';

/** Widths and capacities the workbook plans for; both ends count. */
export const WIDTHS = { low: 2, high: 400 } as const;
export const CAPACITIES = { low: 2, high: 400 } as const;
export const MAX_BUNDLES = { low: 2, high: 40 } as const;
export const ODD_METHODS = ['lone-string', 'carried-end'] as const satisfies readonly OddMethod[];
export const SIDES = ['left', 'right'] as const satisfies readonly SideName[];
