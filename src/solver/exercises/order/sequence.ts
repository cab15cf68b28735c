import { rowEnds, sumIn, type WholePiece } from '../whole-piece.ts';
import type { OrderStepId, Sequence, Steps } from './problem.ts';

/** The first of the two has to be done before the second. */
export type Before<Id extends string = OrderStepId> = readonly [first: Id, then: Id];

/**
 * A sequence of work as a partial order: its steps in one order that is right, and what has to come before what.
 * Steps that no chain of these links may stand either way round.
 */
export interface Ordered<Id extends string = OrderStepId> {
  readonly steps: readonly Id[];
  readonly before: readonly Before<Id>[];
}

/** Each step after the one before it. */
const chain = <Id extends string>(...steps: Id[]): Before<Id>[] =>
  steps.slice(1).map((then, index): Before<Id> => [steps[index] ?? then, then]);

function takeIn(piece: WholePiece): Ordered<Steps['take-in']> {
  const { move, endBundle } = rowEnds(piece);
  const first = move === 'carry-behind' ? 'carry' : 'join';
  const steps: Steps['take-in'][] = [first, 'turn', 'go-on', ...(endBundle > 1 ? (['turn-end'] as const) : [])];
  return { steps, before: chain(...steps) };
}

function gathering(piece: WholePiece): Ordered<Steps['gathering']> {
  const singles = piece.width - piece.closing[0] - piece.closing[1];
  // Two strings are left in the middle to tie with, three where the singles are an odd number.
  const gathers = singles > 3 ? (['gather-left', 'gather-right'] as const) : [];
  const middle = singles % 2 === 1 ? (['lay-middle'] as const) : [];
  const passes = ['pass-left', 'pass-right'] as const;
  const held = [...gathers, ...middle];
  return {
    steps: ['lay-leading', ...held, ...passes, 'square-first', 'square-second', 'square-again', 'trim'],
    before: [
      ...held.map((step): Before<Steps['gathering']> => ['lay-leading', step]),
      ...middle.flatMap((step) => gathers.map((gather): Before<Steps['gathering']> => [gather, step])),
      ...passes.flatMap((pass) =>
        (held.length > 0 ? held : (['lay-leading'] as const)).map((step): Before<Steps['gathering']> => [step, pass]),
      ),
      ...passes.map((pass): Before<Steps['gathering']> => [pass, 'square-first']),
      ...chain<Steps['gathering']>('square-first', 'square-second', 'square-again', 'trim'),
    ],
  };
}

function mounting(piece: WholePiece): Ordered<Steps['mounting']> {
  const lone = sumIn(piece).loneStrings > 0 ? (['fix-lone'] as const) : [];
  return {
    steps: ['cut', 'hang-folds', ...lone, 'pin-ring', 'loop-first', 'pin-leading'],
    before: [
      ...chain<Steps['mounting']>('cut', 'hang-folds', 'pin-ring', 'loop-first', 'pin-leading'),
      ...lone.flatMap((step): Before<Steps['mounting']>[] => [
        ['cut', step],
        [step, 'pin-ring'],
      ]),
    ],
  };
}

/** Every sequence, for a piece and a row of it (craft, sections 3, 5, 6, 7 and 8). */
const ORDERED: { readonly [S in Sequence]: (piece: WholePiece) => Ordered<Steps[S]> } = {
  mounting,
  'first-row': () => ({
    steps: ['loop-first', 'pin-leading', 'turn-first', 'ordinary', 'loop-second', 'turn-second'],
    before: [
      ...chain<Steps['first-row']>('loop-first', 'pin-leading', 'turn-first', 'ordinary', 'turn-second'),
      // The far bundle may be looped through at any time before its knot.
      ['loop-second', 'turn-second'],
    ],
  }),
  'let-out': () => ({
    steps: ['free', 'turn', 'freed-knot', 'go-on'],
    before: chain<Steps['let-out']>('free', 'turn', 'freed-knot', 'go-on'),
  }),
  'take-in': takeIn,
  row: () => ({
    steps: ['free', 'turn', 'freed-knot', 'go-on', 'end-freed', 'turn-end'],
    before: chain<Steps['row']>('free', 'turn', 'freed-knot', 'go-on', 'end-freed', 'turn-end'),
  }),
  sum: () => ({
    steps: ['match', 'spare', 'halve', 'even-or-odd', 'borrow', 'on-bar', 'bundle', 'folds'],
    before: [
      ...chain<Steps['sum']>('match', 'spare', 'halve', 'even-or-odd', 'borrow', 'on-bar', 'folds'),
      ['borrow', 'bundle'],
      ['bundle', 'folds'],
    ],
  }),
  gathering,
  'square-knot': () => ({
    steps: ['first-over', 'first-up', 'draw-first', 'second-over', 'second-up', 'draw-second'],
    before: chain<Steps['square-knot']>(
      'first-over',
      'first-up',
      'draw-first',
      'second-over',
      'second-up',
      'draw-second',
    ),
  }),
  'new-string': () => ({
    steps: ['turn', 'lay-both', 'three-knots', 'go-on', 'trim-tails'],
    before: chain<Steps['new-string']>('turn', 'lay-both', 'three-knots', 'go-on', 'trim-tails'),
  }),
  evening: () => ({
    steps: ['measure', 'try-sums', 'cut-list', 'cut', 'bag', 'pins'],
    before: [
      ...chain<Steps['evening']>('measure', 'try-sums', 'cut-list', 'cut', 'bag'),
      // Pins are counted when the bags are packed or before: any time.
    ],
  }),
};

/** The steps of a sequence, and what has to come before what. */
export const orderedFor = (of: Sequence, piece: WholePiece): Ordered => ORDERED[of](piece);

/** Every pair that is linked, by one rule or by several in a row. */
export function allBefore({ steps, before }: Ordered): Before[] {
  return steps.flatMap((first) => {
    const reached = new Set<OrderStepId>();
    const open: OrderStepId[] = [first];
    for (let step = open.pop(); step !== undefined; step = open.pop())
      for (const [from, then] of before)
        if (from === step && !reached.has(then)) {
          reached.add(then);
          open.push(then);
        }
    return [...reached].map((then): Before => [first, then]);
  });
}

/** The rules that an order breaks; empty where it is right. */
export const broken = (order: readonly OrderStepId[], before: readonly Before[]): Before[] =>
  before.filter(([first, then]) => order.indexOf(then) < order.indexOf(first));
