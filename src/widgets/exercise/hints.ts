import type { FieldOf, KindName, ProblemOf } from '../../solver/exercises/contract.ts';
import { isRowsQuestion } from '../../solver/exercises/number/problem.ts';
import { pointing } from '../../solver/exercises/pointing.ts';
import { ANOTHER_QUESTION, type Hints, WORKED_CASE } from '../../words/exercises/hints/hint.ts';
import type { HelpBoard, LikeIt } from './help.ts';

/** The hints of a kind; of a single figure those of its part of the craft. */
const HINTS: { readonly [K in KindName]: (problem: ProblemOf<K>) => Promise<Partial<Hints<K>>> } = {
  sum: async () => (await import('../../words/exercises/hints/sum.ts')).SUM_HINTS,
  number: async (problem) =>
    isRowsQuestion(problem)
      ? (await import('../../words/exercises/hints/rows.ts')).ROWS_HINTS
      : (await import('../../words/exercises/hints/number.ts')).NUMBER_HINTS,
  mark: async () => (await import('../../words/exercises/hints/mark.ts')).MARK_HINTS,
  row: async () => (await import('../../words/exercises/hints/row.ts')).ROW_HINTS,
  spot: async () => (await import('../../words/exercises/hints/spot.ts')).SPOT_HINTS,
  order: async () => (await import('../../words/exercises/hints/order.ts')).ORDER_HINTS,
  choose: async (problem) => (await import('./choice-parts.ts')).choiceParts(problem).hints(),
  say: async () => (await import('../../words/exercises/hints/say.ts')).SAY_HINTS,
};

/** A case like this one, worked with other figures; null where there is none. */
async function likeIt<K extends KindName>(
  kind: K,
  problem: ProblemOf<K>,
  built: Element | null,
): Promise<LikeIt | null> {
  const says = kind === 'say' ? ANOTHER_QUESTION : WORKED_CASE;
  if (built) return { says, built };
  const { workedLike } = await import('./like-it.ts');
  const worked = await workedLike(kind, problem);
  return worked && { says, ...worked };
}

/**
 * What the next hint adds to the board: where to look, what to do, and then a case worked with other figures.
 *
 * @param built the case that the page was built with, where this is the problem it was built with
 */
export async function nextHint<K extends KindName>(
  kind: K,
  problem: ProblemOf<K>,
  before: HelpBoard | null,
  field: FieldOf<K> | null,
  built: Element | null,
): Promise<HelpBoard> {
  const given = before?.hints ?? [];
  const clues = await pointing[kind]();
  const { look, do: act } = clues(problem, field);
  const next = [look, act][given.length];
  if (next) {
    const says: Partial<Hints<K>> = await HINTS[kind](problem);
    const say = says[next.key];
    if (!say) throw new Error(`There are no words for the hint '${next.key}'.`);
    return { hints: [...given, say(next.values)] };
  }
  const worked = before?.worked ? null : await likeIt(kind, problem, built);
  return { ...(worked && { worked }), hintsDone: true };
}
