import { choiceProblem, type Problem, type Refusal, refuse } from '../../problem.ts';
import { drawWholePiece } from '../draw-whole-piece.ts';
import { knownLevel, type Level } from '../level.ts';
import { OUTLINE_RULES } from '../outline.ts';
import { draw, pick, type Seed } from '../seed.ts';
import { rowEnds, sumIn, type WholePiece } from '../whole-piece.ts';
import { SAY_TOPICS, type SayOptions, type SayProblem, type SayTopic } from './problem.ts';

const bundled = (piece: WholePiece): boolean => {
  const { startBundle, endBundle } = rowEnds(piece);
  return Math.min(startBundle, endBundle) > 1 && piece.row < OUTLINE_RULES.fullWidthRow(piece);
};

const SUITS: { readonly [T in SayTopic]?: (piece: WholePiece) => boolean } = {
  'two-borrowed': (piece) => piece.row === 1 && sumIn(piece).borrowed === 2,
  'bundle-one-knot': bundled,
  'leading-inside': bundled,
  'rows-short': bundled,
  'closing-from-the-end': (piece) => piece.row === piece.height && OUTLINE_RULES.firstClosingRow(piece) > 0,
};

/**
 * Something to explain about a piece. The topic is drawn where `options` name none. A level that is not one of the
 * four counts as `mixed`.
 *
 * @returns the problem; a refusal only where `options` hold figures that do not go together, or a piece to which
 *   the topic does not apply
 */
export function make(seed: Seed, level: Level): SayProblem;
export function make(seed: Seed, level: Level, options: SayOptions): SayProblem | Refusal<Problem>;
export function make(seed: Seed, level: Level, options: SayOptions = {}): SayProblem | Refusal<Problem> {
  const next = draw(seed);
  const drawn = pick(next, SAY_TOPICS) ?? 'sides-even';
  const topic = options.topic ?? drawn;
  const bad = choiceProblem('topic', topic, SAY_TOPICS);
  if (bad) return refuse(bad);
  const known = knownLevel(level);
  // Borrowing is what the first exercises of the sum leave out.
  const harder = topic === 'two-borrowed' && known !== 'mixed' ? 'alone' : known;
  const suits = SUITS[topic] ?? (({ row }: WholePiece) => row === 1);
  let piece = drawWholePiece(next, harder, options, suits);
  for (let tried = 0; tried < 60 && 'ok' in piece; tried += 1) piece = drawWholePiece(next, harder, options, suits);
  return 'ok' in piece ? piece : { kind: 'say', topic, ...piece };
}
