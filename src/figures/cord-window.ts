import type { Shape } from './drawing.ts';
import { COLUMN, levelFor, type PieceModel, PiecePainter, pieceStyle, UNIT } from './piece/index.ts';

/** What is seen of a model, in d. */
export interface Seen {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

export interface CordWindow {
  readonly shapes: readonly Shape<never>[];
  /** Where a place of the model is in the drawing. */
  readonly x: (across: number) => number;
  readonly y: (down: number) => number;
  readonly foot: number;
}

/** Pixels of a page for one unit of a drawing, so that cords are as fine as can be seen. */
const PIXELS = 1.5;

/**
 * A part of a model in the middle of a drawing, as large as it gets there.
 *
 * @param at units of the drawing: its width, how much stays free at either side, where the window begins, and d at most
 * @param beside what else is painted, before all cords of the model and after them
 */
export function cordWindow(
  model: PieceModel,
  seen: Seen,
  at: { readonly across: number; readonly gutter: number; readonly top: number; readonly largest: number },
  beside: { readonly behind?: string; readonly before?: string } = {},
): CordWindow {
  const wide = seen.right - seen.left;
  const scale = Math.min(at.largest, (at.across - 2 * at.gutter) / wide);
  const height = (seen.bottom - seen.top) * scale;
  const left = (at.across - wide * scale) / 2;
  const level = levelFor(scale * COLUMN * PIXELS) === 'cord' ? 'cord' : 'stitch';
  const box = [seen.left, seen.top, wide, seen.bottom - seen.top].map((value) => Math.round(value * UNIT));
  const { behind = '', before = '' } = beside;
  return {
    shapes: [
      {
        tag: 'cords',
        id: 'cords',
        model,
        style: pieceStyle(level),
        paint: (id) => new PiecePainter(id, level).parts(model).reduce((svg, part) => svg + part.svg, behind) + before,
      },
      { tag: 'window', shows: 'cords', x: left, y: at.top, width: wide * scale, height, box: box.join(' ') },
    ],
    x: (across) => left + (across - seen.left) * scale,
    y: (down) => at.top + (down - seen.top) * scale,
    foot: at.top + height,
  };
}
