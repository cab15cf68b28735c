import type { FieldOf, KindName, ProblemOf } from '../../solver/exercises/contract.ts';
import { helping } from '../../solver/exercises/helping.ts';
import { hintWords, WORKED_CASE } from '../../words/exercises/hint-words.ts';
import { questionWords } from '../../words/exercises/question.ts';
import type { HelpBoard } from './help.ts';
import { linesOf } from './working.ts';

/** The next hint: where to look, what to do, and then a case worked with other figures. */
export function nextHint<K extends KindName>(
  kind: K,
  problem: ProblemOf<K>,
  before: HelpBoard | null,
  field: FieldOf<K> | null,
): HelpBoard {
  const { look, do: act, worked } = helping[kind].hints(problem, field);
  const given = before?.hints ?? [];
  const next = [look, act][given.length];
  if (next) return { ...before, hints: [...given, hintWords(kind, next)] };
  if (before?.worked || !worked) return { ...before, hintsDone: true };
  return {
    ...before,
    worked: { says: WORKED_CASE, question: questionWords(worked.problem), steps: linesOf(kind, worked.steps) },
    hintsDone: true,
  };
}
