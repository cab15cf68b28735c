/**
 * The hand for which this page shows how knots are tied: the learner's own while they read with their own figures, else
 * the right one. Like the reading itself it knows nothing of where figures are kept.
 */
export type Hand = 'right' | 'left';

let current: Hand = 'right';
const listeners = new Set<() => void>();

export const shownHand = (): Hand => current;

/** Shows the motions of the page for this hand from now on. */
export function showHand(hand: Hand): void {
  if (hand === current) return;
  current = hand;
  for (const listener of listeners) listener();
}

/** Calls `listener` whenever the hand changes; gives a function that ends that. */
export function subscribeHand(listener: () => void): () => void {
  listeners.add(listener);
  return () => listeners.delete(listener);
}
