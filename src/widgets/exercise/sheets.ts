import type { FieldOf, KindName, Level, OptionsOf, ProblemOf } from '../../solver/exercises/contract.ts';
import { making } from '../../solver/exercises/making.ts';
import type { QuestionWords } from '../../words/exercises/question-words.ts';
import { questionOf } from './asked.ts';
import type { Entered } from './view.ts';

/** Makes the problems of one exercise. A page fetches this when other figures are asked for than it was built with. */
export interface Sheet<K extends KindName> {
  /** null where the options, with the learner's own figures among them, make no problem. */
  make(seed: string, own?: object): ProblemOf<K> | null;
  question(problem: ProblemOf<K>): Promise<QuestionWords>;
  /** What a half-worked form gives: all but the field that was missed last. */
  given(problem: ProblemOf<K>, missed?: FieldOf<K>): Entered;
}

export function sheetFor<K extends KindName>(kind: K, level: Level, options: OptionsOf<K>): Sheet<K> {
  const { make, fade } = making[kind];
  return {
    make(seed, own) {
      const made = make(seed, level, { ...options, ...own });
      return 'ok' in made ? null : made;
    },
    question: (problem) => questionOf(kind, problem),
    given: (problem, missed) => (level === 'half-worked' ? ({ ...fade(problem, missed).given } as Entered) : {}),
  };
}
