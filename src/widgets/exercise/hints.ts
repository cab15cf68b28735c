import type { FieldOf, KindName, ProblemOf } from '../../solver/exercises/contract.ts';
import type { Clues, HintKeyOf } from '../../solver/exercises/steps.ts';
import { type Hints, WORKED_CASE } from '../../words/exercises/hints/hint.ts';
import type { HelpBoard, LikeIt } from './help.ts';

/** The first two hints of one kind, in data and in words, without what makes and works the third. */
interface Pointing<K extends KindName> {
  readonly clues: (problem: ProblemOf<K>, field?: FieldOf<K> | null) => Clues<HintKeyOf<K>>;
  readonly says: Partial<Hints<K>>;
}

const POINTING: { readonly [K in KindName]: (problem: ProblemOf<K>) => Promise<Pointing<K>> } = {
  sum: async () => ({
    clues: (await import('../../solver/exercises/sum/clues.ts')).clues,
    says: (await import('../../words/exercises/hints/sum.ts')).SUM_HINTS,
  }),
  number: async () => ({
    clues: (await import('../../solver/exercises/number/clues.ts')).clues,
    says: (await import('../../words/exercises/hints/number.ts')).NUMBER_HINTS,
  }),
  mark: async () => ({
    clues: (await import('../../solver/exercises/mark/clues.ts')).clues,
    says: (await import('../../words/exercises/hints/mark.ts')).MARK_HINTS,
  }),
  order: async () => ({
    clues: (await import('../../solver/exercises/order/clues.ts')).clues,
    says: (await import('../../words/exercises/hints/order.ts')).ORDER_HINTS,
  }),
  choose: async (problem) => ({
    clues: (await import('../../solver/exercises/choose/clues.ts')).clues,
    says: await (await import('./choice-parts.ts')).choiceParts(problem).hints(),
  }),
  say: async () => ({
    clues: (await import('../../solver/exercises/say/clues.ts')).clues,
    says: (await import('../../words/exercises/hints/say.ts')).SAY_HINTS,
  }),
};

/** A case like this one, worked with other figures; null where there is none. */
async function likeIt<K extends KindName>(
  kind: K,
  problem: ProblemOf<K>,
  built: Element | null,
): Promise<LikeIt | null> {
  if (built) return { says: WORKED_CASE, built };
  const { workedLike } = await import('./like-it.ts');
  const worked = await workedLike(kind, problem);
  return worked && { says: WORKED_CASE, ...worked };
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
  const { clues, says }: Pointing<K> = await POINTING[kind](problem);
  const { look, do: act } = clues(problem, field);
  const next = [look, act][given.length];
  const said = next && says[next.key]?.(next.values);
  if (said) return { hints: [...given, said] };
  const worked = before?.worked ? null : await likeIt(kind, problem, built);
  return { ...(worked && { worked }), hintsDone: true };
}
