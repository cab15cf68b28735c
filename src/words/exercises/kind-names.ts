import type { KindName } from '../../solver/exercises/contract.ts';

/** What an exercise is, where a teacher chooses among them. */
export const KIND_NAMES: Readonly<Record<KindName, string>> = {
  sum: 'figures of a sum',
  number: 'one figure',
  mark: 'cells to mark',
  row: 'a row to tie',
  spot: 'a fault to find',
  order: 'steps to put in order',
  choose: 'a choice',
  say: 'something to explain',
};
