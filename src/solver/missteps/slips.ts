import { slips as choose } from '../exercises/choose/missteps.ts';
import type { KindName } from '../exercises/contract.ts';
import { slips as mark } from '../exercises/mark/missteps.ts';
import { slips as number } from '../exercises/number/missteps.ts';
import { slips as order } from '../exercises/order/missteps.ts';
import { slips as row } from '../exercises/row/missteps.ts';
import { slips as say } from '../exercises/say/missteps.ts';
import { slips as spot } from '../exercises/spot/missteps.ts';
import { slips as sum } from '../exercises/sum/missteps.ts';
import type { Slips } from './contract.ts';

/** The slips of every kind; a kind that is forgotten here does not compile. */
export const slipsOf: { readonly [K in KindName]: Slips<K> } = { sum, number, mark, row, spot, order, choose, say };
