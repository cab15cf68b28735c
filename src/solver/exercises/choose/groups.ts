import type { ChooseAsk } from './problem.ts';

/** The questions by what they are about; the words of each group are fetched apart. */
const CHOOSE_GROUPS = {
  knots: ['knot-direction', 'edge-knot', 'turning-knot', 'leading-string', 'first-move', 'let-out'],
  shape: ['corner-cells', 'closing-end', 'bundle-knot'],
  sum: ['borrow', 'odd-half', 'fold-or-string', 'safe-sheet'],
  work: ['rows-length', 'float', 'colour-change', 'trim', 'spiral'],
} as const satisfies { readonly [group: string]: readonly ChooseAsk[] };
export type ChooseGroupName = keyof typeof CHOOSE_GROUPS;
/** The asks of each group. */
export type ChooseGroup = { readonly [G in ChooseGroupName]: (typeof CHOOSE_GROUPS)[G][number] };

const NAMES = Object.keys(CHOOSE_GROUPS) as ChooseGroupName[]; // keys() forgets which keys it was given

export const groupOf = (ask: ChooseAsk): ChooseGroupName =>
  NAMES.find((name) => (CHOOSE_GROUPS[name] as readonly ChooseAsk[]).includes(ask)) ?? 'work';
