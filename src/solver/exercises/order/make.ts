import { choiceProblem, type Problem, type Refusal, refuse } from '../../problem.ts';
import { drawWholePiece } from '../draw-whole-piece.ts';
import { knownLevel, type Level } from '../level.ts';
import { type Draw, draw, pick, type Seed } from '../seed.ts';
import { rowEnds, type WholePiece } from '../whole-piece.ts';
import { type OrderOptions, type OrderProblem, type OrderStepId, SEQUENCES, type Sequence } from './problem.ts';
import { broken, type Ordered, orderedFor } from './sequence.ts';

const SUITS: { readonly [S in Sequence]?: (piece: WholePiece) => boolean } = {
  'let-out': (piece) => rowEnds(piece).move === 'let-out' && rowEnds(piece).startBundle > 1,
  // Four steps teach more than three: the far edge is a bundle too.
  'take-in': (piece) => {
    const { move, endBundle } = rowEnds(piece);
    return (move === 'take-in' || move === 'carry-behind') && endBundle > 1;
  },
  row: (piece) => {
    const { move, startBundle, endBundle, endBefore } = rowEnds(piece);
    return move === 'let-out' && startBundle > 1 && endBundle > 1 && endBundle < endBefore;
  },
  'new-string': (piece) => piece.row > 1 && rowEnds(piece).startBundle > 1,
  gathering: (piece) => piece.row === piece.height,
};

/** The fewest rules that steps break as they lie there at first: one stroke of luck is not enough. */
const LEAST_BROKEN = 2;

/** The steps in an order of the seed's that is far from right. */
function muddled(next: Draw, { steps, before }: Ordered): OrderStepId[] {
  for (let tried = 0; tried < 60; tried += 1) {
    const left = [...steps];
    const order: OrderStepId[] = [];
    while (left.length > 0) order.push(...left.splice(next(0, left.length - 1), 1));
    if (broken(order, before).length >= LEAST_BROKEN) return order;
  }
  return [...steps].reverse();
}

/**
 * Steps to put in order, for a piece and a row of it. The sequence is drawn where `options` name none. A level that
 * is not one of the four counts as `mixed`.
 *
 * @returns the problem; a refusal only where `options` hold figures that do not go together, or a piece that has no
 *   such row
 */
export function make(seed: Seed, level: Level): OrderProblem;
export function make(seed: Seed, level: Level, options: OrderOptions): OrderProblem | Refusal<Problem>;
export function make(seed: Seed, level: Level, options: OrderOptions = {}): OrderProblem | Refusal<Problem> {
  const next = draw(seed);
  const drawn = pick(next, SEQUENCES) ?? 'mounting';
  const of = options.of ?? drawn;
  const bad = choiceProblem('of', of, SEQUENCES);
  if (bad) return refuse(bad);
  const suits = SUITS[of] ?? (({ row }: WholePiece) => row === 1);
  // Some pieces have no such row: bundles of two let out their string and are none.
  let piece = drawWholePiece(next, knownLevel(level), options, suits);
  for (let tried = 0; tried < 60 && 'ok' in piece; tried += 1)
    piece = drawWholePiece(next, knownLevel(level), options, suits);
  if ('ok' in piece) return piece;
  return { kind: 'order', of, ...piece, steps: muddled(next, orderedFor(of, piece)) };
}
