import { judge as judgeChoose } from './choose/judge.ts';
import { solve as solveChoose } from './choose/solve.ts';
import type { Asking, KindName } from './contract.ts';
import { making } from './making.ts';
import { judge as judgeMark } from './mark/judge.ts';
import { solve as solveMark } from './mark/solve.ts';
import { judge as judgeNumber } from './number/judge.ts';
import { solve as solveNumber } from './number/solve.ts';
import { judge as judgeOrder } from './order/judge.ts';
import { solve as solveOrder } from './order/solve.ts';
import { judge as judgeRow } from './row/judge.ts';
import { solve as solveRow } from './row/solve.ts';
import { judge as judgeSay } from './say/judge.ts';
import { solve as solveSay } from './say/solve.ts';
import { judge as judgeSpot } from './spot/judge.ts';
import { solve as solveSpot } from './spot/solve.ts';
import { judge as judgeSum } from './sum/judge.ts';
import { solve as solveSum } from './sum/solve.ts';

/**
 * All that a page needs to ask an exercise and to mark it, by kind. No slips and no worked steps are in here:
 * a page fetches those (`helping.ts`) when the first wrong answer or the first hint asks for them.
 */
export const asking: { readonly [K in KindName]: Asking<K> } = {
  sum: { ...making.sum, solve: solveSum, judge: judgeSum },
  number: { ...making.number, solve: solveNumber, judge: judgeNumber },
  mark: { ...making.mark, solve: solveMark, judge: judgeMark },
  row: { ...making.row, solve: solveRow, judge: judgeRow },
  spot: { ...making.spot, solve: solveSpot, judge: judgeSpot },
  order: { ...making.order, solve: solveOrder, judge: judgeOrder },
  choose: { ...making.choose, solve: solveChoose, judge: judgeChoose },
  say: { ...making.say, solve: solveSay, judge: judgeSay },
};
