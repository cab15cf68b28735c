import type { Fit } from '../piece.ts';
import { type Figure, figureOf, measuredFigure, multipleOf, type Spread, sumOf } from './figure.ts';
import type { ReadThread } from './thread.ts';

/** Seconds for one knot: practised, steady, first time (craft, section 9). */
const SECONDS_PER_KNOT: Spread = { low: 12, likely: 20, high: 30 };
/** Seconds for the rest of the work. Our own timing, an estimate; no swatch measures it. */
const LARKS_HEAD = 45;
const LONE_STRING = 60;
const SIDE_FOLD = 40;
/** Gathering, square knots, tails and trimming. */
const FINISHING = 600;

/** Seconds to make the piece. */
export interface MakingTime extends Figure {
  readonly parts: {
    /** All knots of the chart. */
    readonly knotting: Figure;
    /** Fixing folds on the bar and looping the side folds through the ring. */
    readonly mounting: Figure;
    readonly finishing: Figure;
  };
}

/** Practised and first-time hands differ over the rest of the work as they do over a knot. */
const byHand = (seconds: number): Figure =>
  figureOf('estimate', (bound) => (seconds * SECONDS_PER_KNOT[bound]) / SECONDS_PER_KNOT.likely);

/**
 * Seconds to make a piece of so many knots: knots, mounting, finishing. It says `measured` when the seconds
 * for a knot were; mounting and finishing stay estimates.
 */
export function makingTime(knots: number, fit: Fit, thread: Pick<ReadThread, 'measured'>): MakingTime {
  const { secondsPerKnot } = thread.measured;
  const perKnot =
    typeof secondsPerKnot === 'number'
      ? measuredFigure(secondsPerKnot)
      : figureOf('estimate', (bound) => SECONDS_PER_KNOT[bound]);
  const knotting = multipleOf(perKnot, knots);
  const mounting = byHand(
    fit.folds * LARKS_HEAD + fit.loneStrings * LONE_STRING + (fit.left.folds + fit.right.folds) * SIDE_FOLD,
  );
  const finishing = byHand(FINISHING);
  return {
    ...sumOf([knotting, mounting, finishing]),
    source: knotting.source,
    parts: { knotting, mounting, finishing },
  };
}
