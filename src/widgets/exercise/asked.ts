import type { KindName, ProblemOf } from '../../solver/exercises/contract.ts';
import { isFitQuestion, isRowsQuestion, isThreadQuestion } from '../../solver/exercises/number/problem.ts';
import type { QuestionWords } from '../../words/exercises/question-words.ts';

/** The question of each kind in words: a page fetches those of the part of the craft that is asked about. */
const ASKING: { readonly [K in KindName]: (problem: ProblemOf<K>) => Promise<QuestionWords> } = {
  sum: async (problem) => (await import('../../words/exercises/fit-question.ts')).sumAsked(problem),
  number: async (problem) => {
    if (isFitQuestion(problem)) return (await import('../../words/exercises/fit-question.ts')).fitFigureAsked(problem);
    if (isRowsQuestion(problem)) return (await import('../../words/exercises/rows-question.ts')).rowsAsked(problem);
    const { measureAsked, threadAsked } = await import('../../words/exercises/measure-question.ts');
    return isThreadQuestion(problem) ? threadAsked(problem) : measureAsked(problem);
  },
  mark: async (problem) => (await import('../../words/exercises/mark-question.ts')).markAsked(problem),
  row: async (problem) => (await import('../../words/exercises/tying-question.ts')).rowAsked(problem),
  spot: async (problem) => ({
    ...(await import('../../words/exercises/tying-question.ts')).spotAsked(problem),
    ...(await import('../../words/exercises/choices.ts')).choicesIn(problem),
  }),
  order: async (problem) => (await import('../../words/exercises/questions/order.ts')).orderQuestion(problem),
  choose: async (problem) => (await import('../../words/exercises/questions/choose.ts')).chooseQuestion(problem),
  say: async (problem) => (await import('../../words/exercises/questions/say.ts')).sayQuestion(problem),
};

/** What is asked, in words, with what there is to choose from. */
export const questionOf = <K extends KindName>(kind: K, problem: ProblemOf<K>): Promise<QuestionWords> =>
  ASKING[kind](problem);
