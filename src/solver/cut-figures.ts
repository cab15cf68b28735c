import type { Plan } from './plan.ts';
import { cutList, type Figure, type Thread } from './thread/index.ts';

/** The lengths of a cut list that a sentence may name. */
export const CUT_FIGURES = ['bar-fold', 'side-fold', 'lone-string'] as const;
export type CutFigure = (typeof CUT_FIGURES)[number];

const PLACES = { 'bar-fold': ['bar'], 'side-fold': ['left', 'right'], 'lone-string': ['lone'] } as const;

/** A length of a plan's cut list in mm, before folding; null where the piece has no such string, or the thread is not usable. */
export function cutFigure(plan: Plan, thread: Thread, name: CutFigure): Figure | null {
  const cut = cutList({ fit: plan.fit, bundles: plan.outline, rows: plan.rows, thread });
  if (!cut.ok) return null;
  const places: readonly string[] = PLACES[name];
  return cut.pieces.find(({ place }) => places.includes(place))?.length ?? null;
}
