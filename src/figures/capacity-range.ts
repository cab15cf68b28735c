import type { Fit } from '../solver/piece.ts';
import { type RingFigure, ringFigure } from '../solver/ring-figures.ts';
import type { Thread } from '../solver/thread/thread.ts';
import { cord } from './cord.ts';
import { ACROSS, type Drawing, type DrawnUnits, d, type Figure, path, type Shape, step } from './drawing.ts';

export interface CapacityRangeOptions {
  /** The cord; soft thread of 1.2 mm when left out. */
  readonly thread?: Thread | undefined;
  /** mm; left out, the least that takes what the plan's bar takes. */
  readonly barWidth?: number | null | undefined;
  /** Whether the plan's strings on the bar are compared with the least. */
  readonly plan?: boolean | undefined;
  readonly units?: DrawnUnits | undefined;
  readonly across?: number | undefined;
}

export type CapacityRangeKey =
  | 'capacity-range'
  | 'capacity-low'
  | 'capacity-likely'
  | 'capacity-high'
  | 'capacity-safe'
  | 'capacity-not-safe'
  | 'label-bar-width'
  | 'label-capacity-low'
  | 'label-capacity-likely'
  | 'label-capacity-high'
  | 'label-plan-on-bar';

const PLAIN: Thread = { diameter: 1.2, kind: 'soft' };
const LEFT = 14;
const BAR = 34;
/** Height of one way to fill the bar, and of its knots. */
const EACH = 46;
const KNOT = 18;
/** Knots narrower than this run together to a band. */
const APART = 2;

interface CapacityPlan {
  readonly fit: Fit;
}
const BOUNDS = ['low', 'likely', 'high'] as const;
type Bound = (typeof BOUNDS)[number];
const COLUMNS: Readonly<Record<Bound, RingFigure>> = {
  low: 'widest-column',
  likely: 'likely-column',
  high: 'narrowest-column',
};

const figuresOf = (plan: CapacityPlan, { thread = PLAIN, barWidth = null }: CapacityRangeOptions) => {
  const figure = (name: RingFigure): number => ringFigure(plan, thread, barWidth, name);
  return {
    bar: figure('bar-width'),
    ways: BOUNDS.map((bound) => ({ bound, count: figure(`capacity-${bound}`), column: figure(COLUMNS[bound]) })),
  };
};

function draw(plan: CapacityPlan, options: CapacityRangeOptions = {}): Drawing<CapacityRangeKey> {
  const { units = 'metric', across = ACROSS } = options;
  const { bar, ways } = figuresOf(plan, options);
  const wide = across - 2 * LEFT;
  const perMm = wide / bar;
  const shapes: Shape<CapacityRangeKey>[] = [
    { tag: 'text', x: across / 2, y: 16, say: step('label-bar-width', { mm: bar, units }), is: 'strong' },
    cord(7, d`M${LEFT} ${BAR}H${across - LEFT}`, 'metal'),
  ];
  let y = BAR + 12;
  for (const { bound, count, column } of ways) {
    const pitch = column * perMm;
    const high = y + 17;
    let knots = '';
    if (pitch < APART) knots = count > 0 ? d`M${LEFT} ${high}h${count * pitch}v${KNOT}h${-count * pitch}z` : '';
    else
      for (let index = 0; index < count; index += 1) {
        const x = LEFT + index * pitch;
        const round = Math.min(5, pitch * 0.3);
        const width = pitch - Math.min(1.4, pitch * 0.2);
        knots += d`M${x + round} ${high}h${width - 2 * round}q${round} 0 ${round} ${round}v${KNOT - 2 * round}q0 ${round} ${-round} ${round}h${2 * round - width}q${-round} 0 ${-round} ${-round}v${2 * round - KNOT}q0 ${-round} ${round} ${-round}z`;
      }
    shapes.push(
      {
        tag: 'text',
        x: LEFT,
        y: y + 11,
        say: step(`label-capacity-${bound}`, { columns: count }),
        is: bound === 'low' ? 'strong' : '',
        'text-anchor': 'start',
      },
      { tag: 'rect', is: 'range', x: LEFT, y: high - 1, width: wide, height: KNOT + 2, rx: 2 },
      path(bound === 'low' ? 'knot-block least' : 'knot-block', knots),
    );
    y += EACH;
  }
  if (options.plan) {
    const { onBar } = plan.fit;
    shapes.push({
      tag: 'text',
      x: LEFT,
      y: y + 12,
      say: step('label-plan-on-bar', { onBar }),
      is: 'must strong',
      'text-anchor': 'start',
    });
    y += 20;
  }
  return { width: across, height: y + 4, shapes };
}

/** How many columns of knots a bar takes: at the least, likely, at the most; drawn to one scale. */
export const capacityRange: Figure<'capacity-range', CapacityRangeOptions, CapacityRangeKey, CapacityPlan> = {
  name: 'capacity-range',
  measures: true,
  draw,
  describe(plan, options = {}) {
    const { bar, ways } = figuresOf(plan, options);
    const { onBar } = plan.fit;
    const { units = 'metric' } = options;
    const least = ways[0]?.count ?? 0;
    return [
      step<CapacityRangeKey>('capacity-range', { mm: bar, units }),
      ...ways.map(({ bound, count, column }) =>
        step<CapacityRangeKey>(`capacity-${bound}`, { columns: count, mm: column, units }),
      ),
      ...(options.plan
        ? [step<CapacityRangeKey>(onBar <= least ? 'capacity-safe' : 'capacity-not-safe', { onBar, least })]
        : []),
    ];
  },
};
