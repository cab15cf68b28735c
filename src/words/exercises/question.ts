import type { ExerciseProblem } from '../../solver/exercises/contract.ts';
import type { QuestionWords } from './question-words.ts';
import { chooseQuestion } from './questions/choose.ts';
import { markQuestion, numberQuestion, sumQuestion } from './questions/figures.ts';
import { orderQuestion } from './questions/order.ts';
import { sayQuestion } from './questions/say.ts';

export type { QuestionWords } from './question-words.ts';

/** The question of an exercise, all kinds together, for Node; a page fetches the one it needs. No figure of its answer is in it. */
export function questionWords(problem: ExerciseProblem): QuestionWords {
  switch (problem.kind) {
    case 'sum':
      return sumQuestion(problem);
    case 'number':
      return numberQuestion(problem);
    case 'mark':
      return markQuestion(problem);
    case 'order':
      return orderQuestion(problem);
    case 'choose':
      return chooseQuestion(problem);
    case 'say':
      return sayQuestion(problem);
  }
}
