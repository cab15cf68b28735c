import { namedRow, type FigureName as PlanFigure } from '../solver/named-figures.ts';
import type { Plan } from '../solver/plan.ts';
import { cutList, type Thread } from '../solver/thread/index.ts';
import type { FigureName } from './index.ts';

/** Whether a plate shows what colours do, so that a piece without a picture has nothing to show in it. */
export const isOfColours = (
  name: FigureName | 'piece',
  { coloured, fault }: Readonly<Record<string, unknown>>,
): boolean => name === 'back' || name === 'row-read' || coloured === true || fault === 'colour-off';

/**
 * A plate's options as its figure takes them, from what a lesson says: a row may be the name of a figure of the plan,
 * and the strings to cut come from the cut list for this thread. What is measured of a ring comes from thread and bar.
 *
 * @param barWidth inner width of the bar in mm, where it was measured
 */
export function plateOptions(
  name: FigureName | 'piece',
  plan: Plan,
  options: Readonly<Record<string, unknown>>,
  thread: Thread,
  barWidth: number | null = null,
): Record<string, unknown> {
  const row = namedRow(plan, options['row'] as number | PlanFigure | undefined);
  const cut =
    name === 'cut-strings' ? cutList({ fit: plan.fit, bundles: plan.outline, rows: plan.rows, thread }) : null;
  const ring = name === 'ten-turns' || name === 'capacity-range' ? { thread, barWidth } : {};
  return { ...options, ...ring, ...(row === undefined ? {} : { row }), ...(cut?.ok ? { pieces: cut.pieces } : {}) };
}
