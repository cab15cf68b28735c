import type { SideName } from '../../piece.ts';
import type { WholePiece, WholePieceOptions } from '../whole-piece.ts';

/**
 * - `knot-direction`: the ordinary knots of the row
 * - `edge-knot`: the knot round the bundle on `side`
 * - `turning-knot`: who gets one in the row
 * - `leading-string`: where it is after the row
 * - `first-move`: what happens before the row's first knot
 * - `let-out`: which string of the bundle comes out
 * - `corner-cells`: which cells beside the bundle on `side` are corner cells
 * - `closing-end`: from where the closing rows are counted
 * - `bundle-knot`: what a bundle counts in the row
 * - `borrow`: how many strings are borrowed
 * - `odd-half`: what an odd half asks for
 * - `fold-or-string`: what is cut for one side bundle
 * - `safe-sheet`: which of three plans can be tied on every ring of a range
 * - `rows-length`: what the length of the rows is made of
 * - `float`: what is done with a string that skips `span` columns
 * - `colour-change`: where a new colour may join at an edge with a bundle
 * - `trim`: when the ends are trimmed
 * - `spiral`: what made square knots twist
 */
export const CHOOSE_ASKS = [
  'knot-direction',
  'edge-knot',
  'turning-knot',
  'leading-string',
  'first-move',
  'let-out',
  'corner-cells',
  'closing-end',
  'bundle-knot',
  'borrow',
  'odd-half',
  'fold-or-string',
  'safe-sheet',
  'rows-length',
  'float',
  'colour-change',
  'trim',
  'spiral',
] as const;
export type ChooseAsk = (typeof CHOOSE_ASKS)[number];

/** The rows up to full width, those from the first closing row on, or all. */
export const PARTS = ['opening', 'closing', 'whole'] as const;
export type Part = (typeof PARTS)[number];

/** What can be chosen, by what is asked. */
export interface Choices {
  readonly 'knot-direction': 'forward' | 'backward' | 'in-turn';
  readonly 'edge-knot': 'forward-backward' | 'backward-forward' | 'ordinary';
  readonly 'turning-knot': 'both-bundles' | 'starting-string' | 'every-edge-string' | 'none';
  readonly 'leading-string': 'left-inner' | 'right-inner' | 'left-outer' | 'right-outer';
  readonly 'first-move': 'let-out' | 'take-in' | 'carry-behind' | 'none';
  readonly 'let-out': 'innermost' | 'outermost' | 'two';
  readonly 'corner-cells': 'outside-the-knot' | 'all-of-the-bundle' | 'inside-the-edge';
  readonly 'closing-end': 'last-row' | 'ring' | 'full-width';
  readonly 'bundle-knot': 'one' | 'strings' | 'nothing';
  readonly borrow: 'none' | 'one' | 'two' | 'four';
  readonly 'odd-half': 'one-from-the-bar' | 'left-odd' | 'one-less' | 'bar-kept';
  readonly 'fold-or-string': 'half-as-many-folds' | 'as-many-folds' | 'single-strings' | 'short-folds';
  readonly 'safe-sheet': 'low' | 'likely' | 'high';
  readonly 'rows-length': 'pitch-and-more' | 'centimetres' | 'pitch-alone';
  readonly float: 'leave' | 'catch' | 'pull-tight' | 'end';
  readonly 'colour-change': 'next-ordinary' | 'turning-knot' | 'next-row';
  readonly trim: 'after-square-knots' | 'after-last-row' | 'after-gathering';
  readonly spiral: 'same-half' | 'loose' | 'uneven';
}
export type Choice = Choices[ChooseAsk];

/** One of a few to be chosen; it holds the question and what can be chosen, never which of them is right. */
export interface ChooseProblem extends WholePiece {
  readonly kind: 'choose';
  readonly ask: ChooseAsk;
  /** The edge that is spoken of, where it is one. */
  readonly side: SideName;
  /** Columns that a float skips; for `safe-sheet`, how far the ends of the range lie from the likely capacity. */
  readonly span: number;
  /** In the order in which they stand on the page. */
  readonly choices: readonly Choice[];
}

/** The only field. */
export type ChooseField = 'choice';
export type ChooseAnswer = Readonly<{ choice?: string | null | undefined }>;
export type ChooseSolution = { readonly choice: Choice };

export interface ChooseOptions extends WholePieceOptions {
  /** What to ask; drawn where left out. */
  readonly ask?: ChooseAsk | undefined;
  /** The edge asked about; drawn where left out. */
  readonly side?: SideName | undefined;
  /** Where the row is drawn from; left out, the whole piece. */
  readonly part?: Part | undefined;
  /** Columns that the float skips, 1 to 30; drawn where left out. */
  readonly span?: number | undefined;
}
