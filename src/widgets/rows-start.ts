import type { Plan } from '../solver/plan.ts';

/** Where a walk through the rows begins. */
export type RowStart = 'start' | 'opening' | 'straight' | 'closing';

/** How far there is to walk. */
export interface RowsSize {
  readonly rows: number;
  /** Knots of the row walked. */
  readonly knots: number;
  /** The row where the walk begins. */
  readonly first: number;
}

/** The row where a walk begins; the last one where this piece takes nothing in. */
export function firstRow(plan: Plan, from: RowStart): number {
  const { rows, outline } = plan;
  switch (from) {
    case 'closing':
      return outline.firstClosingRow ?? rows.length;
    case 'straight':
      return outline.firstFullRow ?? rows.length;
    case 'opening':
      return Math.min(2, rows.length);
    case 'start':
      return 1;
  }
}
