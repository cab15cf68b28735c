import type { KindName } from './contract.ts';
import { hints as markHints } from './mark/hints.ts';
import { hints as numberHints } from './number/hints.ts';
import { solving } from './solving.ts';
import type { Helping } from './steps.ts';
import { hints as sumHints } from './sum/hints.ts';

export { diagnose } from '../missteps/diagnose.ts';
export { followUp, settle } from '../missteps/follow-up.ts';

/**
 * All that a page fetches when the first wrong answer or the first hint asks for it: worked steps, hints, and
 * with them the diagnosis and its follow-up questions.
 */
export const helping: { readonly [K in KindName]: Helping<K> } = {
  sum: { solution: solving.sum, hints: sumHints },
  number: { solution: solving.number, hints: numberHints },
  mark: { solution: solving.mark, hints: markHints },
};
