import { altered } from './altered.ts';
import { cordWindow } from './cord-window.ts';
import { ACROSS, type Drawing, d, type Figure, path, type Shape, step, text } from './drawing.ts';
import { COLUMN, type PieceModel, pieceModel } from './piece/index.ts';
import { cutEnd } from './piece/pen.ts';
import { type SmallPlan, smallPiece } from './small-piece.ts';

export interface LevelEndsOptions {
  /** One fold has slipped through its lark’s head. */
  readonly slipped?: boolean | undefined;
  readonly across?: number | undefined;
}

export type LevelEndsKey = 'level-ends' | 'level-ends-slipped' | 'label-level-ends' | 'label-short-end';

const MOST = 6;
/** What is seen above the bar and at its sides, how low level ends hang, and how much of one has gone over to the other, in d. */
const ABOVE = -8.6;
const ASIDE = 3.4;
const HANG = 11;
const SLIPPED = 4.6;

/** How low a string ends: what one end of the slipped fold has lost, the other has got. */
const endOf = (column: number, slipped: number): number =>
  HANG + (column === slipped ? -SLIPPED : column === slipped + 1 ? SLIPPED : 0);

/** Some folds on the bar as cord, before the first row; the tests look at the same. */
export function levelEndsCords(
  plan: SmallPlan,
  { slipped = false }: LevelEndsOptions = {},
): { readonly model: PieceModel; readonly folds: number; readonly short: number | null } {
  const { fit, outline, rows } = smallPiece(plan, MOST, 1);
  const short = slipped ? (fit.width >> 2) * 2 + 1 : null;
  const whole = pieceModel({ fit, bundles: outline, rows, upToRow: 0, ending: 'hanging' });
  const model = altered(whole, {
    line: ([x, y, z], id) => [x, Math.min(y, endOf(Number(id.replace('base-', '')), short ?? -1)), z],
  });
  return { model, folds: fit.folds, short };
}

function draw(plan: SmallPlan, options: LevelEndsOptions = {}): Drawing<LevelEndsKey> {
  const { across = ACROSS } = options;
  const { model, short } = levelEndsCords(plan, options);
  const seen = { left: -ASIDE, right: model.width * COLUMN + ASIDE, top: ABOVE, bottom: HANG + SLIPPED + 0.6 };
  const ends = model.strings.map(({ parts }) => parts.flatMap((part) => (part.is === 'line' ? part.path : [])).at(-1));
  const {
    shapes: cords,
    x,
    y,
    foot,
  } = cordWindow(
    model,
    seen,
    { across, gutter: 8, top: 6, largest: 12 },
    { behind: ends.map((end) => (end ? cutEnd(end) : '')).join('') },
  );
  const own = x(ends[(short ?? 1) - 1]?.[0] ?? 0);
  const shapes: Shape<LevelEndsKey>[] = [
    ...cords,
    path('fold-line', d`M${x(-0.6)} ${y(HANG)}H${x(model.width * COLUMN + 0.6)}`),
    ...(short
      ? [
          path<LevelEndsKey>(
            'bracket given',
            d`M${own - 4} ${y(HANG - SLIPPED + 0.6) + 2}h8m-4 0V${y(HANG) - 3}m-4 0h8`,
          ),
          text<LevelEndsKey>(across / 2, foot + 18, step('label-short-end'), 'must strong'),
        ]
      : [text<LevelEndsKey>(across / 2, foot + 18, step('label-level-ends'))]),
  ];
  return { width: across, height: foot + 26, shapes };
}

/** Folds on the bar with their ends level, or with one that has slipped so that one of its ends is short. */
export const levelEnds: Figure<'level-ends', LevelEndsOptions, LevelEndsKey, SmallPlan> = {
  name: 'level-ends',
  draw,
  describe(plan, options = {}) {
    const { folds, short } = levelEndsCords(plan, options);
    return [
      step<LevelEndsKey>('level-ends', { folds, slipped: short ? 1 : 0 }),
      ...(short ? [step<LevelEndsKey>('level-ends-slipped', { column: short, other: short + 1 })] : []),
    ];
  },
};
