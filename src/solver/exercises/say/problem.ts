import type { WholePiece, WholePieceOptions } from '../whole-piece.ts';

/**
 * - `two-borrowed`: why two strings are borrowed, and not one or four
 * - `bundle-one-knot`: why a bundle counts as one knot
 * - `sides-even`: why each side bundle is even
 * - `leading-inside`: why the leading string has to be on the inner side of a bundle
 * - `closing-from-the-end`: why the closing rows are counted from the last row
 * - `rows-short`: why the rows near the ring have fewer knots than the chart has columns
 * - `trim-last`: why the ends are trimmed last
 */
export const SAY_TOPICS = [
  'two-borrowed',
  'bundle-one-knot',
  'sides-even',
  'leading-inside',
  'closing-from-the-end',
  'rows-short',
  'trim-last',
] as const;
export type SayTopic = (typeof SAY_TOPICS)[number];

/** The points of each model answer, in the order in which it makes them. */
export const SAY_POINTS = {
  'two-borrowed': ['half-odd', 'folds-are-twos', 'one-for-each'],
  'bundle-one-knot': ['held-as-one', 'one-base', 'one-cell'],
  'sides-even': ['folds-are-twos', 'no-half-fold', 'both-alike'],
  'leading-inside': ['next-knot', 'turning-returns', 'no-jump'],
  'closing-from-the-end': ['last-is-whole', 'one-a-row', 'count-back'],
  'rows-short': ['tied-as-one', 'corner-cells', 'not-a-fault'],
  'trim-last': ['held-by-nothing', 'tied-with', 'needs-length'],
} as const satisfies { readonly [T in SayTopic]: readonly string[] };
export type SayPoint = (typeof SAY_POINTS)[SayTopic][number];

/** Something to explain in a sentence or two, about a piece and a row of it. */
export interface SayProblem extends WholePiece {
  readonly kind: 'say';
  readonly topic: SayTopic;
}

/** The only field that is judged: what was ticked. */
export type SayField = 'points';
/** Points ticked after comparing; no list at all before that. What was written is for the learner alone. */
export type SayAnswer = Readonly<{ points?: readonly string[] | null | undefined }>;
export type SaySolution = { readonly points: readonly SayPoint[] };

export interface SayOptions extends WholePieceOptions {
  /** What to explain; drawn where left out. */
  readonly topic?: SayTopic | undefined;
}
