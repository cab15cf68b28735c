import { hints as chooseHints } from './choose/hints.ts';
import type { KindName } from './contract.ts';
import { hints as markHints } from './mark/hints.ts';
import { hints as numberHints } from './number/hints.ts';
import { hints as orderHints } from './order/hints.ts';
import { hints as rowHints } from './row/hints.ts';
import { hints as sayHints } from './say/hints.ts';
import { solving } from './solving.ts';
import { hints as spotHints } from './spot/hints.ts';
import type { Helping } from './steps.ts';
import { hints as sumHints } from './sum/hints.ts';

/**
 * All that a page fetches when help is asked for: hints, and the worked steps they
 * show of a case with other figures.
 */
export const helping: { readonly [K in KindName]: Helping<K> } = {
  sum: { solution: solving.sum, hints: sumHints },
  number: { solution: solving.number, hints: numberHints },
  mark: { solution: solving.mark, hints: markHints },
  row: { solution: solving.row, hints: rowHints },
  spot: { solution: solving.spot, hints: spotHints },
  order: { solution: solving.order, hints: orderHints },
  choose: { solution: solving.choose, hints: chooseHints },
  say: { solution: solving.say, hints: sayHints },
};
