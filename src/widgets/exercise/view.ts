import type { Component } from 'solid-js';
import type { AnswerOf, Asking, FieldOf, JudgedOf, KindName, ProblemOf } from '../../solver/exercises/contract.ts';
import type { Entry } from '../../store/answers.ts';
import type { QuestionWords } from '../../words/exercises/question-words.ts';

/** What is entered, by field, as it is kept on the device. */
export type Entered = Readonly<Record<string, Entry>>;

export interface EntryProps<K extends KindName> {
  readonly id: string;
  readonly problem: ProblemOf<K>;
  /** The question in words, with what there is to choose from. */
  readonly question: QuestionWords;
  readonly entered: Entered;
  /** Figures that stand there already, in a half-worked form. */
  readonly given: Entered;
  /** What the last check said; null before the first, and after a change to a field for that field. */
  readonly judged: JudgedOf<K> | null;
  readonly onEnter: (field: string, entry: Entry) => void;
  /** Check this field and those before it. */
  readonly onCheckField: (field: string) => void;
}

/** What an exercise's frame needs to know of its kind. A new kind is one more of these. */
export interface KindView<K extends KindName> {
  readonly kind: K;
  /** Fetches what judges; `judge` is called after it alone. */
  readonly ready: () => Promise<void>;
  readonly judge: Asking<K>['judge'];
  /** From what is kept, with what is given, to what the solver reads. */
  readonly answer: (entered: Entered, given?: Entered) => AnswerOf<K>;
  /** What was missed first, for the half-worked form that comes later; left out, the first field that is not right. */
  readonly missed?: (problem: ProblemOf<K>, judged: JudgedOf<K>) => FieldOf<K> | null;
  /** Whether a change to any part of the answer takes back what was said of all of it. */
  readonly judgedWhole?: true;
  readonly Entry: Component<EntryProps<K>>;
  /** What is said of the whole answer, where it is not said of figures and cells. */
  readonly outcome?: (judged: JudgedOf<K>) => string;
  /** Whether the working may be shown yet; left out, always. */
  readonly showsWorking?: (entered: Entered) => boolean;
}
