import type { Thread } from '../solver/thread/index.ts';
import { pitchesOf } from '../solver/thread/pitch.ts';
import { cordWindow } from './cord-window.ts';
import { ACROSS, type Drawing, type DrawnUnits, d, type Figure, path, type Shape, step, TEXT, text } from './drawing.ts';
import { COLUMN, pieceModel, ROW } from './piece/index.ts';
import { type SmallPlan, smallPiece } from './small-piece.ts';

export interface SwatchOptions {
  /** The cord; soft thread of 1.2 mm when left out. */
  readonly thread?: Thread | undefined;
  readonly units?: DrawnUnits | undefined;
  readonly across?: number | undefined;
}

export type SwatchKey = 'swatch' | 'swatch-width' | 'swatch-height' | 'label-swatch-width' | 'label-swatch-height';

const PLAIN: Thread = { diameter: 1.2, kind: 'soft' };
const COLUMNS = 10;
const ROWS = 6;
/** What is seen above the strip and below it, in d. */
const ABOVE = -3.2;
const BELOW = 4.4;
const GUTTER = 58;
const TOP = 34;

/** The strip as cord, without a bar; the tests look at the same. */
export function swatchCords({ fit, startSide }: SmallPlan) {
  const own = smallPiece({ fit: { ...fit, capacity: COLUMNS }, startSide }, COLUMNS, ROWS + 1);
  return pieceModel({
    fit: own.fit,
    bundles: { left: [], right: [] },
    rows: own.rows,
    ending: 'hanging',
    pulled: { fromRow: 2, apart: 0, moved: [] },
  });
}

/** How wide and high the strip is, in mm: an estimate until somebody has measured theirs. */
function sizeOf({ thread = PLAIN }: SwatchOptions) {
  const { column, row } = pitchesOf(thread);
  return { wide: column.likely * COLUMNS, high: row.likely * ROWS };
}

function draw(plan: SmallPlan, options: SwatchOptions = {}): Drawing<SwatchKey> {
  const { units = 'metric', across = ACROSS } = options;
  const { wide, high } = sizeOf(options);
  const model = swatchCords(plan);
  const seen = { left: -1, right: COLUMNS * COLUMN + 1, top: ABOVE, bottom: ROWS * ROW + BELOW };
  const { shapes: cords, x, y, foot } = cordWindow(model, seen, { across, gutter: GUTTER, top: TOP, largest: 9 });
  const [left, right] = [x(0), x(COLUMNS * COLUMN)];
  const [top, bottom] = [y(0), y(ROWS * ROW)];
  const shapes: Shape<SwatchKey>[] = [
    ...cords,
    path('bracket', d`M${left} ${TOP + 4}v-8H${right}v8M${right + 12} ${top}h8V${bottom}h-8`),
    text(across / 2, TOP - 16, step('label-swatch-width', { columns: COLUMNS, mm: wide, units })),
    {
      tag: 'text',
      x: right + 25,
      y: (top + bottom) / 2 + TEXT * 0.36,
      say: step('label-swatch-height', { rows: ROWS, mm: high, units }),
      'text-anchor': 'start',
    },
  ];
  return { width: across, height: foot + 4, shapes };
}

/** A strip of knots in one's own thread, and what is measured of it. */
export const swatch: Figure<'swatch', SwatchOptions, SwatchKey, SmallPlan> = {
  name: 'swatch',
  measures: true,
  draw,
  describe(_plan, options = {}) {
    const { units = 'metric' } = options;
    const { wide, high } = sizeOf(options);
    return [
      step<SwatchKey>('swatch', { columns: COLUMNS, rows: ROWS }),
      step<SwatchKey>('swatch-width', { columns: COLUMNS, mm: wide, each: wide / COLUMNS, units }),
      step<SwatchKey>('swatch-height', { rows: ROWS, mm: high, units }),
    ];
  },
};
