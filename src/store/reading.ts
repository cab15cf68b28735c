import type { PlanInput } from '../solver/plan.ts';

/**
 * The figures that this page is read with: the learner's own, or null for the worked example. The page's switch says
 * which; every widget follows. It knows nothing of where they are kept, so that a reader of the example loads none of
 * that.
 */
let current: PlanInput | null = null;
const listeners = new Set<() => void>();

export const ownReading = (): PlanInput | null => current;

/** Reads the page with other figures from now on. */
export function readWith(input: PlanInput | null): void {
  if (JSON.stringify(input) === JSON.stringify(current)) return;
  current = input;
  for (const listener of listeners) listener();
}

/** Calls `listener` whenever the figures change; gives a function that ends that. */
export function subscribeReading(listener: () => void): () => void {
  listeners.add(listener);
  return () => listeners.delete(listener);
}
