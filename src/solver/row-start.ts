import type { Direction, SideName, StartMove } from './piece.ts';

/** What the leading string or a base string does before the first knot of a row, from the edge's two sizes. */
export function moveAtStart(before: number, now: number): StartMove {
  if (now < before) return 'let-out';
  if (now === before) return 'none';
  // From a single edge string the leading string waits outside both strings; from a bundle it waits inside.
  return before === 1 ? 'carry-behind' : 'take-in';
}

/** The direction of a row: row 1 begins on the start side and every row turns. */
export const directionOf = (row: number, startSide: SideName): Direction =>
  (row % 2 === 1) === (startSide === 'left') ? 'rightward' : 'leftward';
