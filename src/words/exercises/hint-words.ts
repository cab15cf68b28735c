import type { KindName } from '../../solver/exercises/contract.ts';
import type { HintKeyOf } from '../../solver/exercises/steps.ts';
import type { Step } from '../../solver/problem.ts';
import { CHOOSE_HINTS } from './hints/choose.ts';
import type { Hints } from './hints/hint.ts';
import { MARK_HINTS } from './hints/mark.ts';
import { NUMBER_HINTS } from './hints/number.ts';
import { ORDER_HINTS } from './hints/order.ts';
import { ROW_HINTS } from './hints/row.ts';
import { ROWS_HINTS } from './hints/rows.ts';
import { SAY_HINTS } from './hints/say.ts';
import { SPOT_HINTS } from './hints/spot.ts';
import { SUM_HINTS } from './hints/sum.ts';

export { ANOTHER_QUESTION, WORKED_CASE } from './hints/hint.ts';

/** All kinds together, for Node; a page fetches the one it needs. */
const HINTS: { readonly [K in KindName]: Hints<K> } = {
  sum: SUM_HINTS,
  number: { ...NUMBER_HINTS, ...ROWS_HINTS },
  mark: MARK_HINTS,
  row: ROW_HINTS,
  spot: SPOT_HINTS,
  order: ORDER_HINTS,
  choose: CHOOSE_HINTS,
  say: SAY_HINTS,
};

/** A hint in words: where to look (`look`) or what to do (`do`). */
export function hintWords<K extends KindName>(kind: K, { key, values }: Step<HintKeyOf<K>>): string {
  const says: Hints<K> = HINTS[kind];
  return says[key](values);
}
