/** An exercise in words: what is known, and what is asked. */
export interface QuestionWords {
  readonly given: string;
  readonly ask: string;
  /** What is said besides to readers whose lengths are in inches, where the figures stay in millimetres. */
  readonly inMillimetres?: string;
  /** What there is to choose from, by field: what is kept of a choice, and how it reads. */
  readonly choices?: Readonly<Record<string, readonly (readonly [id: string, says: string])[]>>;
  /** What can be chosen, or put in order, as the problem lists it. */
  readonly parts?: readonly string[];
}
