/** What marks an order and says why a step waits. A page fetches it with the first check. */
export { judge } from '../../solver/exercises/order/judge.ts';
export { orderVerdictWords } from '../../words/exercises/order-verdicts.ts';
export { ORDER_OUTCOMES as outcomes } from '../../words/exercises/whole-verdicts.ts';
