import { SEQUENCES, type Sequence } from '../../../solver/exercises/order/problem.ts';
import type { OrderStepKey } from '../../../solver/exercises/order/solution.ts';
import { orderStepWords } from '../order.ts';
import { ORDER_REASONS } from '../order-reasons.ts';
import type { Saying } from './saying.ts';

const saying = (of: Sequence): Saying => [
  ({ step, after, ...values }) => {
    const reason = ORDER_REASONS[of][`${after} ${step}`];
    const does = orderStepWords(of, String(step), values);
    return reason === undefined ? does : `${does} ${reason}`;
  },
];

/** The steps of every sequence, each with why it could not come earlier. */
export const ORDER_STEPS = Object.fromEntries(SEQUENCES.map((of) => [`order:${of}`, saying(of)])) as Readonly<
  Record<OrderStepKey, Saying>
>; // fromEntries forgets which keys it was given; SEQUENCES holds them all
