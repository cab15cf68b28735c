import { INCH } from '../solver/inch.ts';
import type { Plan } from '../solver/plan.ts';
import { cutList } from '../solver/thread/cut-list.ts';
import type { Thread } from '../solver/thread/thread.ts';
import { cord, twist } from './cord.ts';
import {
  ACROSS,
  type Drawing,
  type DrawnUnits,
  d,
  type Figure,
  path,
  type Shape,
  step,
  type Values,
} from './drawing.ts';

/** Pieces of one kind, as `cutList` gives them; lengths in mm. */
export interface CutPiece {
  readonly place: 'bar' | 'left' | 'right' | 'lone';
  readonly count: number;
  readonly length: { readonly low: number; readonly likely: number; readonly high: number; readonly source?: string };
}

export interface CutStringsOptions {
  /** Worked out from `thread` when left out. */
  readonly pieces?: readonly CutPiece[] | undefined;
  /** The cord; soft thread of 1.2 mm when left out. */
  readonly thread?: Thread | undefined;
  readonly units?: DrawnUnits | undefined;
  readonly across?: number | undefined;
}

export type CutStringsKey = 'cut-strings' | 'cut-strings-piece' | 'label-cut' | 'label-cut-length' | 'label-length';

export type CutStringsPlan = Pick<Plan, 'fit' | 'rows' | 'outline' | 'chart'>;

const PLAIN_THREAD: Thread = { diameter: 1.2, kind: 'soft' };
const LEFT = 14;
/** Height that the strings of one kind may take, and the widest step from one to the next. */
const HEAP = 60;
const STEP = 7;

function piecesOf(
  { fit, rows, outline, chart }: CutStringsPlan,
  { pieces, thread = PLAIN_THREAD }: CutStringsOptions,
): readonly CutPiece[] {
  if (pieces) return pieces;
  const cut = cutList({ fit, rows, bundles: outline, chart, thread });
  return cut.ok ? cut.pieces : [];
}

/** The distance of two marks of the scale, in mm, so that at most five are needed. */
function scaleStep(longest: number, units: DrawnUnits): number {
  const unit = units === 'metric' ? 10 : INCH;
  const steps = units === 'metric' ? [5, 10, 20, 25, 50, 100, 200, 500] : [2, 4, 6, 12, 18, 36, 72, 180];
  return unit * (steps.find((count) => longest / unit / count <= 5) ?? Math.ceil(longest / unit / 5));
}

function draw(plan: CutStringsPlan, options: CutStringsOptions = {}): Drawing<CutStringsKey> {
  const { units = 'metric', across = ACROSS } = options;
  const pieces = piecesOf(plan, options);
  const longest = Math.max(1, ...pieces.map(({ length }) => length.high));
  const scale = (across - LEFT - 22) / longest;
  const shapes: Shape<CutStringsKey>[] = [twist(5)];
  let y = 8;
  for (const { place, count, length } of pieces) {
    const apart = Math.min(STEP, HEAP / count);
    const weight = Math.max(1.2, Math.min(5, apart * 0.74));
    const [low, likely, high] = [length.low, length.likely, length.high].map((mm) => LEFT + mm * scale) as [
      number,
      number,
      number,
    ];
    shapes.push(
      {
        tag: 'text',
        x: LEFT - 4,
        y: y + 12,
        say: step('label-cut', { place, count }),
        is: 'strong',
        'text-anchor': 'start',
      },
      {
        tag: 'text',
        x: across - 10,
        y: y + 12,
        say: step('label-cut-length', { mm: length.likely, units, source: length.source ?? '' }),
        'text-anchor': 'end',
      },
    );
    y += 24;
    const deep = (count - 1) * apart;
    let lines = '';
    for (let one = 0; one < count; one += 1) lines += d`M${LEFT} ${y + one * apart}H${likely}`;
    if (high > low)
      shapes.push({ tag: 'rect', is: 'range', x: low, y: y - 6, width: high - low, height: deep + 12, rx: 2 });
    shapes.push(cord(weight, lines, `across ${place}`));
    // Folded here, in the middle; the lone string is not folded.
    if (place !== 'lone') shapes.push(path('fold-line', d`M${(LEFT + likely) / 2} ${y - 7}v${deep + 14}`));
    y += deep + 22;
  }
  const every = scaleStep(longest, units);
  let marks = d`M${LEFT} ${y}H${LEFT + longest * scale}`;
  for (let mm = 0; mm <= longest; mm += every) {
    marks += d`M${LEFT + mm * scale} ${y}v7`;
    const last = LEFT + mm * scale > across - 30;
    if (mm)
      shapes.push({
        tag: 'text',
        x: last ? across - 8 : LEFT + mm * scale,
        y: y + 21,
        say: step('label-length', { mm, units }),
        is: 'quiet',
        ...(last ? { 'text-anchor': 'end' } : {}),
      });
  }
  shapes.push(path('bracket', marks));
  return { width: across, height: y + 28, shapes };
}

function describe(plan: CutStringsPlan, options: CutStringsOptions = {}) {
  const { units = 'metric' } = options;
  const pieces = piecesOf(plan, options);
  const say = (key: CutStringsKey, values: Values) => step(key, values);
  return [
    say('cut-strings', { pieces: pieces.reduce((sum, { count }) => sum + count, 0) }),
    ...pieces.map(({ place, count, length: { low, likely, high, source = '' } }) =>
      say('cut-strings-piece', { place, count, low, likely, high, units, source }),
    ),
  ];
}

/** The strings to cut, to one scale: how many for the bar, for each side, and the lone string. */
export const cutStrings: Figure<'cut-strings', CutStringsOptions, CutStringsKey, CutStringsPlan> = {
  name: 'cut-strings',
  measures: true,
  draw,
  describe,
};
