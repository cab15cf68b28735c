import type { Plan } from './plan.ts';
import { measuredFigure } from './thread/figure.ts';
import { cutList, type Figure, type Thread } from './thread/index.ts';

/** The lengths of a cut list that a sentence may name. */
export const CUT_FIGURES = ['bar-fold', 'side-fold', 'lone-string', 'join-tail'] as const;
export type CutFigure = (typeof CUT_FIGURES)[number];

/** mm that are laid under the knots where a leading string ends and the next begins (craft, section 7). */
const JOIN_TAIL = 40;

const PLACES = { 'bar-fold': ['bar'], 'side-fold': ['left', 'right'], 'lone-string': ['lone'] } as const;

/** A length of a plan's cut list in mm, before folding; null where the piece has no such string, or the thread is not usable. */
export function cutFigure(plan: Plan, thread: Thread, name: CutFigure): Figure | null {
  if (name === 'join-tail') return measuredFigure(JOIN_TAIL);
  const cut = cutList({ fit: plan.fit, bundles: plan.outline, rows: plan.rows, thread });
  if (!cut.ok) return null;
  const places: readonly string[] = PLACES[name];
  return cut.pieces.find(({ place }) => places.includes(place))?.length ?? null;
}
