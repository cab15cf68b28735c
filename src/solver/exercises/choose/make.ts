import type { SideName, StartMove } from '../../piece.ts';
import { choiceProblem, type Problem, type Refusal, refuse, wholeNumberProblem } from '../../problem.ts';
import { SIDES } from '../../ranges.ts';
import { drawWholePiece } from '../draw-whole-piece.ts';
import { makeable } from '../figures.ts';
import { knownLevel, type Level } from '../level.ts';
import { OUTLINE_RULES } from '../outline.ts';
import { type Draw, draw, pick, type Seed } from '../seed.ts';
import { rowEnds, sumIn, type WholePiece } from '../whole-piece.ts';
import { picksOf } from './picks.ts';
import {
  CHOOSE_ASKS,
  type Choice,
  type ChooseAsk,
  type ChooseOptions,
  type ChooseProblem,
  PARTS,
  type Part,
} from './problem.ts';

type Suits = (piece: WholePiece) => boolean;

const bothBundled: Suits = (piece) => {
  const { startBundle, endBundle } = rowEnds(piece);
  return Math.min(startBundle, endBundle) > 1;
};
const isOdd: Suits = (piece) => sumIn(piece).parity === 1;
const early: Suits = ({ row }) => row <= 12;
const moves =
  (move: StartMove): Suits =>
  (piece) =>
    rowEnds(piece).move === move;
/** The last string of a bundle stands at the edge where the row begins; the other edge is a single string too. */
const lastString: Suits = (piece) => {
  const { startBundle, startBefore, endBundle } = rowEnds(piece);
  return startBundle === 1 && startBefore > 1 && endBundle === 1;
};
/** Both edges bundles, or both single strings: what is said of one is true of the other. */
const alikeEdges: Suits = (piece) => {
  const { startBundle, endBundle } = rowEnds(piece);
  return startBundle > 1 === endBundle > 1;
};
const straight: Suits = (piece) => {
  const { startBundle, startBefore, endBundle } = rowEnds(piece);
  return Math.max(startBundle, startBefore, endBundle) === 1;
};

/** Near the ends of a piece more happens than in its middle, where one row in seven is as good as all. */
const eventful: Suits = (piece) => {
  const { startBundle, startBefore, endBundle } = rowEnds(piece);
  const tied = Math.max(startBundle, startBefore, endBundle) > 1;
  return tied
    ? startBundle === endBundle || startBundle < startBefore || startBundle > startBefore
    : piece.row % 7 === 0;
};

/** What a row shows where it is drawn first: each as often as the others, however few rows show it. */
const SHOWS: { readonly [A in ChooseAsk]?: { readonly [P in Part]: readonly Suits[] } } = {
  'turning-knot': {
    opening: [bothBundled, lastString],
    closing: [bothBundled],
    whole: [bothBundled, lastString, straight],
  },
  'first-move': {
    opening: [moves('let-out'), moves('let-out'), ({ row }) => row === 1],
    closing: [moves('take-in'), moves('carry-behind')],
    whole: [moves('let-out'), moves('take-in'), moves('carry-behind'), straight],
  },
};

const IN_PART: { readonly [P in Part]: Suits } = {
  opening: (piece) => piece.row <= OUTLINE_RULES.fullWidthRow(piece),
  closing: (piece) => {
    const first = OUTLINE_RULES.firstClosingRow(piece);
    return first > 0 && piece.row >= first;
  },
  whole: () => true,
};

const SUITS: { readonly [A in ChooseAsk]?: Suits } = {
  'knot-direction': early,
  'edge-knot': bothBundled,
  'leading-string': eventful,
  'let-out': (piece) => rowEnds(piece).move === 'let-out' && rowEnds(piece).startBefore > 2,
  'corner-cells': bothBundled,
  'bundle-knot': bothBundled,
  'closing-end': (piece) => piece.row === piece.height && OUTLINE_RULES.firstClosingRow(piece) > 0,
  'odd-half': (piece) => piece.row === 1 && isOdd(piece),
  borrow: (piece) => piece.row === 1 && isOdd(piece),
  'colour-change': (piece) => bothBundled(piece) && piece.row > 1,
  'fold-or-string': (piece) => piece.row === 1 && sumIn(piece).bundle > 2,
};

