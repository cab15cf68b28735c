import type { ExerciseProblem } from '../../solver/exercises/contract.ts';
import {
  isFitQuestion,
  isMeasureQuestion,
  isThreadQuestion,
  type NumberProblem,
} from '../../solver/exercises/number/problem.ts';
import { fitFigureAsked, sumAsked } from './fit-question.ts';
import { markAsked } from './mark-question.ts';
import { measureAsked, threadAsked } from './measure-question.ts';
import type { QuestionWords } from './question-words.ts';
import { chooseQuestion } from './questions/choose.ts';
import { orderQuestion } from './questions/order.ts';
import { sayQuestion } from './questions/say.ts';
import { rowsAsked } from './rows-question.ts';
import { rowAsked, spotAsked } from './tying-question.ts';

export type { QuestionWords } from './question-words.ts';

function numberAsked(problem: NumberProblem): QuestionWords {
  if (isFitQuestion(problem)) return fitFigureAsked(problem);
  if (isThreadQuestion(problem)) return threadAsked(problem);
  return isMeasureQuestion(problem) ? measureAsked(problem) : rowsAsked(problem);
}

/** The question of an exercise. No figure of its answer is in it. */
export function questionWords(problem: ExerciseProblem): QuestionWords {
  switch (problem.kind) {
    case 'sum':
      return sumAsked(problem);
    case 'number':
      return numberAsked(problem);
    case 'mark':
      return markAsked(problem);
    case 'row':
      return rowAsked(problem);
    case 'spot':
      return spotAsked(problem);
    case 'order':
      return orderQuestion(problem);
    case 'choose':
      return chooseQuestion(problem);
    case 'say':
      return sayQuestion(problem);
  }
}
