import type { Chart } from '../solver/chart.ts';
import type { Fit, RowPlan, SideName } from '../solver/piece.ts';
import { chartCells } from './cells.ts';
import { cord } from './cord.ts';
import { ACROSS, type Drawing, d, type Figure, path, type Shape, step, type Values } from './drawing.ts';
import { stepped } from './stepped.ts';

export interface ChartOptions {
  /** Marks in place of knots, for a picture that is to be read in black and white. */
  readonly marks?: boolean | undefined;
  readonly across?: number | undefined;
}

export type ChartKey = 'chart' | 'chart-alone' | 'chart-colours' | 'chart-plain';

/** A whole plan, or a chart alone, which is then drawn as it stands, without a ring. */
export interface ChartPlan {
  readonly chart: Chart | null;
  readonly fit?: Fit;
  readonly rows?: readonly RowPlan[];
  readonly startSide?: SideName;
}

/** The greatest height of the picture, in widths of the drawing. */
const TALLEST = 1.5;
const MARGIN = 12;
/** Knots are seen as such from this size of a cell. */
const KNOTTED = 4;

function draw(plan: ChartPlan, { across = ACROSS, marks = false }: ChartOptions = {}): Drawing<ChartKey> {
  const { chart, fit, rows, startSide = 'left' } = plan;
  const width = fit?.width ?? chart?.width ?? 1;
  const height = rows?.length ?? chart?.height ?? 1;
  const size = Math.min((across - 2 * MARGIN) / width, (across * TALLEST) / height);
  const ring = fit ? 64 : MARGIN;
  const left = (across - size * width) / 2;
  const x = (column: number): number => left + column * size;
  const shapes: Shape<ChartKey>[] = [];
  if (fit) {
    const ends = [x(fit.left.columns), x(width - fit.right.columns)] as const;
    const middle = (ends[0] + ends[1]) / 2;
    const reach = Math.max(12, Math.min(34, Math.max(fit.left.columns, fit.right.columns) * size * 0.5 + 8));
    const arch = ends
      .map((end, index) => ({ end, out: end + (index ? reach : -reach) }))
      .map(
        ({ end, out }) =>
          d`M${end} ${ring - 5}C${(end + out) / 2} ${ring - 5} ${out} ${ring - 14} ${out} ${ring - 24}C${out} ${ring - 44} ${middle + (out - middle) * 0.6} 14 ${middle} 14`,
      );
    shapes.push(
      { tag: 'circle', is: 'key', cx: middle, cy: 9, r: 8 },
      cord(5, arch.join(''), 'metal'),
      cord(7, d`M${ends[0]} ${ring - 5}H${ends[1]}`, 'metal'),
    );
  }
  // Without rows the whole chart is the shape.
  const shape = rows
    ? stepped(rows, x, (row) => ring + (row - 1) * size)
    : d`M${left} ${ring}H${x(width)}V${ring + size * height}H${left}z`;
  if (chart) {
    shapes.push(
      chartCells(chart, [left, ring], size, [1, height], marks, (column, row) => {
        const own = rows?.[row];
        return !own || (column >= own.firstColumn - 1 && column < own.lastColumn);
      }),
    );
  } else shapes.push(path('plain', shape));
  if (size >= KNOTTED && rows && !marks) {
    shapes.push(
      {
        tag: 'pattern',
        id: 'knots',
        width: size,
        height: 2 * size,
        patternUnits: 'userSpaceOnUse',
        patternTransform: `translate(${left.toFixed(2)} ${ring})`,
        shapes: [0, 1].flatMap((row) => {
          const way = (row === 0) === (startSide === 'left') ? 1 : -1;
          const stroke = (y: number): string =>
            d`M${size * (0.5 - 0.34 * way)} ${(row + y - 0.08) * size}L${size * (0.5 + 0.34 * way)} ${(row + y + 0.08) * size}`;
          return [
            path<ChartKey>('knotted', stroke(0.44) + stroke(0.9)),
            path<ChartKey>('knotted lit', stroke(0.2) + stroke(0.66)),
          ];
        }),
      },
      { tag: 'path', d: shape, paint: 'knots' },
    );
  }
  shapes.push(path('rim', rows || !chart ? shape : ''));
  return { width: across, height: ring + size * height + MARGIN, shapes };
}

function describe({ chart, fit, rows }: ChartPlan) {
  const width = fit?.width ?? chart?.width ?? 0;
  const height = rows?.length ?? chart?.height ?? 0;
  const title = chart?.title ?? '';
  const steps = [step<ChartKey>(fit ? 'chart' : 'chart-alone', { width, height, title })];
  const say = (key: ChartKey, values: Values): void => {
    steps.push(step(key, values));
  };
  if (!chart) say('chart-plain', {});
  else
    say('chart-colours', {
      colours: chart.palette
        .filter(({ blank }) => !blank)
        .map(({ name }) => name)
        .join(', '),
    });
  return steps;
}

/** The finished picture alone, as it hangs; or a chart by itself. */
export const chart: Figure<'chart', ChartOptions, ChartKey, ChartPlan> = { name: 'chart', draw, describe };
