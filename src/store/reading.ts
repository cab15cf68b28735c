import type { PlanInput } from '../solver/plan.ts';
import type { Thread } from '../solver/thread/thread.ts';
import { loadOwnFigures, type OwnFigures, subscribeOwnFigures } from './own-figures.ts';
import { loadPreferences, subscribePreferences } from './preferences.ts';

/** What the plan of a learner's own piece is made from; its chart, which may be long, is read where it is drawn. */
export const ownPlanInput = (own: OwnFigures): PlanInput => ({
  capacity: own.capacity,
  width: own.width,
  height: own.height,
  maxBundle: own.maxBundle,
  oddMethod: own.oddMethod,
  startSide: own.startSide,
  openingStep: own.openingStep,
  closingStep: own.closingStep,
  closingBundle: own.closingBundle ?? undefined,
});

/** The learner's cord and bar as the cut list takes them. */
export const ownThread = ({ cord, ring }: OwnFigures): Thread => ({
  diameter: cord.diameter,
  kind: cord.kind,
  workingLength: cord.workingLength,
  barThickness: ring.barThickness,
  measured: cord.measured ?? undefined,
});

/** The learner's own figures, when lessons are read with them; null when the worked example is. */
export function ownReading(): PlanInput | null {
  const own = loadOwnFigures();
  return loadPreferences().value.figures === 'mine' && own.entered ? ownPlanInput(own.value) : null;
}

/** Calls `listener` whenever `ownReading` may have changed; gives a function that ends that. */
export function subscribeReading(listener: () => void): () => void {
  const ends = [subscribeOwnFigures(listener), subscribePreferences(listener)];
  return () => {
    for (const end of ends) end();
  };
}
