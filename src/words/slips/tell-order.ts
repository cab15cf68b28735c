import { orderFacts } from '../../solver/exercises/order/facts.ts';
import type { OrderSlip } from '../../solver/exercises/order/missteps.ts';
import { ORDER_SLIP_WORDS } from './order.ts';
import type { Tell } from './telling.ts';

/** What lies behind an order. */
export const tellOrder: Tell = (slip, problem) =>
  problem.kind === 'order' && slip in ORDER_SLIP_WORDS
    ? ORDER_SLIP_WORDS[slip as OrderSlip](orderFacts(problem))
    : null;
