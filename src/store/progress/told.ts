import type { KindName, Level, ProblemOf } from '../../solver/exercises/contract.ts';

/** The name of the event by which an exercise tells the page of a try. It rises from the exercise's own element. */
export const TOLD = 'evenfold-told';

/** What an exercise tells: a try that could be read, or the slips behind the last one once they are certain. */
export interface Told<K extends KindName = KindName> {
  readonly exercise: string;
  readonly kind: K;
  readonly level: Level;
  readonly seed: string;
  readonly problem: ProblemOf<K>;
  readonly outcome?: 'right' | 'not-right' | undefined;
  /** Whether a hint or the working was looked at before the try. */
  readonly aided?: boolean | undefined;
  readonly slips?: readonly string[] | undefined;
}
