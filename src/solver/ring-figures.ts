import type { Plan } from './plan.ts';
import { columnsOn } from './thread/columns.ts';
import { pitchesOf } from './thread/pitch.ts';
import type { Thread } from './thread/thread.ts';

/** Turns round a pencil that are measured together (craft, section 9). */
const TURNS = 10;

/** What is measured of a ring and a cord, and what follows from it; a sentence may name each. */
export const RING_FIGURES = [
  'bar-width',
  'ten-turns',
  'thickness',
  'narrowest-column',
  'likely-column',
  'widest-column',
  'capacity-low',
  'capacity-likely',
  'capacity-high',
] as const;
export type RingFigure = (typeof RING_FIGURES)[number];

/** Whether a figure is a length in mm; the others are counts. */
export const isRingLength = (name: RingFigure): boolean => !name.startsWith('capacity');

/**
 * A figure of a ring and a cord: lengths in mm, capacities in columns.
 *
 * @param barWidth inner width of the bar in mm; null where it was not measured, and then the least whole millimetres
 *   whose likely capacity is the plan's
 * @example ringFigure(lantern, { diameter: 1.2, kind: 'soft' }, null, 'capacity-low') // 14, of a bar of 39 mm
 */
export function ringFigure(
  { fit }: Pick<Plan, 'fit'>,
  thread: Thread,
  barWidth: number | null,
  name: RingFigure,
): number {
  const { low, likely, high } = pitchesOf(thread).column;
  const bar = barWidth ?? Math.ceil(fit.capacity * likely);
  switch (name) {
    case 'bar-width':
      return bar;
    case 'ten-turns':
      return thread.diameter * TURNS;
    case 'thickness':
      return thread.diameter;
    case 'narrowest-column':
      return low;
    case 'likely-column':
      return likely;
    case 'widest-column':
      return high;
    case 'capacity-low':
      return columnsOn(bar, high);
    case 'capacity-likely':
      return columnsOn(bar, likely);
    case 'capacity-high':
      return columnsOn(bar, low);
  }
}
