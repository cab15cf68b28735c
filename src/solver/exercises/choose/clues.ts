import type { Clues } from '../steps.ts';
import { chooseFacts } from './facts.ts';
import type { ChooseProblem } from './problem.ts';
import type { ChooseHintKey } from './solution.ts';

/** Where to look and what to do, for what is asked. */
export function clues(problem: ChooseProblem): Clues<ChooseHintKey> {
  const values = chooseFacts(problem);
  return { look: { key: `look-${problem.ask}`, values }, do: { key: `do-${problem.ask}`, values } };
}
