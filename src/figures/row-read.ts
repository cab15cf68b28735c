import { blankOf, groundOf } from '../solver/chart-ground.ts';
import type { Plan } from '../solver/plan.ts';
import { chartCells } from './cells.ts';
import { cord, twist } from './cord.ts';
import { ACROSS, type Drawing, d, type Figure, path, type Shape, step } from './drawing.ts';
import { isDark, markOf } from './marks.ts';

export interface RowReadOptions {
  /** From 1; the middle row when left out. */
  readonly row?: number | undefined;
  readonly across?: number | undefined;
}

export type RowReadKey =
  | 'row-read'
  | 'row-read-begins'
  | 'row-read-stretches'
  | 'row-read-plain'
  | 'label-first-knot'
  | 'label-last-knot'
  | 'label-colour';

type RowReadPlan = Pick<Plan, 'fit' | 'rows' | 'chart'>;

const LARGEST = 26;
const MARGIN = 30;
const TOP = 40;
/** Stretches that are told one by one, at most. */
const TOLD = 14;
const LINE = 24;

interface Told {
  readonly colour: number;
  readonly name: string;
  readonly value: string;
  readonly cells: number;
}

/** The row asked for, its stretches in the order in which they are tied, and how many knots each colour has. */
function readRow({ rows, chart, fit }: RowReadPlan, { row: wanted }: RowReadOptions) {
  const at = Math.min(Math.max(1, Math.round(wanted ?? rows.length / 2) || 1), rows.length);
  const plan = rows[at - 1];
  const stretches: Told[] = [];
  const colours = new Map<number, Told>();
  if (plan && chart) {
    const rightward = plan.direction === 'rightward';
    for (let knot = 0; knot < plan.knots; knot += 1) {
      const column = rightward ? plan.firstColumn + knot : plan.lastColumn - knot;
      const colour = chart.cells[(at - 1) * fit.width + column - 1] ?? 0;
      const entry = chart.palette[colour];
      const one = { colour, name: entry?.name ?? '', value: entry?.colour ?? 'none', cells: 1 };
      const last = stretches.at(-1);
      if (last?.colour === colour) stretches[stretches.length - 1] = { ...last, cells: last.cells + 1 };
      else stretches.push(one);
      colours.set(colour, { ...one, cells: (colours.get(colour)?.cells ?? 0) + 1 });
    }
  }
  return { at, plan, stretches, colours: [...colours.values()] };
}

function draw(plan: RowReadPlan, options: RowReadOptions = {}): Drawing<RowReadKey> {
  const { across = ACROSS } = options;
  const { at, plan: row, colours } = readRow(plan, options);
  const { width } = plan.fit;
  const size = Math.min(LARGEST, (across - 2 * MARGIN) / width);
  const left = (across - size * width) / 2;
  const x = (column: number): number => left + column * size;
  const bottom = TOP + size;
  const shapes: Shape<RowReadKey>[] = [twist(5)];
  if (!row) return { width: across, height: bottom, shapes };
  const from = x(row.firstColumn - 1);
  const wide = row.knots * size;
  shapes.push({ tag: 'rect', is: 'sheet', x: from, y: TOP, width: wide, height: size });
  if (plan.chart)
    shapes.push(
      chartCells(
        plan.chart,
        [left, TOP],
        size,
        [at, at],
        true,
        (column) => column >= row.firstColumn - 1 && column < row.lastColumn,
      ),
    );
  let grid = '';
  for (let column = row.firstColumn; column < row.lastColumn; column += 1) grid += d`M${x(column)} ${TOP}v${size}`;
  shapes.push(path('grid', size < 3 ? '' : grid), path('outline', d`M${from} ${TOP}h${wide}v${size}h${-wide}z`));

  const rightward = row.direction === 'rightward';
  const [begin, end] = rightward ? [from, from + wide] : [from + wide, from];
  const way = rightward ? 1 : -1;
  const y = TOP + size / 2;
  shapes.push(cord(5, d`M${begin - way * 4} ${y}h${-way * 18}`, 'lead across'));
  // Both numbers have room only where the row is long enough for them.
  const [first, last] = [begin + way * size * 0.5, end - way * size * 0.5];
  const anchor = (right: boolean) => (right ? 'end' : 'start');
  shapes.push({
    tag: 'text',
    x: rightward ? Math.min(from, across / 2 - 60) : Math.max(from + wide, across / 2 + 60),
    y: 16,
    say: step('label-first-knot', { row: at, side: rightward ? 'left' : 'right' }),
    is: 'strong',
    'text-anchor': anchor(!rightward),
  });
  shapes.push(path('leader', d`M${first} ${22}V${TOP - 3}`));
  let line = bottom + 16;
  shapes.push(path('leader', d`M${last} ${bottom + 3}v8`), {
    tag: 'text',
    x: rightward ? Math.max(end, across / 2 + 60) : Math.min(end, across / 2 - 60),
    y: line + 12,
    say: step('label-last-knot', { knot: row.knots }),
    is: 'quiet',
    'text-anchor': anchor(rightward),
  });
  line += 30;
  // What each colour's string ties, with its mark.
  const ground = plan.chart ? groundOf(plan.chart) : -1;
  for (const { colour, name, value, cells } of colours) {
    const swatch = 15;
    shapes.push(
      {
        tag: 'g',
        is: 'cells',
        shapes: [{ tag: 'path', d: d`M${MARGIN} ${line}h${swatch}v${swatch}h${-swatch}z`, fill: value }],
      },
      {
        tag: 'path',
        is: isDark(value) ? 'mark on-dark' : 'mark',
        d: colour === ground ? '' : markOf(colour),
        transform: `translate(${MARGIN} ${line.toFixed(1)}) scale(1.5)`,
      },
      { tag: 'rect', is: 'open cell', x: MARGIN, y: line, width: swatch, height: swatch },
      {
        tag: 'text',
        x: MARGIN + swatch + 8,
        y: line + 12,
        say: step('label-colour', { name: name.slice(0, 24), knots: cells }),
        'text-anchor': 'start',
      },
    );
    line += LINE;
  }
  return { width: across, height: line + 4, shapes };
}

/** One row of the chart as it is tied: where it begins, and how many knots each colour's string ties. */
export const rowRead: Figure<'row-read', RowReadOptions, RowReadKey, RowReadPlan> = {
  name: 'row-read',
  draw,
  describe(plan, options = {}) {
    const { at, plan: row, stretches } = readRow(plan, options);
    const blank = plan.chart && blankOf(plan.chart);
    const side = row?.direction === 'leftward' ? 'right' : 'left';
    const told = stretches
      .slice(0, TOLD)
      .map(({ cells, name, colour }) => `${cells} ${colour === blank ? 'left open' : name}`)
      .join(', ');
    return [
      step<RowReadKey>('row-read', { row: at, knots: row?.knots ?? 0 }),
      step<RowReadKey>('row-read-begins', { side }),
      stretches.length > 0
        ? step<RowReadKey>('row-read-stretches', { stretches: told, more: Math.max(0, stretches.length - TOLD) })
        : step<RowReadKey>('row-read-plain', {}),
    ];
  },
};
