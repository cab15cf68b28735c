import type { FieldOf, KindName, ProblemOf } from './contract.ts';
import type { Clues, HintKeyOf } from './steps.ts';

type Pointing<K extends KindName> = (problem: ProblemOf<K>, field?: FieldOf<K> | null) => Clues<HintKeyOf<K>>;

/** The first two hints of each kind, without what makes and works the third; a page fetches those of its kind. */
export const pointing: { readonly [K in KindName]: () => Promise<Pointing<K>> } = {
  sum: async () => (await import('./sum/clues.ts')).clues,
  number: async () => (await import('./number/clues.ts')).clues,
  mark: async () => (await import('./mark/clues.ts')).clues,
  row: async () => (await import('./row/clues.ts')).clues,
  spot: async () => (await import('./spot/clues.ts')).clues,
  order: async () => (await import('./order/clues.ts')).clues,
  choose: async () => (await import('./choose/clues.ts')).clues,
  say: async () => (await import('./say/clues.ts')).clues,
};
