import type { Fit } from './piece.ts';
import { type Problem, wholeNumberProblem } from './problem.ts';
import { WIDTHS } from './ranges.ts';

/**
 * A problem when something handed in as a fit is none, else null: it has a width of 2 to 400, and sides whose
 * columns leave at least two strings on the bar.
 */
export function fitProblem(fit: Fit | null | undefined): Problem | null {
  if (typeof fit !== 'object' || fit === null) return { code: 'no-fit', field: 'fit', values: {} };
  const bad = wholeNumberProblem('width', fit.width, WIDTHS);
  if (bad) return bad;
  for (const side of ['left', 'right'] as const) {
    const wrong = wholeNumberProblem(side, fit[side]?.columns, { low: 0, high: fit.width - 2 });
    if (wrong) return wrong;
  }
  return fit.left.columns + fit.right.columns <= fit.width - 2 ? null : { code: 'no-fit', field: 'fit', values: {} };
}