/** Draws are cheap, and of ten nearly always one suits. */
const TRIES = 400;

/** Whether only the plan for the low end can be tied on every ring of the range. */
function onlyLowIsSafe(piece: WholePiece, span: number): boolean {
  const low = piece.capacity - span;
  const onBar = (capacity: number): number => sumIn({ ...piece, capacity }).onBar;
  const can = [low, piece.capacity, piece.capacity + span].every(
    (capacity) => capacity >= 2 && piece.width > capacity && makeable({ ...piece, capacity }, 8),
  );
  return can && onBar(piece.capacity) > low && onBar(piece.capacity + span) > low;
}

/** Puts what can be chosen in an order that the seed gives. */
function shuffled<T>(next: Draw, items: readonly T[]): T[] {
  const left = [...items];
  const order: T[] = [];
  while (left.length > 0) order.push(...left.splice(next(0, left.length - 1), 1));
  return order;
}

/**
 * One of a few to choose, about a piece and a row of it. The ask is drawn where `options` name none. A level that
 * is not one of the four counts as `mixed`.
 *
 * @returns the problem; a refusal only where `options` hold figures that do not go together, or a piece that this
 *   cannot be asked of
 */
export function make(seed: Seed, level: Level): ChooseProblem;
export function make(seed: Seed, level: Level, options: ChooseOptions): ChooseProblem | Refusal<Problem>;
export function make(seed: Seed, level: Level, options: ChooseOptions = {}): ChooseProblem | Refusal<Problem> {
  const next = draw(seed);
  const drawn = pick(next, CHOOSE_ASKS) ?? 'borrow';
  const ask = options.ask ?? drawn;
  const drawnSide: SideName = next(0, 1) === 1 ? 'right' : 'left';
  const side = options.side ?? drawnSide;
  const part = options.part ?? 'whole';
  const bad =
    choiceProblem('ask', ask, CHOOSE_ASKS) ?? choiceProblem('side', side, SIDES) ?? choiceProblem('part', part, PARTS);
  if (bad) return refuse(bad);
  const drawnSpan = ask === 'safe-sheet' ? next(1, 3) : next(2, 14);
  const span = options.span ?? drawnSpan;
  const badSpan = wholeNumberProblem('span', span, { low: 1, high: 30 });
  if (badSpan) return refuse(badSpan);

  // A half that is odd is what the first exercises of the sum leave out, and what these two are about.
  const known = knownLevel(level);
  const harder = ask === 'odd-half' || ask === 'borrow' || ask === 'safe-sheet';
  // An even half is to be met now and then, so that nobody borrows by habit.
  const anyHalf = ask === 'borrow' && known === 'mixed' && next(0, 2) === 0;
  const shows = pick(next, SHOWS[ask]?.[part] ?? []);
  const usual = (!anyHalf && SUITS[ask]) || (({ row }: WholePiece) => row === 1);
  const wanted = options.row === undefined && shows ? shows : SHOWS[ask] ? alikeEdges : usual;
  const suits = (one: WholePiece): boolean => wanted(one) && IN_PART[part](one);
  let piece = drawWholePiece(next, harder && known !== 'mixed' ? 'alone' : known, options, suits);
  for (let tried = 0; tried < TRIES; tried += 1) {
    const fits = !('ok' in piece) && (ask !== 'safe-sheet' || onlyLowIsSafe(piece, span));
    if (fits) break;
    piece = drawWholePiece(next, harder ? 'alone' : known, options, suits);
  }
  if ('ok' in piece) return piece;
  const { width, capacity } = piece;
  if (ask === 'safe-sheet' && !onlyLowIsSafe(piece, span))
    return refuse({ code: 'no-fit', values: { width, capacity } });
  const question = { kind: 'choose', ask, ...piece, side, span } as const;
  const [right, ...slipped] = picksOf(question);
  const choices: Choice[] = [right, ...slipped.map(([choice]) => choice)];
  return { ...question, choices: shuffled(next, choices) };
}
