/** An exercise in words: what is known, and what is asked. */
export interface QuestionWords {
  readonly given: string;
  readonly ask: string;
  /** What can be chosen, or put in order, as the problem lists it. */
  readonly parts?: readonly string[];
}
