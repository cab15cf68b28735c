import { chooseFacts } from '../../solver/exercises/choose/facts.ts';
import type { ChoiceSlip } from '../../solver/exercises/choose/missteps.ts';
import { CHOICE_SLIP_WORDS } from './choose.ts';
import type { Tell } from './telling.ts';

/** What lies behind a choice. */
export const tellChoice: Tell = (slip, problem) =>
  problem.kind === 'choose' && slip in CHOICE_SLIP_WORDS
    ? CHOICE_SLIP_WORDS[slip as ChoiceSlip](chooseFacts(problem))
    : null;
