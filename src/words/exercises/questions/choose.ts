import { chooseFacts } from '../../../solver/exercises/choose/facts.ts';
import type { ProblemOf } from '../../../solver/exercises/contract.ts';
import { CHOOSE_WORDS, choiceWords } from '../choose.ts';
import type { QuestionWords } from '../question-words.ts';

/** The question of a choice, with what can be chosen. */
export function chooseQuestion(problem: ProblemOf<'choose'>): QuestionWords {
  const { given, ask } = CHOOSE_WORDS[problem.ask];
  const facts = chooseFacts(problem);
  return {
    given: given(facts),
    ask: ask(facts),
    parts: problem.choices.map((choice) => choiceWords(problem.ask, choice, facts)),
  };
}
