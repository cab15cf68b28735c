/** An exercise in words: what is known, and what is asked. */
export interface QuestionWords {
  readonly given: string;
  readonly ask: string;
}
