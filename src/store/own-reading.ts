import type { PlanInput } from '../solver/plan.ts';
import type { Thread } from '../solver/thread/thread.ts';
import { loadOwnFigures, type OwnFigures } from './own-figures.ts';

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
export const threadOf = ({ cord, ring }: OwnFigures): Thread => ({
  diameter: cord.diameter,
  kind: cord.kind,
  workingLength: cord.workingLength,
  barThickness: ring.barThickness,
  measured: cord.measured ?? undefined,
});

/** The learner's own cord and bar, as kept on this device. */
export const ownThread = (): Thread => threadOf(loadOwnFigures().value);
