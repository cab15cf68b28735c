import { chooseFacts } from '../../solver/exercises/choose/facts.ts';
import type { ChoiceSlip } from '../../solver/exercises/choose/missteps.ts';
import type { Values } from '../numbers.ts';
import type { SlipText } from './slip-text.ts';
import type { Tell } from './telling.ts';

/** What a learner who chose by a slip thought, why it does not come out, and the next step. */
export const tellsChoices =
  (words: { readonly [Slip in ChoiceSlip]?: (values: Values) => SlipText }): Tell =>
  (slip, problem) =>
    problem.kind === 'choose' ? (words[slip as ChoiceSlip]?.(chooseFacts(problem)) ?? null) : null;
