import { clues as chooseClues } from './choose/clues.ts';
import type { FieldOf, KindName, ProblemOf } from './contract.ts';
import { clues as markClues } from './mark/clues.ts';
import { clues as numberClues } from './number/clues.ts';
import { clues as orderClues } from './order/clues.ts';
import { clues as sayClues } from './say/clues.ts';
import type { Clues, HintKeyOf } from './steps.ts';
import { clues as sumClues } from './sum/clues.ts';

/** The first two hints of each kind, without what makes and works the third. */
export const pointing: {
  readonly [K in KindName]: (problem: ProblemOf<K>, field?: FieldOf<K> | null) => Clues<HintKeyOf<K>>;
} = { sum: sumClues, number: numberClues, mark: markClues, order: orderClues, choose: chooseClues, say: sayClues };
