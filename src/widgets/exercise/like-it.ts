import type { KindName, ProblemOf } from '../../solver/exercises/contract.ts';
import { helping } from '../../solver/exercises/helping.ts';
import type { QuestionWords } from '../../words/exercises/question-words.ts';
import type { WorkingLine } from '../working-list.tsx';
import { questionOf } from './asked.ts';
import { linesOf } from './working.ts';

export interface WorkedLike {
  readonly question: QuestionWords;
  readonly steps: readonly WorkingLine[];
}

/** A problem of the same shape with other figures, worked; null only where no other figures can be found. */
export async function workedLike<K extends KindName>(kind: K, problem: ProblemOf<K>): Promise<WorkedLike | null> {
  const { worked } = helping[kind].hints(problem);
  if (!worked) return null;
  const [question, steps] = await Promise.all([
    questionOf(kind, worked.problem),
    linesOf(worked.problem, worked.steps),
  ]);
  return { question, steps };
}
