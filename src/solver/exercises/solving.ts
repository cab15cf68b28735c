import { solution as solveChoose } from './choose/solution.ts';
import type { KindName } from './contract.ts';
import { solution as solveMark } from './mark/solution.ts';
import { solution as solveNumber } from './number/solution.ts';
import { solution as solveOrder } from './order/solution.ts';
import { solution as solveRow } from './row/solution.ts';
import { solution as solveSay } from './say/solution.ts';
import { solution as solveSpot } from './spot/solution.ts';
import type { Helping } from './steps.ts';
import { solution as solveSum } from './sum/solution.ts';

/** The worked solution of each kind. */
export const solving: { readonly [K in KindName]: Helping<K>['solution'] } = {
  sum: solveSum,
  number: solveNumber,
  mark: solveMark,
  row: solveRow,
  spot: solveSpot,
  order: solveOrder,
  choose: solveChoose,
  say: solveSay,
};
