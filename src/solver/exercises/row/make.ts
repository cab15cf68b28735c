import type { SideName } from '../../piece.ts';
import { choiceProblem, type Problem, type Refusal, refuse, wholeNumberProblem } from '../../problem.ts';
import { directionOf } from '../../row-bundles.ts';
import { drawPiece } from '../draw-piece.ts';
import { knownLevel, type Level } from '../level.ts';
import { bundlesIn, OUTLINE_RULES, type OutlineFigures, type Pair } from '../outline.ts';
import { draw, pick, type Seed } from '../seed.ts';
import { ROW_PHASES, type RowChange, type RowOptions, type RowPhase, type RowProblem } from './problem.ts';
import { bundlesAfter } from './tie.ts';

/** Knots of a row that is drawn here, both ends counting: enough to have a middle, and few enough to tie on a page. */
const DRAWN = { low: 4, high: 9 };
/** Knots of a row from a piece of the learner's own. */
const MOST_OWN = 12;

const isEasy = (level: Level): boolean => level === 'worked' || level === 'half-worked';

/** Small pieces that hang on a bar: single strings between two bundles, opened and closed again. */
function smallPieces(level: Level): OutlineFigures[] {
  const most = isEasy(level) ? 4 : 5;
  const pieces: OutlineFigures[] = [];
  for (let bundle = 2; bundle <= most; bundle += 1)
    for (let onBar = 2; onBar <= 5; onBar += 1) {
      const width = onBar + 2 * bundle;
      pieces.push({
        width,
        height: 2 * bundle + 6,
        bundles: [bundle, bundle],
        closing: [bundle, bundle],
        openingStep: 1,
        closingStep: 1,
      });
    }
  return pieces;
}

const changeBetween = (before: Pair, now: Pair): RowChange =>
  now[0] + now[1] < before[0] + before[1] ? 'let-out' : now[0] + now[1] > before[0] + before[1] ? 'take-in' : 'none';

/** The rows of a piece that can be asked about, each with the part of the piece that it is from. */
function rowsOf(piece: OutlineFigures, startSide: SideName, most: number): { phase: RowPhase; problem: RowProblem }[] {
  return Array.from({ length: piece.height }, (_, index) => index + 1).flatMap((row) => {
    const now = bundlesIn(OUTLINE_RULES, piece, row);
    const before = row === 1 ? now : bundlesIn(OUTLINE_RULES, piece, row - 1);
    const change = changeBetween(before, now);
    const knots = OUTLINE_RULES.knots(piece, now);
    const after = bundlesAfter({ before, change });
    // Both sides do the same in one row, and a middle is left between them.
    const alike = after[0] === now[0] && after[1] === now[1] && before[0] + before[1] + 2 <= piece.width;
    if (!alike || knots < DRAWN.low || knots > most) return [];
    const phase =
      row === 1 ? 'first' : change === 'let-out' ? 'opening' : change === 'take-in' ? 'closing' : 'straight';
    const { width } = piece;
    return [{ phase, problem: { kind: 'row', width, row, direction: directionOf(row, startSide), before, change } }];
  });
}

/**
 * One row to tie, of 4 to 9 knots: from a small piece, or of up to 12 knots from a piece of the learner's own. A level
 * that is not one of the four counts as `mixed`. From `alone` on row 1 may begin on the right as well.
 *
 * @returns the problem; a refusal where `options` hold figures that do not go together, or where a piece of the
 *   learner's own has no row that is short enough
 */
export function make(seed: Seed, level: Level): RowProblem;
export function make(seed: Seed, level: Level, options: RowOptions): RowProblem | Refusal<Problem>;
export function make(seed: Seed, level: Level, options: RowOptions = {}): RowProblem | Refusal<Problem> {
  const next = draw(seed);
  const known = knownLevel(level);
  const drawnPhase = pick(next, ROW_PHASES) ?? 'opening';
  const drawnSide: SideName = !isEasy(known) && next(0, 1) === 1 ? 'right' : 'left';
  const bad =
    (options.phase === undefined ? null : choiceProblem('phase', options.phase, ROW_PHASES)) ??
    (options.direction === undefined
      ? null
      : choiceProblem('direction', options.direction, ['rightward', 'leftward'])) ??
    (options.row === undefined ? null : wholeNumberProblem('row', options.row, { low: 1, high: 1000 }));
  if (bad) return refuse(bad);

  const own = options.width !== undefined && options.capacity !== undefined;
  const startSide = options.startSide ?? (own ? 'left' : drawnSide);
  let pieces: readonly OutlineFigures[] = smallPieces(known);
  if (own) {
    const made = drawPiece(next, known, options, true);
    if ('ok' in made) return made;
    pieces = [made.piece];
  }
  const phases = options.phase ?? (options.row === undefined && !own ? drawnPhase : undefined);
  const rows = pieces
    .flatMap((piece) => rowsOf(piece, startSide, own ? MOST_OWN : DRAWN.high))
    .filter(
      ({ phase, problem }) =>
        (phases === undefined || phase === phases) &&
        (options.direction === undefined || problem.direction === options.direction) &&
        (options.row === undefined || problem.row === options.row),
    );
  const drawn = pick(next, rows);
  return (
    drawn?.problem ??
    refuse({ code: 'no-fit', values: own ? { width: options.width, capacity: options.capacity, knots: MOST_OWN } : {} })
  );
}
