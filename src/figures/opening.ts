import type { RowPlan } from '../solver/piece.ts';
import { type Figure, step, type Values } from './drawing.ts';
import { drawStack, type StackOptions, type StackPlan } from './stack.ts';

export interface OpeningOptions extends StackOptions {
  /** How many rows; one more than it takes to reach full width when left out. */
  readonly rows?: number | undefined;
}

export type OpeningKey = 'opening' | 'opening-row' | 'opening-full';

/** Rows drawn at most unless more are asked for. */
const MOST = 14;

const rowsOf = ({ rows, outline }: StackPlan, { rows: wanted }: OpeningOptions): readonly RowPlan[] =>
  rows.slice(0, Math.max(1, Math.round(wanted ?? Math.min(MOST, (outline.firstFullRow ?? rows.length) + 1)) || 1));

/** The first rows of a piece as a stack: bundles let strings out and the piece widens. */
export const opening: Figure<'opening', OpeningOptions, OpeningKey, StackPlan> = {
  name: 'opening',
  draw: (plan, options = {}) => drawStack(plan, rowsOf(plan, options), options),
  describe(plan, options = {}) {
    const rows = rowsOf(plan, options);
    const say = (key: OpeningKey, values: Values) => step(key, values);
    const { firstFullRow } = plan.outline;
    return [
      say('opening', { rows: rows.length, width: plan.fit.width }),
      ...rows.map(({ row, knots, leftBundle, rightBundle }) =>
        say('opening-row', { row, knots, left: leftBundle, right: rightBundle }),
      ),
      ...(firstFullRow !== null && firstFullRow <= rows.length
        ? [say('opening-full', { row: firstFullRow, width: plan.fit.width })]
        : []),
    ];
  },
};
