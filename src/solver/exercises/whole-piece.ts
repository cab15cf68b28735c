import { opposite, type SideName, type StartMove } from '../piece.ts';
import { directionOf, moveAtStart } from '../row-start.ts';
import { type FitFigures, sumOf } from './figures.ts';
import { bundlesIn, OUTLINE_RULES, type OutlineFigures, type OutlineOptions, type Pair } from './outline.ts';
import type { SumFigures } from './sum/problem.ts';
import { workOut } from './sum/solve.ts';

/** A piece on its ring, and one row of it: what a question about the order of the work speaks of. */
export interface WholePiece extends FitFigures, OutlineFigures {
  /** The row that is spoken of, from 1. */
  readonly row: number;
}

export interface WholePieceOptions extends OutlineOptions {
  /** The row spoken of; drawn where left out. */
  readonly row?: number | undefined;
}

/** How a row begins and ends (craft, section 5): bundles in columns, a single edge string counting 1. */
export interface RowEnds {
  /** The side on which the row begins. */
  readonly start: SideName;
  readonly end: SideName;
  readonly startBundle: number;
  readonly endBundle: number;
  /** The same two edges in the row before; in row 1 as they were mounted. */
  readonly startBefore: number;
  readonly endBefore: number;
  readonly move: StartMove;
  /** Whether the row begins with a turning knot: round a bundle, or round the last string of one. */
  readonly turnsAtStart: boolean;
}

const at = ([left, right]: Pair, side: SideName): number => (side === 'left' ? left : right);

/** The two ends of a row, by the rules of the outline. */
export function rowEnds(piece: WholePiece, row: number = piece.row): RowEnds {
  const start = directionOf(row, piece.startSide) === 'rightward' ? 'left' : 'right';
  const end = opposite(start);
  const now = bundlesIn(OUTLINE_RULES, piece, row);
  const before = bundlesIn(OUTLINE_RULES, piece, Math.max(1, row - 1));
  const startBundle = at(now, start);
  const startBefore = at(before, start);
  return {
    start,
    end,
    startBundle,
    endBundle: at(now, end),
    startBefore,
    endBefore: at(before, end),
    move: moveAtStart(startBefore, startBundle),
    turnsAtStart: startBundle > 1 || startBefore > 1,
  };
}

/** The fitting sum of the piece, worked out. */
export const sumIn = (piece: WholePiece): Readonly<SumFigures> => workOut(sumOf(piece));

/** Figures by name, for sentences about a piece and a row of it. */
export type Facts = Readonly<Record<string, number | string>>;

/**
 * The figures that sentences about the piece speak in: its sum, its turning points, and the row with its two
 * ends. `strands` are those of the larger bundle; `left` and `right` are columns tied as one in the row.
 */
export function factsOf(piece: WholePiece): Facts {
  const { width, capacity, height, startSide, row, bundles, closing, oddMethod, openingStep, closingStep } = piece;
  const { places, spare, eachSide, borrowed, onBar, bundle, foldsOnBar, foldsEachSide, loneStrings, firstRowKnots } =
    sumIn(piece);
  const { start, end, startBundle, endBundle, startBefore } = rowEnds(piece);
  const now = bundlesIn(OUTLINE_RULES, piece, row);
  return {
    width,
    capacity,
    height,
    row,
    places,
    spare,
    eachSide,
    borrowed,
    onBar,
    strands: bundle,
    foldsOnBar,
    foldsEachSide,
    loneStrings,
    firstRowKnots,
    oddMethod: oddMethod ?? 'even',
    startSide,
    mountedLeft: bundles[0],
    mountedRight: bundles[1],
    closingLeft: closing[0],
    closingRight: closing[1],
    openingStep,
    closingStep,
    fullWidthRow: OUTLINE_RULES.fullWidthRow(piece),
    firstClosingRow: OUTLINE_RULES.firstClosingRow(piece),
    knots: OUTLINE_RULES.knots(piece, now),
    left: now[0],
    right: now[1],
    start,
    end,
    startBundle,
    endBundle,
    startBefore,
    single: width - now[0] - now[1],
    knot: start === 'left' ? 'forward knot' : 'backward knot',
    otherKnot: start === 'left' ? 'backward knot' : 'forward knot',
    startTurn: start === 'left' ? 'backward-forward knot' : 'forward-backward knot',
    endTurn: start === 'left' ? 'forward-backward knot' : 'backward-forward knot',
  };
}
