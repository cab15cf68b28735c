import type { RowPlan } from '../solver/piece.ts';
import { type Figure, step, type Values } from './drawing.ts';
import { drawStack, type StackOptions, type StackPlan } from './stack.ts';

export interface ClosingOptions extends StackOptions {
  /** How many rows, up to the last; from one before the first closing row when left out. */
  readonly rows?: number | undefined;
}

export type ClosingKey = 'closing' | 'closing-row' | 'closing-none';

/** Rows drawn at most unless more are asked for, and where nothing is taken in. */
const MOST = 14;
const PLAIN = 3;

const rowsOf = ({ rows, outline }: StackPlan, { rows: wanted }: ClosingOptions): readonly RowPlan[] => {
  const own = outline.firstClosingRow === null ? PLAIN : Math.min(MOST, rows.length - outline.firstClosingRow + 2);
  return rows.slice(-Math.max(1, Math.round(wanted ?? own) || 1));
};

/** The last rows of a piece as a stack: bundles take strings in and the piece narrows. */
export const closing: Figure<'closing', ClosingOptions, ClosingKey, StackPlan> = {
  name: 'closing',
  draw: (plan, options = {}) => drawStack(plan, rowsOf(plan, options), options),
  describe(plan, options = {}) {
    const rows = rowsOf(plan, options);
    const say = (key: ClosingKey, values: Values) => step(key, values);
    return [
      say('closing', { from: rows[0]?.row ?? 1, to: plan.rows.length }),
      ...rows.map(({ row, knots, leftBundle, rightBundle }) =>
        say('closing-row', { row, knots, left: leftBundle, right: rightBundle }),
      ),
      ...(plan.outline.firstClosingRow === null ? [say('closing-none', { width: plan.fit.width })] : []),
    ];
  },
};
