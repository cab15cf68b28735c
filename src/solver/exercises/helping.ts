import type { KindName } from './contract.ts';
import { hints as markHints, solution as markSolution } from './mark/solution.ts';
import { hints as numberHints, solution as numberSolution } from './number/solution.ts';
import type { Helping } from './steps.ts';
import { hints as sumHints, solution as sumSolution } from './sum/solution.ts';

export { diagnose } from '../missteps/diagnose.ts';
export { followUp, settle } from '../missteps/follow-up.ts';

/**
 * All that a page fetches when the first wrong answer or the first hint asks for it: worked steps, hints, and
 * with them the diagnosis and its follow-up questions.
 */
export const helping: { readonly [K in KindName]: Helping<K> } = {
  sum: { solution: sumSolution, hints: sumHints },
  number: { solution: numberSolution, hints: numberHints },
  mark: { solution: markSolution, hints: markHints },
};
