import { type Problem, type Refusal, refuse, wholeNumberProblem } from '../problem.ts';
import { drawPiece } from './draw-piece.ts';
import type { Level } from './level.ts';
import { type Draw, pick } from './seed.ts';
import type { WholePiece, WholePieceOptions } from './whole-piece.ts';

/**
 * A shaped piece with a row that suits the question, drawn to suit the level, with what is given held. Both
 * bundles are alike but where they are the learner's own.
 *
 * @param suits whether this row of a piece can be asked about
 * @returns a refusal where the figures given do not go together, or no row of the piece suits
 */
export function drawWholePiece(
  next: Draw,
  level: Level,
  options: WholePieceOptions,
  suits: (piece: WholePiece) => boolean,
): WholePiece | Refusal<Problem> {
  const own = options.width !== undefined && options.capacity !== undefined;
  const made = drawPiece(next, level, { ...options, oddMethod: options.oddMethod ?? 'lone-string' }, false, (pair) => {
    const [left, right] = pair;
    return own || left === right;
  });
  if ('ok' in made) return made;
  // Either hand: the start side varies at every level, since the order of the work turns on it.
  const startSide = options.startSide ?? (next(0, 1) === 1 ? 'right' : 'left');
  const piece: WholePiece = { ...made.fit, ...made.piece, startSide: own ? made.fit.startSide : startSide, row: 1 };
  const { height } = piece;
  if (options.row !== undefined) {
    const bad = wholeNumberProblem('row', options.row, { low: 1, high: height });
    if (bad) return refuse(bad);
  }
  const rows = Array.from({ length: height }, (_, index) => ({ ...piece, row: index + 1 })).filter(suits);
  const row = options.row === undefined ? pick(next, rows) : rows.find((one) => one.row === options.row);
  return row ?? refuse({ code: 'no-fit', values: { width: piece.width, capacity: piece.capacity, height } });
}
