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

/** Asked of how a chart is read and placed. */
export const CHART_ASKS = ['column-of-knot', 'knots-of-colour', 'plain-rows-above'] as const;
/**
 * - `column-of-knot`: the column, counted from the left, of a row's knot, counted as it is tied
 * - `knots-of-colour`: knots that the leading string of one colour ties in a row
 * - `plain-rows-above`: the fewest plain rows at the ring that keep the picture's top out of the corner cells
 */
export type ChartAsk = (typeof CHART_ASKS)[number];

/** Asked of a ring and a cord, before anything is planned. */
export const MEASURE_ASKS = ['capacity-low', 'capacity-by-swatch'] as const;
/**
 * - `capacity-low`: columns the bar takes at the least, from ten turns of the cord round a pencil
 * - `capacity-by-swatch`: columns it takes, from a swatch that was tied and measured
 */
export type MeasureAsk = (typeof MEASURE_ASKS)[number];

export const NUMBER_ASKS = [
  ...FIT_ASKS,
  ...IN_ROW_ASKS,
  ...PIECE_ASKS,
  ...THREAD_ASKS,
  ...CHART_ASKS,
  ...MEASURE_ASKS,
] as const;
export type NumberAsk = FitAsk | InRowAsk | PieceAsk | ThreadAsk | ChartAsk | MeasureAsk;
/**
 * What chance draws from where no ask is named. A seed gives the same for ever, on paper too, so a new ask is never
 * added to it.
 */
export const DRAWN_ASKS = [
  ...FIT_ASKS,
  ...IN_ROW_ASKS,
  ...PIECE_ASKS,
  'cut-length',
  'base-string-in-all',
] as const satisfies readonly NumberAsk[];

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

export interface ColumnQuestion extends OutlineFigures {
  readonly kind: 'number';
  readonly ask: 'column-of-knot';
  readonly row: number;
  /** Counted from 1 as the row is tied, a bundle's knot among them. */
  readonly knot: number;
  /** Where row 1 begins. */
  readonly startSide: SideName;
}

/** Neighbouring cells of one colour in a row. */
export interface Stretch {
  readonly colour: string;
  readonly cells: number;
}

export interface ColourQuestion extends OutlineFigures {
  readonly kind: 'number';
  readonly ask: 'knots-of-colour';
  /** A row of full width. */
  readonly row: number;
  /** From left to right; neighbours differ in colour. */
  readonly stretches: readonly Stretch[];
  /** The colour asked for. */
  readonly colour: string;
}

export interface PlainRowsQuestion extends OutlineFigures {
  readonly kind: 'number';
  readonly ask: 'plain-rows-above';
  /** The picture's first row, from 1. */
  readonly pictureRow: number;
  /** The picture's outermost column in that row, counted from 1 from either edge. */
  readonly inset: number;
}

export type ChartQuestion = ColumnQuestion | ColourQuestion | PlainRowsQuestion;
export type RowsQuestion = InRowQuestion | PieceQuestion | ChartQuestion;

export interface TurnsQuestion {
  readonly kind: 'number';
  readonly ask: 'capacity-low';
  /** Inner width of the bar in mm. */
  readonly barWidth: number;
  /** mm that ten turns take side by side. */
  readonly tenTurns: number;
  readonly threadKind: ThreadKind;
  /** A column of knots in cord diameters, at the least and at the most. */
  readonly narrowest: number;
  readonly widest: number;
}

export interface SwatchQuestion {
  readonly kind: 'number';
  readonly ask: 'capacity-by-swatch';
  readonly barWidth: number;
  /** Knots side by side in the swatch. */
  readonly knots: number;
  /** mm they take. */
  readonly swatchWidth: number;
}

export type MeasureQuestion = TurnsQuestion | SwatchQuestion;

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
export type NumberProblem = FitQuestion | RowsQuestion | ThreadQuestion | MeasureQuestion;

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
export const isChartQuestion = (problem: NumberProblem): problem is ChartQuestion => among(CHART_ASKS, problem.ask);
export const isMeasureQuestion = (problem: NumberProblem): problem is MeasureQuestion =>
  among(MEASURE_ASKS, problem.ask);
export const isRowsQuestion = (problem: NumberProblem): problem is RowsQuestion =>
  isInRowQuestion(problem) || isChartQuestion(problem) || among(PIECE_ASKS, problem.ask);
export const isFitAsk = (ask: NumberAsk): ask is FitAsk => among(FIT_ASKS, ask);
export const isInRowAsk = (ask: NumberAsk): ask is InRowAsk => among(IN_ROW_ASKS, ask);
export const isChartAsk = (ask: NumberAsk): ask is ChartAsk => among(CHART_ASKS, ask);
export const isMeasureAsk = (ask: NumberAsk): ask is MeasureAsk => among(MEASURE_ASKS, ask);
export const isThreadAsk = (ask: NumberAsk): ask is ThreadAsk => among(THREAD_ASKS, ask);
