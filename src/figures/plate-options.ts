import { namedRow, type FigureName as PlanFigure } from '../solver/named-figures.ts';
import type { Plan } from '../solver/plan.ts';
import { cutList, type Thread } from '../solver/thread/index.ts';
import type { FigureName } from './index.ts';

/**
 * A plate's options as its figure takes them, from what a lesson says: a row may be the name of a figure of the plan,
 * and the strings to cut come from the cut list for this thread.
 */
export function plateOptions(
  name: FigureName | 'piece',
  plan: Plan,
  options: Readonly<Record<string, unknown>>,
  thread: Thread,
): Record<string, unknown> {
  const row = namedRow(plan, options['row'] as number | PlanFigure | undefined);
  const cut =
    name === 'cut-strings' ? cutList({ fit: plan.fit, bundles: plan.outline, rows: plan.rows, thread }) : null;
  return { ...options, ...(row === undefined ? {} : { row }), ...(cut?.ok ? { pieces: cut.pieces } : {}) };
}
