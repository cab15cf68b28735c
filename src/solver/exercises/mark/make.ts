import { choiceProblem, type Problem, type Refusal, refuse, wholeNumberProblem } from '../../problem.ts';
import { drawPiece } from '../draw-piece.ts';
import { knownLevel, type Level } from '../level.ts';
import { OUTLINE_RULES, type Pair } from '../outline.ts';
import { draw, pick, type Seed } from '../seed.ts';
import { drawStripes, drawTooWide } from './draw-picture.ts';
import { cellsOf } from './picture.ts';
import { DRAWN_TARGETS, MARK_TARGETS, type MarkOptions, type MarkProblem } from './problem.ts';

/** Bars for charts with a picture, both ends counting. */
const PICTURED = { low: 6, high: 10 };
/** Few enough strings a side that marking them teaches and does not tire; the bar and the chart stay small too. */
const MOST_STRINGS = { worked: 2, 'half-worked': 4, alone: 4, mixed: 6 } as const;

/**
 * Cells to mark on a chart: the corner cells of the opening (or of the rows given), the bundles' knots in one
 * row, or the row in which closing begins. The target is drawn where `options` name none. A level that is
 * not one of the four counts as `mixed`.
 *
 * @returns the problem; a refusal only where `options` hold figures that do not go together
 */
export function make(seed: Seed, level: Level): MarkProblem;
export function make(seed: Seed, level: Level, options: MarkOptions): MarkProblem | Refusal<Problem>;
export function make(seed: Seed, level: Level, options: MarkOptions = {}): MarkProblem | Refusal<Problem> {
  const next = draw(seed);
  const known = knownLevel(level);
  const drawn = pick(next, DRAWN_TARGETS) ?? 'corner-cells';
  const target = options.target ?? drawn;
  const bad = choiceProblem('target', target, MARK_TARGETS);
  if (bad) return refuse(bad);

  const most = options.maxBundle ?? Math.max(target === 'picture-cut' ? 4 : 2, MOST_STRINGS[known]);
  const own = options.width !== undefined && options.capacity !== undefined;
  // A picture is cut in rows between a plain first one and full width, so there have to be some.
  const least = target === 'picture-cut' ? 4 : 2;
  const small = ([left, right]: Pair): boolean =>
    own || (left >= Math.min(least, most) && left <= most && left === right);
  // A carried end makes the bundles unlike; it is marked only where it is the learner's own.
  const pictured = target === 'colour-in-row' || target === 'picture-cut';
  const given: MarkOptions = {
    ...options,
    oddMethod: options.oddMethod ?? 'lone-string',
    // A picture is looked at as a whole, so its bar stays small.
    ...(pictured && !own ? { capacity: options.capacity ?? next(PICTURED.low, PICTURED.high) } : {}),
  };
  const made = drawPiece(next, known, given, false, small, Math.max(2, most));
  if ('ok' in made) return made;
  const { piece } = made;
  const full = OUTLINE_RULES.fullWidthRow(piece);
  const closing = OUTLINE_RULES.firstClosingRow(piece);
  if (target === 'first-closing-row') {
    if (closing === 0)
      return refuse({ code: 'out-of-range', field: 'closingBundle', entered: 1, values: { low: 2, high: 8 } });
    return { kind: 'mark', target, ...piece, from: 1, to: piece.height };
  }

  // The middle of the piece, or as near to it as leaves the opening above and the closing below.
  const last = closing > 0 ? closing - 1 : piece.height;
  const middle = Math.min(Math.max(full, Math.floor(piece.height / 2)), last);
  const oneRow = target === 'bundle-knot' || target === 'first-knot' || target === 'colour-in-row';
  const closingToo = known === 'mixed' && closing > 0 && target !== 'picture-cut' && next(0, 1) === 1;
  // A row in which both edges are bundles, as far as there is one.
  const smaller = ([left, right]: Pair): number => Math.max(1, Math.min(left, right) - 1);
  const drawnRow = closingToo
    ? next(piece.height - piece.closingStep * smaller(piece.closing) + 1, piece.height)
    : next(1, piece.openingStep * smaller(piece.bundles));
  // Where a row begins and what it holds is asked of any row; a bundle's knot only of one that has a bundle.
  const anyRow =
    target === 'colour-in-row' || (target === 'first-knot' && !closingToo) ? next(2, middle + 1) : drawnRow;
  const from = options.from ?? (oneRow ? anyRow : closingToo ? middle + 1 : 1);
  const to =
    options.to ??
    (oneRow
      ? from
      : target === 'picture-cut'
        ? full
        : closingToo || options.from !== undefined
          ? piece.height
          : middle);
  const badRows =
    wholeNumberProblem('from', from, { low: 1, high: piece.height }) ??
    wholeNumberProblem('to', to, oneRow ? { low: from, high: from } : { low: from, high: piece.height });
  if (badRows) return refuse(badRows);
  const asked = { kind: 'mark', target, ...piece, from, to } as const;
  if (target === 'first-knot') return { ...asked, startSide: made.fit.startSide };
  if (!pictured) return asked;
  if (target === 'picture-cut') return { ...asked, picture: drawTooWide(next, piece) };
  const picture = drawStripes(next, piece);
  // The second colour only where the row has it.
  const there = [1, 2].filter((colour) => cellsOf(picture, from).includes(colour));
  return { ...asked, picture, colour: pick(next, there) ?? 1 };
}
