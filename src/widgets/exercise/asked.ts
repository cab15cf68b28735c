import type { KindName, ProblemOf } from '../../solver/exercises/contract.ts';
import type { QuestionWords } from '../../words/exercises/question-words.ts';

/** The question of a problem in words, by kind. */
type Asks<K extends KindName> = (problem: ProblemOf<K>) => QuestionWords;

const figures = () => import('../../words/exercises/questions/figures.ts');
const ASKS: { readonly [K in KindName]: () => Promise<Asks<K>> } = {
  sum: async () => (await figures()).sumQuestion,
  number: async () => (await figures()).numberQuestion,
  mark: async () => (await figures()).markQuestion,
  order: async () => (await import('../../words/exercises/questions/order.ts')).orderQuestion,
  choose: async () => (await import('../../words/exercises/questions/choose.ts')).chooseQuestion,
  say: async () => (await import('../../words/exercises/questions/say.ts')).sayQuestion,
};

/** Fetches what says the questions of one kind. */
export const asksFor = <K extends KindName>(kind: K): Promise<Asks<K>> => ASKS[kind]();
