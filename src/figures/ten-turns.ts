import { INCH } from '../solver/inch.ts';
import type { Thread } from '../solver/thread/thread.ts';
import { cord, twist } from './cord.ts';
import { ACROSS, type Drawing, type DrawnUnits, d, type Figure, path, type Shape, step } from './drawing.ts';

export interface TenTurnsOptions {
  /** The cord; soft thread of 1.2 mm when left out. */
  readonly thread?: Thread | undefined;
  readonly units?: DrawnUnits | undefined;
  readonly across?: number | undefined;
}

export type TenTurnsKey = 'ten-turns' | 'ten-turns-one' | 'label-ten-turns' | 'label-mark' | 'label-unit';

const PLAIN: Thread = { diameter: 1.2, kind: 'soft' };
const TURNS = 10;
/** Units that the ten turns take in the drawing, and where they begin. */
const WIDE = 200;
const LEFT = 80;
/** Upper and lower edge of the pencil, and of the ruler. */
const PENCIL = [46, 88] as const;
const RULER = [118, 152] as const;
/** The width of the weakest part of the drawing that is still a mark. */
const CLOSEST = 5;

/** What a ruler's unit is in mm, and how far apart, in that unit, its marks and its numbers may stand. */
const RULERS = {
  metric: { mm: 1, marks: [0.1, 0.5, 1, 2, 5, 10, 20, 50], numbers: [1, 2, 5, 10, 20, 50, 100] },
  inches: { mm: INCH, marks: [1 / 32, 1 / 16, 1 / 8, 1 / 4, 1 / 2, 1, 2], numbers: [1 / 8, 1 / 4, 1 / 2, 1, 2, 4] },
} as const;

/** The distance of the ruler's marks in its unit, and of its numbers. */
const every = (perUnit: number, room: number, steps: readonly number[]): number =>
  steps.find((units) => units * perUnit >= room) ?? 1000;

function draw(
  _plan: object,
  { thread = PLAIN, units = 'metric', across = ACROSS }: TenTurnsOptions = {},
): Drawing<TenTurnsKey> {
  const { diameter } = thread;
  const turn = WIDE / TURNS;
  const ruler = RULERS[units];
  const perUnit = (turn / diameter) * ruler.mm;
  const [top, bottom] = PENCIL;
  const end = LEFT + WIDE;
  const middle = (top + bottom) / 2;
  const shapes: Shape<TenTurnsKey>[] = [
    twist(turn * 0.9),
    path('pencil', d`M10 ${middle}L44 ${top}H${across - 16}V${bottom}H44z`),
    path('lead-tip', d`M10 ${middle}l11 ${-7}v14z`),
    path('rule', d`M44 ${top + 14}H${across - 16}M44 ${bottom - 14}H${across - 16}`),
  ];
  let turns = '';
  for (let index = 0; index < TURNS; index += 1)
    turns += d`M${LEFT + (index + 0.5) * turn + 2} ${top - 5}L${LEFT + (index + 0.5) * turn - 2} ${bottom + 5}`;
  shapes.push(cord(turn * 0.94, turns, 'lead'));

  const [rulerTop, rulerBottom] = RULER;
  const last = (across - 24 - LEFT) / perUnit;
  const apart = every(perUnit, CLOSEST, ruler.marks);
  const named = every(perUnit, 26, ruler.numbers);
  shapes.push({
    tag: 'rect',
    is: 'sheet',
    x: LEFT - 14,
    y: rulerTop,
    width: across - LEFT + 2,
    height: rulerBottom - rulerTop,
    rx: 2,
  });
  let marks = '';
  const count = Math.floor(last / apart);
  for (let mark = 0; mark <= count; mark += 1) {
    const at = mark * apart;
    const x = LEFT + at * perUnit;
    const isNamed = Math.abs(at / named - Math.round(at / named)) < 1e-6;
    marks += d`M${x} ${rulerTop}v${isNamed ? 11 : 6}`;
    if (isNamed && x < across - 20)
      shapes.push({ tag: 'text', x, y: rulerBottom - 8, say: step('label-mark', { at, units }), is: 'quiet' });
  }
  shapes.push(
    path('leader', marks),
    path('given leader', d`M${LEFT} ${bottom + 8}V${rulerTop + 14}M${end} ${bottom + 8}V${rulerTop + 14}`),
    {
      tag: 'text',
      x: LEFT + WIDE / 2,
      y: 20,
      say: step('label-ten-turns', { mm: diameter * TURNS, units }),
      is: 'strong',
    },
    {
      tag: 'text',
      x: LEFT - 20,
      y: rulerBottom - 8,
      say: step('label-unit', { units }),
      is: 'quiet',
      'text-anchor': 'end',
    },
  );
  return { width: across, height: rulerBottom + 8, shapes };
}

/** Ten turns of the cord side by side round a pencil, and a ruler under them. */
export const tenTurns: Figure<'ten-turns', TenTurnsOptions, TenTurnsKey, object> = {
  name: 'ten-turns',
  measures: true,
  draw,
  describe: (_plan, { thread = PLAIN, units = 'metric' } = {}) => [
    step('ten-turns', { mm: thread.diameter * TURNS, units }),
    step('ten-turns-one', { mm: thread.diameter, units }),
  ],
};
