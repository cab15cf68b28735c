import type { OddMethod, SideName } from '../../piece.ts';
import type { ColourRun } from '../../thread/row-floats.ts';
import type { Thread, ThreadKind } from '../../thread/thread.ts';
import type { OutlineFigures, OutlineOptions } from '../outline.ts';

/** Asked of a chart and a bar. */
export const FIT_ASKS = ['spare', 'each-side', 'on-bar', 'folds-to-cut'] as const;
/**
 * - `spare`: strands less places, before anything is borrowed
 * - `each-side`: strands in each side bundle, in the end
 * - `on-bar`: strings on the bar, in the end
 * - `folds-to-cut`: folds of the bar and of both sides together, a lone string not among them
 */
export type FitAsk = (typeof FIT_ASKS)[number];

/** Asked of a shaped piece and one of its rows. */
export const IN_ROW_ASKS = ['knots-in-row', 'bundle-in-row', 'corner-cells-in-row'] as const;
export type InRowAsk = (typeof IN_ROW_ASKS)[number];

/** Asked of a shaped piece as a whole; `corner-cells` are those from row 1 to full width. */
export const PIECE_ASKS = ['full-width-row', 'first-closing-row', 'corner-cells'] as const;
export type PieceAsk = (typeof PIECE_ASKS)[number];

/** Asked of the string, and of the time it is tied in. */
export const THREAD_ASKS = [
  'cut-length',
  'base-string-in-all',
  'longest-float',
  'folds-for-class',
  'making-minutes',
] as const;
/**
 * - `cut-length`: mm of one piece; a fold both ends together, a lone string its one end; within a tolerance
 * - `base-string-in-all`: mm of all folds together, the length of one being given
 * - `longest-float`: columns that the longest float inside a row skips
 * - `folds-for-class`: folds for so many learners who make the same piece
 * - `making-minutes`: whole minutes for a piece, the seconds for a knot being given
 */
export type ThreadAsk = (typeof THREAD_ASKS)[number];

export const NUMBER_ASKS = [...FIT_ASKS, ...IN_ROW_ASKS, ...PIECE_ASKS, ...THREAD_ASKS] as const;
/** What is drawn where no ask is named. Seeds on paper count on this list, so a new ask is never added to it. */
export const DRAWN_ASKS = [
  ...FIT_ASKS,
  ...IN_ROW_ASKS,
  ...PIECE_ASKS,
  'cut-length',
  'base-string-in-all',
] as const satisfies readonly NumberAsk[];
export type NumberAsk = FitAsk | InRowAsk | PieceAsk | ThreadAsk;

export interface FitQuestion {
  readonly kind: 'number';
  readonly ask: FitAsk;
  readonly width: number;
  readonly capacity: number;
  /** null for an even width. */
  readonly oddMethod: OddMethod | null;
  readonly startSide: SideName;
}

export interface InRowQuestion extends OutlineFigures {
  readonly kind: 'number';
  readonly ask: InRowAsk;
  /** From 1, at the ring. */
  readonly row: number;
  /** Whose bundle is asked for; null where both are alike, and for the other asks. */
  readonly side: SideName | null;
}

export interface PieceQuestion extends OutlineFigures {
  readonly kind: 'number';
  readonly ask: PieceAsk;
}

/** Where a cut piece hangs; the two sides are cut alike. */
export type CutPlace = 'bar' | 'side' | 'lone';

export interface CutQuestion {
  readonly kind: 'number';
  readonly ask: 'cut-length';
  readonly place: CutPlace;
  readonly width: number;
  readonly height: number;
  /** The cord: mm thick, soft or firm. */
  readonly diameter: number;
  readonly threadKind: ThreadKind;
  /** Thickness of the ring's bar in mm. */
  readonly barThickness: number;
  /** mm from one row to the next. */
  readonly rowPitch: number;
  /** Times the rows' height that an end uses in them. */
  readonly takeUp: number;
  /** mm that one end uses for mounting and finishing, as a whole number. */
  readonly mountingAndFinishing: number;
  /** mm at each end to hold. */
  readonly tail: number;
  /** How far from the solver's figure an answer may lie: 0.05 is five in a hundred. */
  readonly tolerance: number;
}

export interface InAllQuestion {
  readonly kind: 'number';
  readonly ask: 'base-string-in-all';
  /** Base strings that come from folds, an even number. */
  readonly baseStrings: number;
  /** mm of one fold as it is cut. */
  readonly foldLength: number;
}

export interface FloatQuestion {
  readonly kind: 'number';
  readonly ask: 'longest-float';
  /** The row as it is tied, neighbours of one colour together; at least one colour comes twice. */
  readonly runs: readonly ColourRun[];
}

export interface ClassQuestion {
  readonly kind: 'number';
  readonly ask: 'folds-for-class';
  readonly width: number;
  /** Strings on the bar and in each side bundle, all of them from folds. */
  readonly onBar: number;
  readonly bundle: number;
  readonly learners: number;
}

export interface TimeQuestion {
  readonly kind: 'number';
  readonly ask: 'making-minutes';
  readonly knots: number;
  readonly secondsPerKnot: number;
  /** Minutes for mounting and finishing. */
  readonly beside: number;
}

export type ThreadQuestion = CutQuestion | InAllQuestion | FloatQuestion | ClassQuestion | TimeQuestion;

/** One figure to find; it holds the question, never the result. */
export type NumberProblem = FitQuestion | InRowQuestion | PieceQuestion | ThreadQuestion;

/** The only field of a number exercise. */
export type NumberField = 'figure';
export type NumberAnswer = Readonly<{ figure?: number | string | null | undefined }>;
export type NumberSolution = { readonly figure: number };

export interface NumberOptions extends OutlineOptions {
  /** What to ask; drawn where left out. */
  readonly ask?: NumberAsk | undefined;
  /** Row asked about, where the ask is about one; drawn where left out. */
  readonly row?: number | undefined;
  /** The learner's own cord for the thread asks; drawn where left out. */
  readonly thread?: Thread | undefined;
}

const among = <T extends string>(asks: readonly T[], ask: string): ask is T => asks.some((known) => known === ask);

export const isFitQuestion = (problem: NumberProblem): problem is FitQuestion => among(FIT_ASKS, problem.ask);
export const isInRowQuestion = (problem: NumberProblem): problem is InRowQuestion => among(IN_ROW_ASKS, problem.ask);
export const isThreadQuestion = (problem: NumberProblem): problem is ThreadQuestion => among(THREAD_ASKS, problem.ask);
export const isFitAsk = (ask: NumberAsk): ask is FitAsk => among(FIT_ASKS, ask);
export const isInRowAsk = (ask: NumberAsk): ask is InRowAsk => among(IN_ROW_ASKS, ask);
export const isThreadAsk = (ask: NumberAsk): ask is ThreadAsk => among(THREAD_ASKS, ask);
