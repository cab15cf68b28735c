import type { FieldResult, Judged, JudgeOptions } from './contract.ts';

const isTry = ({ verdict }: FieldResult): boolean => verdict !== 'missing' && verdict !== 'unreadable';

/** The fields that are judged at all: those up to `upTo`, or all. */
export const judgedFields = <F extends string>(fields: readonly F[], { upTo }: JudgeOptions<F>): readonly F[] => {
  const end = upTo === undefined ? -1 : fields.indexOf(upTo);
  return end < 0 ? fields : fields.slice(0, end + 1);
};

/**
 * The outcome from the verdicts on single fields.
 *
 * It is `unreadable`, and so no try, when anything cannot be read, or anything that has to be there is not;
 * `right` when every field entered is right; else `not-right`. A field that only follows is not right: the
 * one it follows from is not.
 */
export function conclude<F extends string, R extends FieldResult>(
  order: readonly F[],
  results: { readonly [K in F]?: R },
  { upTo, partial = false }: JudgeOptions<F>,
): Judged<F, R> {
  const listed = order.flatMap((field) => {
    const result = results[field];
    return result === undefined ? [] : [{ field, result }];
  });
  const tries = listed.filter(({ result }) => isTry(result));
  const lastOne = upTo !== undefined && order.includes(upTo);
  const readable =
    tries.length > 0 &&
    listed.every(
      ({ field, result }) => isTry(result) || (result.verdict === 'missing' && (lastOne ? field !== upTo : partial)),
    );
  const first = listed.find(({ result }) => result.verdict !== 'right' && result.verdict !== 'follows');
  return {
    outcome: !readable ? 'unreadable' : tries.every(({ result }) => result.verdict === 'right') ? 'right' : 'not-right',
    fields: results,
    first: first?.field ?? null,
  };
}
