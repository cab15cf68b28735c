import { cordWindow } from './cord-window.ts';
import { ACROSS, type Drawing, d, type Figure, path, type Shape, step, TEXT, text } from './drawing.ts';
import { COLUMN, type PieceModel, pieceModel, ROW } from './piece/index.ts';
import { type SmallPlan, smallPiece } from './small-piece.ts';

export interface SwatchOptions {
  readonly across?: number | undefined;
}

export type SwatchKey = 'swatch' | 'swatch-width' | 'swatch-height' | 'label-swatch-width' | 'label-swatch-height';

const COLUMNS = 10;
const ROWS = 6;
/** What is seen above the strip and below it, in d. */
const ABOVE = -3.2;
const BELOW = 4.4;
/** Units of the drawing beside and above the strip, for what is measured. */
const GUTTER = 64;
const TOP = 36;

/** The strip as cord, without a bar; the tests look at the same. */
export function swatchCords({ fit, startSide }: SmallPlan): PieceModel {
  const own = smallPiece({ fit: { ...fit, capacity: COLUMNS }, startSide }, COLUMNS, ROWS + 1);
  return pieceModel({
    fit: own.fit,
    bundles: { left: [], right: [] },
    rows: own.rows,
    ending: 'hanging',
    pulled: { fromRow: 2, apart: 0, moved: [] },
  });
}

function draw(plan: SmallPlan, { across = ACROSS }: SwatchOptions = {}): Drawing<SwatchKey> {
  const seen = { left: -1, right: COLUMNS * COLUMN + 1, top: ABOVE, bottom: ROWS * ROW + BELOW };
  const at = { across, gutter: GUTTER, top: TOP, largest: 9 };
  const { shapes: cords, x, y, foot } = cordWindow(swatchCords(plan), seen, at);
  const [left, right] = [x(0), x(COLUMNS * COLUMN)];
  const [top, bottom] = [y(0), y(ROWS * ROW)];
  const shapes: Shape<SwatchKey>[] = [
    ...cords,
    path('bracket', d`M${left} ${TOP - 2}v-8H${right}v8M${right + 8} ${top}h8V${bottom}h-8`),
    text(across / 2, TOP - 18, step('label-swatch-width', { columns: COLUMNS })),
    {
      tag: 'text',
      x: right + 20,
      y: (top + bottom) / 2 + TEXT * 0.36,
      say: step('label-swatch-height', { rows: ROWS }),
      'text-anchor': 'start',
    },
  ];
  return { width: across, height: foot + 4, shapes };
}

/** A strip of knots in one's own thread, and what is measured of it. */
export const swatch: Figure<'swatch', SwatchOptions, SwatchKey, SmallPlan> = {
  name: 'swatch',
  draw,
  describe: () => [
    step('swatch', { columns: COLUMNS, rows: ROWS }),
    step('swatch-width', { columns: COLUMNS }),
    step('swatch-height', { rows: ROWS }),
  ],
};
