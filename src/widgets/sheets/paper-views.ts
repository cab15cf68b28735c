import type { KindName } from '../../solver/exercises/contract.ts';
import { view as choose } from '../exercise/choose.tsx';
import { view as mark } from '../exercise/mark.tsx';
import { view as number } from '../exercise/number.tsx';
import { view as order } from '../exercise/order.tsx';
import { view as row } from '../exercise/row.tsx';
import { view as say } from '../exercise/say.tsx';
import { view as spot } from '../exercise/spot.tsx';
import { view as sum } from '../exercise/sum.tsx';
import type { KindView } from '../exercise/view.ts';

/** What each kind of exercise puts on paper: its own entry, whose fields become lines to write on. */
export const PAPER: { readonly [K in KindName]: KindView<K> } = { sum, number, mark, row, spot, order, choose, say };
