import type { ProblemOf } from '../../../solver/exercises/contract.ts';
import { orderFacts } from '../../../solver/exercises/order/facts.ts';
import { ORDER_WORDS, orderStepWords } from '../order.ts';
import type { QuestionWords } from '../question-words.ts';

/** The question of an order, with its steps as they lie there at first. */
export function orderQuestion(problem: ProblemOf<'order'>): QuestionWords {
  const { given, ask } = ORDER_WORDS[problem.of];
  const facts = orderFacts(problem);
  return {
    given: given(facts),
    ask: ask(facts),
    parts: problem.steps.map((step) => orderStepWords(problem.of, step, facts)),
  };
}
