import type { Plan } from '../solver/plan.ts';
import { type EveningPart, type EveningStretch, eveningOf, type Hands } from '../solver/thread/evening.ts';
import { ACROSS, type Drawing, d, type Figure, path, type Shape, step, TEXT } from './drawing.ts';

export interface EveningOptions {
  /** Whose hands the work is reckoned for; first-time hands when left out. */
  readonly hands?: Hands | undefined;
  readonly across?: number | undefined;
}

export type EveningKey = 'evening' | 'evening-part' | 'evening-end' | 'label-evening' | 'label-evening-end';

export type EveningPlan = Pick<Plan, 'fit' | 'rows' | 'outline'>;

const TOP = 20;
/** Height of the line that a label takes, and of the whole bar at least. */
const LINE = 27;
const TALL = 250;
const BAR = { x: 14, width: 44 };
const LABELS = 96;

const BESIDE: readonly EveningPart[] = ['welcome', 'showing', 'break', 'clearing'];

function draw(plan: EveningPlan, { hands, across = ACROSS }: EveningOptions = {}): Drawing<EveningKey> {
  const stretches = eveningOf(plan, hands);
  const total = stretches.at(-1)?.to ?? 1;
  const tall = Math.max(TALL, stretches.length * LINE);
  const y = (minutes: number): number => TOP + (tall * minutes) / total;
  const shapes: Shape<EveningKey>[] = stretches.map(({ part, from, to }) => ({
    tag: 'rect',
    is: BESIDE.includes(part) ? 'cell side' : 'cell plain',
    x: BAR.x,
    y: Math.round(y(from) * 10) / 10,
    width: BAR.width,
    height: Math.round((y(to) - y(from)) * 10) / 10,
  }));
  const label = (at: number, minutes: number, say: Shape<EveningKey> & { tag: 'text' }): void => {
    const right = BAR.x + BAR.width;
    shapes.push(path('leader', d`M${right} ${y(minutes)}L${right + 14} ${at}H${LABELS - 6}`), say);
  };
  const gap = tall / stretches.length;
  stretches.forEach(({ part, from }, index) => {
    const at = TOP + index * gap;
    label(at, from, {
      tag: 'text',
      x: LABELS,
      y: at + TEXT * 0.36,
      say: step('label-evening', { part, from }),
      'text-anchor': 'start',
    });
  });
  label(TOP + tall, total, {
    tag: 'text',
    x: LABELS,
    y: TOP + tall + TEXT * 0.36,
    say: step('label-evening-end', { to: total }),
    is: 'strong',
    'text-anchor': 'start',
  });
  return { width: across, height: TOP + tall + 18, shapes };
}

function describe(plan: EveningPlan, { hands }: EveningOptions = {}) {
  const stretches: readonly EveningStretch[] = eveningOf(plan, hands);
  const total = stretches.at(-1)?.to ?? 0;
  return [
    step<EveningKey>('evening', { minutes: total }),
    ...stretches.map(({ part, from, to }) => step<EveningKey>('evening-part', { part, from, minutes: to - from })),
    step<EveningKey>('evening-end', { to: total }),
  ];
}

/** An evening as a bar from the open door to the swept floor, each part as long as it is estimated to take. */
export const evening: Figure<'evening', EveningOptions, EveningKey, EveningPlan> = { name: 'evening', draw, describe };
