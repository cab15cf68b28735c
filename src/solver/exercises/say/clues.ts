import type { Clues } from '../steps.ts';
import { factsOf } from '../whole-piece.ts';
import type { SayProblem } from './problem.ts';
import type { SayHintKey } from './solution.ts';

/** Where to look, and what an explanation has to say. */
export function clues(problem: SayProblem): Clues<SayHintKey> {
  const values = factsOf(problem);
  return { look: { key: `look-${problem.topic}`, values }, do: { key: `do-${problem.topic}`, values } };
}
