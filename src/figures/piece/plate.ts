import type { DrawnFigure, ShowOptions } from '../show.ts';
import { describePiece, type PieceKey, tellStanding } from './describe.ts';
import { drawMoments, drawPiece, type Level, levelFor } from './draw.ts';
import { pieceModel, turnRound } from './model.ts';
import type { PieceModel } from './model-types.ts';
import { type Moment, type MomentPlan, piecesOf, type Standing, standingAt } from './moments.ts';
import { ROW } from './packed.ts';

export interface PiecePlateOptions {
  /** A named moment of the work; `finished` when neither it nor a row is given. */
  readonly moment?: Moment | undefined;
  /** Moments that stand before it in the same plate, in their order. */
  readonly after?: Moment | readonly Moment[] | undefined;
  /** The last row that is begun, 0 to all, and how many of its knots are tied; instead of a moment. */
  readonly row?: number | undefined;
  readonly knot?: number | undefined;
  /** From which side. Default `front`. */
  readonly side?: 'front' | 'back' | undefined;
  /** How fine; as fine as a page shows it when left out. */
  readonly level?: Level | undefined;
}

/** How wide a plate stands in a page, in pixels: what it shows is drawn as fine as can be seen there. */
const PLATE = 540;
/** How far below the last row that is shown the strings are seen, in d: they go on beyond the plate. */
const SEEN = 16;

const escaped = (raw: string): string => raw.replace(/[&<>"]/g, (sign) => `&#${sign.charCodeAt(0)};`);

/**
 * A whole piece as a plate: at one moment, or at several side by side, each with its name below it. Moments and rows that
 * the piece has not got are taken as the nearest it has.
 *
 * @example
 * piecePlate(plan, { after: 'mounted', moment: 'first-row' }, { id: 'plate-1', words: pieceFigureWords }).svg
 */
export function piecePlate(
  plan: MomentPlan,
  options: PiecePlateOptions,
  { id, words, labelledBy }: ShowOptions<PieceKey>,
): DrawnFigure {
  const { row, knot, side = 'front' } = options;
  const moment = options.moment ?? (row === undefined ? 'finished' : undefined);
  const earlier = typeof options.after === 'string' ? [options.after] : (options.after ?? []);
  const standing: Standing = moment
    ? standingAt(plan, moment)
    : { upToRow: row ?? 0, upToKnot: knot, ending: 'hanging' };
  const modelOf = (one: Standing): PieceModel => {
    const whole = pieceModel(piecesOf(plan, one));
    const bottom = Math.min(whole.frame.bottom, standing.upToRow * ROW + SEEN);
    const model = standing.ending === 'hanging' ? { ...whole, frame: { ...whole.frame, bottom } } : whole;
    return side === 'back' ? turnRound(model) : model;
  };
  const model = modelOf(standing);
  const level = options.level ?? levelFor(PLATE / (earlier.length + 1) / (plan.fit.width + 3));
  const say = ({ key, values }: ReturnType<typeof describePiece>[number]): string => words[key](values);
  const [title = '', ...steps] = describePiece(model).map(say);
  if (earlier.length === 0) {
    const description = steps.join(' ');
    const svg = drawPiece(model, { id, level, view: side, title, description, labelledBy });
    return { svg, title, description, steps };
  }
  const shown = [...earlier, ...(moment ? [moment] : [])].map((one) => ({
    name: words['piece-moment']({ moment: one, row: standingAt(plan, one).upToRow }),
    model: modelOf(standingAt(plan, one)),
  }));
  const told = shown.map(({ name, model: one }) => `${name}: ${tellStanding(one).map(say).join(' ')}`);
  const pictures = drawMoments(
    shown.map((one) => one.model),
    { id, level, view: side },
    shown.map(({ name }) => name),
  );
  const items = shown.map(({ name }, i) => `<li>${pictures[i]}<p>${escaped(name)}</p></li>`);
  return {
    svg: `<ol class="moments" role="list" data-moments="${shown.length}">${items.join('')}</ol>`,
    title,
    description: [title, ...told].join(' '),
    steps: told,
  };
}
