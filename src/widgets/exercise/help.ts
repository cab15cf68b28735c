import type { AnswerOf, KindName, ProblemOf } from '../../solver/exercises/contract.ts';
import type { QuestionWords } from '../../words/exercises/question-words.ts';
import type { SlipWords } from '../../words/slips/telling.ts';
import type { WorkingLine } from '../working-list.tsx';

export interface FollowUpCase {
  readonly problem: ProblemOf<KindName>;
  readonly question: QuestionWords;
  /** What the answer to it shows: the slip it was, or a further case. */
  readonly settle: (answer: AnswerOf<KindName>) => Promise<Explained>;
}

/** What lies behind a wrong answer: a leading sentence, the slips as far as they are known, and a case that decides. */
export interface Explained {
  readonly slips?:
    | {
        readonly say: string;
        readonly slips: readonly SlipWords[];
        /** Their ids, where it is certain that it was they. */
        readonly named?: readonly string[] | undefined;
      }
    | undefined;
  readonly followUp?: FollowUpCase | undefined;
}

/** A case like the one asked, worked: as it stands in the page already, or made here. */
export type LikeIt = { readonly says: string } & (
  | { readonly built: Element }
  | { readonly question: QuestionWords; readonly steps: readonly WorkingLine[] }
);

/** Everything that was fetched for a learner who asked for help or went wrong. */
export interface HelpBoard extends Explained {
  readonly hints?: readonly string[] | undefined;
  readonly worked?: LikeIt | undefined;
  readonly solution?: readonly WorkingLine[] | undefined;
  /** Nothing further to say. */
  readonly hintsDone?: boolean | undefined;
}
