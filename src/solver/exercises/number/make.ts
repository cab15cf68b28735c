import { choiceProblem, type Problem, type Refusal, refuse, wholeNumberProblem } from '../../problem.ts';
import { drawFigures } from '../draw-figures.ts';
import { drawPiece } from '../draw-piece.ts';
import { knownLevel, type Level } from '../level.ts';
import { bundlesIn, OUTLINE_RULES, type OutlineFigures } from '../outline.ts';
import { type Draw, draw, pick, type Seed } from '../seed.ts';
import { drawChartQuestion } from './draw-chart-question.ts';
import { drawFloatQuestion, drawTimeQuestion } from './draw-evening.ts';
import { drawMeasures } from './draw-measures.ts';
import { drawThreadQuestion } from './draw-thread.ts';
import {
  DRAWN_ASKS,
  isChartAsk,
  isFitAsk,
  isInRowAsk,
  isMeasureAsk,
  isThreadAsk,
  NUMBER_ASKS,
  type NumberAsk,
  type NumberOptions,
  type NumberProblem,
} from './problem.ts';

/** A row worth asking about: while widening at first, then at full width too, and at last while closing. */
function drawRow(next: Draw, level: Level, ask: NumberAsk, piece: OutlineFigures): number {
  const full = OUTLINE_RULES.fullWidthRow(piece);
  const closing = OUTLINE_RULES.firstClosingRow(piece);
  const straight = ask === 'knots-in-row' && level !== 'worked' && level !== 'half-worked' ? 1 : 0;
  if (level === 'mixed' && closing > 0 && next(0, 1) === 1) return next(closing, piece.height);
  return next(1, full - 1 + straight);
}

/**
 * One figure to find: about a chart and a bar, or about a shaped piece and its rows. The ask is drawn where
 * `options` name none. A level that is not one of the four counts as `mixed`.
 *
 * @returns the problem; a refusal only where `options` hold figures that do not go together
 */
export function make(seed: Seed, level: Level): NumberProblem;
export function make(seed: Seed, level: Level, options: NumberOptions): NumberProblem | Refusal<Problem>;
export function make(seed: Seed, level: Level, options: NumberOptions = {}): NumberProblem | Refusal<Problem> {
  const next = draw(seed);
  const known = knownLevel(level);
  const drawn = pick(next, DRAWN_ASKS) ?? 'spare';
  const ask = options.ask ?? drawn;
  const bad = choiceProblem('ask', ask, NUMBER_ASKS);
  if (bad) return refuse(bad);

  if (isMeasureAsk(ask)) return drawMeasures(next, ask);
  // Neither a chart nor a bar is asked about in these.
  if (ask === 'longest-float') return drawFloatQuestion(next, known);
  if (ask === 'making-minutes') return drawTimeQuestion(next, known);

  if (isFitAsk(ask)) {
    const own = options.width !== undefined && options.capacity !== undefined;
    const fit = drawFigures(next, known, options, ({ width, capacity }) => own || width > capacity);
    return 'ok' in fit ? fit : { kind: 'number', ask, ...fit };
  }

  // String is cut for any piece, a straight one too; the rows of a straight one are nothing to ask about.
  const own = options.width !== undefined && options.capacity !== undefined;
  // A picture in row 2 or 3 can only be cut while the bundles are large.
  const deep = ask === 'plain-rows-above' && !own ? 4 : 1;
  const made = drawPiece(next, known, options, isThreadAsk(ask), (bundles) => Math.min(...bundles) >= deep);
  if ('ok' in made) return made;
  const { piece, fit } = made;
  if (isThreadAsk(ask)) return drawThreadQuestion(next, ask, fit, piece.height, options.thread);
  if (ask === 'first-closing-row' && OUTLINE_RULES.firstClosingRow(piece) === 0)
    return refuse({ code: 'out-of-range', field: 'closingBundle', entered: 1, values: { low: 2, high: 8 } });
  if (isChartAsk(ask)) return drawChartQuestion(next, known, ask, piece, fit.startSide);
  if (!isInRowAsk(ask)) return { kind: 'number', ask, ...piece };

  const row = options.row ?? drawRow(next, known, ask, piece);
  const badRow = wholeNumberProblem('row', row, { low: 1, high: piece.height });
  if (badRow) return refuse(badRow);
  const [left, right] = bundlesIn(OUTLINE_RULES, piece, row);
  const side = ask === 'bundle-in-row' && left !== right ? (next(0, 1) === 1 ? 'right' : 'left') : null;
  return { kind: 'number', ask, ...piece, row, side };
}
