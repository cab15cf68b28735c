import { type Alteration, altered } from './altered.ts';
import { cordWindow } from './cord-window.ts';
import { ACROSS, type Drawing, d, type Figure, path, type Shape, step, text } from './drawing.ts';
import { COLUMN, type PieceModel, pieceModel, ROW } from './piece/index.ts';
import { type SmallPlan, smallPiece } from './small-piece.ts';

export interface TrialRowOptions {
  /** With more columns than lie flat in the same room. */
  readonly crowded?: boolean | undefined;
  readonly across?: number | undefined;
}

export type TrialRowKey =
  | 'trial-row'
  | 'trial-row-flat'
  | 'trial-row-crowded'
  | 'label-trial-row'
  | 'label-trial-row-crowded';

/** Columns drawn at most, for which there is room on the stretch of bar that is shown. */
const MOST = 8;
/** What is seen above the bar and below the row, and at the sides of the bar, in d. */
const ABOVE = -8.6;
const BELOW = ROW + 6.4;
const ASIDE = 3.4;
/** How far a knot without room is pushed down below its neighbours, in rows. */
const PUSHED = 0.9;

/** How many columns have room on what is shown of the bar, and how many are tied there. */
function columnsOf(plan: SmallPlan, { crowded = false }: TrialRowOptions) {
  const room = smallPiece(plan, MOST, 1).fit.width;
  return { room, tied: crowded ? room + 2 * Math.max(1, room >> 2) : room };
}

/** Columns side by side with less room than they need: every other knot gets out of the way of its neighbours. */
const crowding = (part: number): Alteration => ({
  line: ([x, y, z]) => [x * part, y, z],
  place: ({ x, y }) => ({ x: x * part, y }),
  knot: ({ knot }) =>
    !knot
      ? { name: 'close', point: ([x, y, z]) => [x * part, y, z] }
      : knot.column % 2 === 0
        ? { name: 'pushed', point: ([x, y, z]) => [x, y + ROW * PUSHED, z] }
        : null,
});

/** The row as cord, with the bar; the tests look at the same. */
export function trialRowCords(plan: SmallPlan, options: TrialRowOptions = {}) {
  const { room, tied } = columnsOf(plan, options);
  const rowOf = (columns: number): PieceModel => {
    const { fit, outline, rows } = smallPiece({ ...plan, fit: { ...plan.fit, capacity: columns } }, columns, 1);
    return pieceModel({ fit, bundles: outline, rows, ending: 'hanging' });
  };
  const flat = rowOf(room);
  // The ring stays as it is, however many columns are put on it.
  return {
    room,
    tied,
    model: tied === room ? flat : { ...altered(rowOf(tied), crowding(room / tied)), ring: flat.ring },
  };
}

function draw(plan: SmallPlan, options: TrialRowOptions = {}): Drawing<TrialRowKey> {
  const { across = ACROSS } = options;
  const { room, tied, model } = trialRowCords(plan, options);
  const seen = { left: -ASIDE, right: room * COLUMN + ASIDE, top: ABOVE, bottom: BELOW };
  const { shapes: cords, x, foot } = cordWindow(model, seen, { across, gutter: 8, top: 30, largest: 12 });
  const shapes: Shape<TrialRowKey>[] = [
    ...cords,
    path('bracket', d`M${x(0)} 29v-4H${x(room * COLUMN)}v4`),
    text(across / 2, 16, step('label-trial-row', { columns: room })),
    ...(tied > room
      ? [text<TrialRowKey>(across / 2, foot + 18, step('label-trial-row-crowded', { columns: tied }), 'must strong')]
      : []),
  ];
  return { width: across, height: foot + 26, shapes };
}

/** One plain row along the bar: as many columns as lie flat there, or more of them than that. */
export const trialRow: Figure<'trial-row', TrialRowOptions, TrialRowKey, SmallPlan> = {
  name: 'trial-row',
  draw,
  describe(plan, options = {}) {
    const { room, tied } = columnsOf(plan, options);
    return [
      step<TrialRowKey>('trial-row', { columns: tied }),
      step<TrialRowKey>(tied > room ? 'trial-row-crowded' : 'trial-row-flat', { columns: room }),
    ];
  },
};
