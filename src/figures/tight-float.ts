import type { Chart } from '../solver/chart.ts';
import { type Alteration, altered, fromRowToRow } from './altered.ts';
import { cordWindow } from './cord-window.ts';
import { ACROSS, type Drawing, type Figure, step, text } from './drawing.ts';
import { COLUMN, type Part, type PieceModel, pieceModel, ROW, turnRound } from './piece/index.ts';
import { smooth } from './piece/smooth.ts';
import { type SmallPlan, smallPiece } from './small-piece.ts';
import { between, type Path } from './strand/point.ts';

export interface TightFloatOptions {
  /** The float was pulled tight, and draws its columns together. */
  readonly tight?: boolean | undefined;
  readonly across?: number | undefined;
}

export type TightFloatKey = 'tight-float' | 'tight-float-pulled' | 'tight-float-flat' | 'label-tight-float';

/** A picture of two knots in one row, with a float between them; the rows from the second on are seen. */
const WIDTH = 10;
const [FROM, HEIGHT] = [2, 6];
const ROW_OF_FLOAT = 4;
const DOTS = [2, 9];
const picture: Chart = {
  width: WIDTH,
  height: HEIGHT,
  palette: [
    { name: 'blue', colour: '#2f6f94' },
    { name: 'straw', colour: '#f3d78c' },
  ],
  cells: Uint8Array.from({ length: WIDTH * HEIGHT }, (_, i) =>
    Math.floor(i / WIDTH) + 1 === ROW_OF_FLOAT && DOTS.includes((i % WIDTH) + 1) ? 1 : 0,
  ),
};
/** The same in the colours of the house, which are others on a dark page; they differ in black and white as well. */
const shown: Chart = {
  ...picture,
  palette: picture.palette.map((one, i) => ({
    ...one,
    colour: `var(--${i === 0 ? 'cord-lead' : 'string-straw'},${one.colour})`,
  })),
};
/** How much narrower a row is in which a float was pulled tight, and how much of that shows in the rows beside it. */
const DRAWN = 0.36;
const BESIDE = [1, 0.55, 0.15];
/** How low a float hangs in its middle that reaches across at its ease, and how far the tails at its ends reach, in d. */
const SAG = 0.9;
const TAIL = 1.9;
/** How far behind the middle of the bases the float and its tails lie, behind those of the ground, in d. */
const BACK = -2.7;
/** What is seen above the rows, below them and at their sides, in d. */
const ABOVE = -3.4;
const BELOW = 4;
const ASIDE = 2.4;

/** The row of a float drawn together, and the rows above and below it the less the farther off. */
function drawing({ laid, width }: PieceModel): Alteration {
  const middle = (width * COLUMN) / 2;
  const part = (y: number): number =>
    1 - fromRowToRow(y / laid.pitch + laid.fromRow - 0.5, (row) => DRAWN * (BESIDE[Math.abs(row - ROW_OF_FLOAT)] ?? 0));
  const drawn = (x: number, y: number): number => middle + (x - middle) * part(y);
  return {
    line: ([x, y, z]) => [drawn(x, y), y, z],
    place: ({ x, y }) => ({ x: drawn(x, y + ROW / 2), y }),
    knot: ({ y }) => {
      const own = part(y + ROW / 2);
      return own < 1 ? { name: `drawn-${Math.round(own * 100)}`, point: ([u, v, z]) => [u * own, v, z] } : null;
    },
  };
}

/** The two ends of the float's string beside it, and the float itself between them. */
function eased(model: PieceModel, sag: number): PieceModel {
  const strings = model.strings.map((string) =>
    string.colour !== 1
      ? string
      : {
          ...string,
          parts: string.parts.map((part, i): Part => {
            if (part.is !== 'line') return part;
            const [start, end] = [part.path[0], part.path.at(-1)];
            if (!start || !end) return part;
            if (part.what === 'float') {
              const [x, y] = between(start, end, 0.5);
              const low: Path = [
                [start[0], start[1] + sag * 0.6, BACK],
                [x, y + sag * 1.6, BACK],
                [end[0], end[1] + sag * 0.6, BACK],
              ];
              return { ...part, path: smooth([start, ...low, end]) };
            }
            const [knot, way] = i === 0 ? [end, start[0] < end[0] ? 1 : -1] : [start, end[0] < start[0] ? 1 : -1];
            const tail: Path = [
              knot,
              [knot[0] + way * 0.2, knot[1] - 0.2, BACK],
              [knot[0] + way * TAIL, knot[1] + 0.3, BACK],
            ];
            return { ...part, path: smooth(i === 0 ? [...tail].reverse() : tail) };
          }),
        },
  );
  return { ...model, strings };
}

/** The rows from behind as cord; the tests look at the same. */
export function tightFloatCords({ fit, startSide }: SmallPlan, { tight = false }: TightFloatOptions = {}): PieceModel {
  const own = smallPiece({ fit, startSide }, WIDTH, HEIGHT, picture);
  const whole = pieceModel({
    fit: own.fit,
    bundles: { left: [], right: [] },
    rows: own.rows,
    chart: shown,
    ending: 'hanging',
    pulled: { fromRow: FROM, apart: 0, moved: [] },
  });
  return turnRound(tight ? altered(eased(whole, 0), drawing(whole)) : eased(whole, SAG));
}

function draw(plan: SmallPlan, options: TightFloatOptions = {}): Drawing<TightFloatKey> {
  const { across = ACROSS } = options;
  const model = tightFloatCords(plan, options);
  const seen = { left: -ASIDE, right: WIDTH * COLUMN + ASIDE, top: ABOVE, bottom: (HEIGHT + 1 - FROM) * ROW + BELOW };
  const { shapes, foot } = cordWindow(model, seen, { across, gutter: 6, top: 22, largest: 12 });
  return {
    width: across,
    height: foot + 4,
    shapes: [...shapes, text(across / 2, 14, step('label-tight-float'), 'quiet')],
  };
}

/** Some rows from behind, with a float that reaches across at its ease, or that draws its columns together. */
export const tightFloat: Figure<'tight-float', TightFloatOptions, TightFloatKey, SmallPlan> = {
  name: 'tight-float',
  draw,
  describe: (_plan, { tight = false } = {}) => [
    step<TightFloatKey>('tight-float', {
      row: ROW_OF_FLOAT,
      rows: HEIGHT + 1 - FROM,
      columns: (DOTS[1] ?? 0) - (DOTS[0] ?? 0) - 1,
    }),
    step<TightFloatKey>(tight ? 'tight-float-pulled' : 'tight-float-flat'),
  ],
};
