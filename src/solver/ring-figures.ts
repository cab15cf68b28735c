import type { Plan } from './plan.ts';
import { bundleLimit } from './thread/bundle-limit.ts';
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
  'through-three-cords',
  'through-four-cords',
] as const;
export type RingFigure = (typeof RING_FIGURES)[number];

/** Whether a figure is a length in mm; the others are counts. */
export const isRingLength = (name: RingFigure): boolean => !/^(capacity|through)-/.test(name);

/** The most strands that pass a gap as wide as so many of these cords. */
function through(cords: number, diameter: number): number {
  const passing = bundleLimit({ gap: cords * diameter, diameter });
  return passing.ok ? passing.limit : 0;
}

/**
 * A figure of a ring and a cord: lengths in mm, capacities in columns, what passes a gap of so many cords in strands.
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
    case 'through-three-cords':
      return through(3, thread.diameter);
    case 'through-four-cords':
      return through(4, thread.diameter);
  }
}
