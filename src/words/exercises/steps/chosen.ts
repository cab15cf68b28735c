import type { ChooseAsk } from '../../../solver/exercises/choose/problem.ts';
import { type AskedOf, choiceIn } from '../choices/saying.ts';
import type { Saying } from './saying.ts';

/** The step that chooses, in the words of what stood there. */
export const chosen = (words: Partial<AskedOf<ChooseAsk>>): Saying => [
  ({ ask, choice, ...values }) =>
    `So this is right: “${choiceIn(words[ask as ChooseAsk], String(choice), { ...values, ask: ask ?? '' }).replace(/\.$/, '')}”.`,
];
