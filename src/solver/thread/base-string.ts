import { coreSpread } from './core.ts';
import { type Figure, figureOf, wholeUp } from './figure.ts';
import type { Pitches } from './pitch.ts';
import type { ReadThread } from './thread.ts';

/** Where a cut piece hangs: a fold on the bar, a fold in a side bundle, or the single string of an odd width. */
export type PiecePlace = 'bar' | 'left' | 'right' | 'lone';

/** mm, all from the craft, section 9. */
const SIDE_SLACK = 5;
const HIDDEN_TAIL = 40;
const TO_HOLD = 90;
/** Knotted rows take up a little more string than they are high. */
const TAKE_UP = 1.06;
/** Turns' worth of string that gathering and square knots use. */
const FINISHING_TURNS = 12;
/** Pieces are cut to the next 5 mm. */
const CUT_TO = 5;

/** mm that one end uses at the ring, before row 1. */
function mountingLength(place: PiecePlace, { diameter, barThickness }: ReadThread): number {
  const turn = Math.PI * (barThickness + diameter);
  if (place === 'left' || place === 'right') return turn / 2 + SIDE_SLACK;
  return turn + 2 * diameter + (place === 'lone' ? HIDDEN_TAIL : 0);
}

/**
 * mm to cut for one piece: both ends of a fold, the one end of a lone string; rounded up to the next 5 mm
 * once, at the end (craft, section 9). Measured when the row pitch is.
 */
export function pieceLength(
  place: PiecePlace,
  size: { readonly width: number; readonly height: number },
  thread: ReadThread,
  pitches: Pitches,
): Figure {
  // The last bundle and the strings it takes in: at most every string of the piece.
  const finished = coreSpread(size.width, thread);
  const mounting = mountingLength(place, thread);
  const ends = place === 'lone' ? 1 : 2;
  return figureOf(pitches.row.source, (bound) => {
    const rows = size.height * pitches.row[bound] * TAKE_UP;
    const finishing = FINISHING_TURNS * (finished[bound] + thread.diameter);
    return wholeUp((ends * (mounting + rows + finishing + TO_HOLD)) / CUT_TO) * CUT_TO;
  });
}
