import type { ProblemOf } from '../../../solver/exercises/contract.ts';
import { factsOf } from '../../../solver/exercises/whole-piece.ts';
import type { QuestionWords } from '../question-words.ts';
import { SAY_WORDS } from '../say.ts';

/** What is to be explained. */
export function sayQuestion(problem: ProblemOf<'say'>): QuestionWords {
  const { given, ask } = SAY_WORDS[problem.topic];
  const facts = factsOf(problem);
  return { given: given(facts), ask: ask(facts) };
}
