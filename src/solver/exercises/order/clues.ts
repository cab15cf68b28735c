import type { Clues } from '../steps.ts';
import { orderFacts } from './facts.ts';
import type { OrderProblem } from './problem.ts';
import type { OrderHintKey } from './solution.ts';

/** Where to look and what to do, for the sequence. */
export function clues(problem: OrderProblem): Clues<OrderHintKey> {
  const values = orderFacts(problem);
  return { look: { key: `look-${problem.of}`, values }, do: { key: `do-${problem.of}`, values } };
}
