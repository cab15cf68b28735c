import type { Slipped, Slips } from '../../missteps/contract.ts';
import type { SlipId, SlipSet } from '../../missteps/ids.ts';
import { readOrder } from './judge.ts';
import type { OrderProblem, OrderSolution, OrderStepId, Sequence } from './problem.ts';
import { allBefore, broken, orderedFor } from './sequence.ts';
import { solve } from './solve.ts';

/** A slip of order: steps that are moved up before another, and how far up they may come. */
interface Moved {
  readonly of: readonly Sequence[];
  /** Moved up together, in their own order. */
  readonly steps: readonly OrderStepId[];
  /** Before this step; where it is not in the sequence, the next of them. */
  readonly before: readonly OrderStepId[];
  /** Whether they may come further up still. */
  readonly further?: boolean;
}

/** Each slip as what is moved up, and to where. */
const MOVED = {
  'turned-before-freeing': { of: ['let-out', 'row'], steps: ['turn'], before: ['free'] },
  'freed-knot-first': { of: ['let-out', 'row'], steps: ['freed-knot'], before: ['turn'] },
  'turned-before-taking-in': { of: ['take-in'], steps: ['turn'], before: ['carry', 'join'] },
  'pinned-before-looping': {
    of: ['mounting', 'first-row'],
    steps: ['pin-leading'],
    before: ['loop-first'],
    further: true,
  },
  'ring-left-loose': { of: ['mounting'], steps: ['loop-first', 'pin-leading'], before: ['pin-ring'] },
  'turned-before-looping': { of: ['first-row'], steps: ['turn-first'], before: ['loop-first'] },
  'borrowed-before-halving': { of: ['sum'], steps: ['borrow'], before: ['even-or-odd'], further: true },
  'folds-before-borrowing': { of: ['sum'], steps: ['folds'], before: ['borrow'], further: true },
  'trimmed-too-early': { of: ['gathering'], steps: ['trim'], before: ['gather-left', 'pass-left'], further: true },
  'trimmed-before-square-knots': { of: ['gathering'], steps: ['trim'], before: ['square-first'] },
  'passed-before-gathering': { of: ['gathering'], steps: ['pass-left', 'pass-right'], before: ['gather-left'] },
  'mirror-half-first': {
    of: ['square-knot'],
    steps: ['second-over', 'second-up', 'draw-second'],
    before: ['first-over'],
  },
  'joined-on-turning-knot': { of: ['new-string'], steps: ['lay-both'], before: ['turn'] },
  'old-end-cut-first': { of: ['new-string'], steps: ['trim-tails'], before: ['three-knots'], further: true },
  'cut-before-measuring': { of: ['evening'], steps: ['cut'], before: ['measure'] },
} as const satisfies { readonly [Id in SlipId]?: Moved };
export type OrderSlip = keyof typeof MOVED;
const ORDER_SLIPS = Object.keys(MOVED) as OrderSlip[]; // keys() forgets which keys it was given

/** The orders of a learner who makes this slip, the likeliest first; none where it can't be made in the sequence. */
function ordersBy(slip: OrderSlip, problem: OrderProblem): OrderStepId[][] {
  const { order } = solve(problem);
  const { of, steps, before, further = false }: Moved = MOVED[slip];
  const target = before.find((step) => order.includes(step));
  if (!of.includes(problem.of) || steps.some((step) => !order.includes(step)) || target === undefined) return [];
  const rest = order.filter((step) => !steps.includes(step));
  const place = rest.indexOf(target);
  const places = further ? Array.from({ length: place + 1 }, (_, up) => place - up) : [place];
  return places.map((at) => [...rest.slice(0, at), ...steps, ...rest.slice(at)]);
}

/** One text for all orders that put the same steps before those they have to wait for. */
const breaks = (problem: OrderProblem, order: readonly OrderStepId[]): string =>
  broken(order, allBefore(orderedFor(problem.of, problem)))
    .map((pair) => pair.join())
    .sort()
    .join(' ');

const every = (problem: OrderProblem, [slip, other]: SlipSet): OrderSolution[] => {
  if (other !== undefined) return [];
  const known = ORDER_SLIPS.find((one) => one === slip);
  const orders = known === undefined ? [] : ordersBy(known, problem);
  return orders.length > 0 ? orders.map((order) => ({ order })) : [solve(problem)];
};

/** The slips of an order. What is told apart is which steps came before those they wait for. */
export const slips: Slips<'order'> = {
  missteps: Object.fromEntries(
    ORDER_SLIPS.map((slip) => [
      slip,
      (problem: OrderProblem): OrderSolution => every(problem, [slip])[0] ?? solve(problem),
    ]),
  ),
  every,
  singles: (problem) =>
    ORDER_SLIPS.flatMap((slip): Slipped<OrderSolution>[] =>
      ordersBy(slip, problem)
        .filter((order) => breaks(problem, order) !== '')
        .map((order) => ({ slips: [slip], answer: { order } })),
    ),
  pairs: () => [],
  like: (problem, answer) => {
    const reading = readOrder(problem, answer);
    const mine = reading.verdict === 'read' ? breaks(problem, reading.value) : null;
    return ({ order }) => mine !== null && mine === breaks(problem, order);
  },
  figuresIn: (problem, answer) => {
    const reading = readOrder(problem, answer);
    return reading.verdict === 'read' ? reading.value.length : 0;
  },
  followUps: () => [],
};
