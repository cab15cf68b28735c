import type { FieldResult } from '../contract.ts';
import type { WholePiece, WholePieceOptions } from '../whole-piece.ts';

/**
 * - `mounting`: from the cut strings to the pinned leading string
 * - `first-row`: from the first side bundle to the last turning knot of row 1
 * - `let-out`: the beginning of a row that lets a string out
 * - `take-in`: the beginning of a row that takes a string in, or carries the leading string behind
 * - `row`: a whole row in the middle of opening
 * - `sum`: the steps of the fitting sum
 * - `gathering`: from the last row to the trimmed ends
 * - `square-knot`: the two halves of one
 * - `new-string`: joining a new leading string in a row that begins with a turning knot
 * - `evening`: preparing an evening at which everybody makes a piece
 */
export const SEQUENCES = [
  'mounting',
  'first-row',
  'let-out',
  'take-in',
  'row',
  'sum',
  'gathering',
  'square-knot',
  'new-string',
  'evening',
] as const;
export type Sequence = (typeof SEQUENCES)[number];

/** The steps of each sequence. Some come in for some pieces only: a lone string, a third middle string. */
export interface Steps {
  readonly mounting: 'cut' | 'hang-folds' | 'fix-lone' | 'pin-ring' | 'loop-first' | 'pin-leading';
  readonly 'first-row': 'loop-first' | 'pin-leading' | 'turn-first' | 'ordinary' | 'loop-second' | 'turn-second';
  readonly 'let-out': 'free' | 'turn' | 'freed-knot' | 'go-on';
  readonly 'take-in': 'carry' | 'join' | 'turn' | 'go-on' | 'turn-end';
  readonly row: 'free' | 'turn' | 'freed-knot' | 'go-on' | 'end-freed' | 'turn-end';
  readonly sum: 'match' | 'spare' | 'halve' | 'even-or-odd' | 'borrow' | 'on-bar' | 'bundle' | 'folds';
  readonly gathering:
    | 'lay-leading'
    | 'gather-left'
    | 'gather-right'
    | 'lay-middle'
    | 'pass-left'
    | 'pass-right'
    | 'square-first'
    | 'square-second'
    | 'square-again'
    | 'trim';
  readonly 'square-knot': 'first-over' | 'first-up' | 'draw-first' | 'second-over' | 'second-up' | 'draw-second';
  readonly 'new-string': 'turn' | 'lay-both' | 'three-knots' | 'go-on' | 'trim-tails';
  readonly evening: 'measure' | 'try-sums' | 'cut-list' | 'cut' | 'bag' | 'pins';
}
export type OrderStepId = Steps[Sequence];

/** Steps to be put in order; it holds them as they lie there at first, never in their order. */
export interface OrderProblem extends WholePiece {
  readonly kind: 'order';
  readonly of: Sequence;
  readonly steps: readonly OrderStepId[];
}

/** One field a step. */
export type OrderField = `step-${OrderStepId}`;
export type OrderAnswer = Readonly<{ order?: readonly string[] | null | undefined }>;
export type OrderSolution = { readonly order: readonly OrderStepId[] };

/** A step that stands too early is `wrong`, and `first` is what has to come before it. */
export interface OrderResult extends FieldResult {
  readonly first?: OrderStepId;
}

export interface OrderOptions extends WholePieceOptions {
  /** What to put in order; drawn where left out. */
  readonly of?: Sequence | undefined;
}
