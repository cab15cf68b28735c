import { count, figure } from '../../numbers.ts';
import type { Saying } from './saying.ts';

export type MeasuringStepKey = 'one-turn' | 'widest-column' | 'swatch-column' | 'columns-on-bar';

/** The steps of a capacity that is measured. */
export const MEASURING_STEPS: Readonly<Record<MeasuringStepKey, Saying>> = {
  'one-turn': [
    ({ tenTurns, thickness }) => `Ten turns take ${figure(tenTurns)} mm, so the cord is ${figure(thickness)} mm thick.`,
    ({ tenTurns, thickness }) => `${figure(tenTurns)} ÷ 10 = ${figure(thickness)}`,
  ],
  'widest-column': [
    ({ column }) =>
      `The fewest columns fit where each is as wide as it may come out. The widest is ${figure(column)} mm.`,
    ({ thickness, widest, column }) => `${figure(thickness)} × ${figure(widest)} = ${figure(column)}`,
  ],
  'swatch-column': [
    ({ knots, swatchWidth, column }) =>
      `${count(knots, 'knot')} take ${figure(swatchWidth)} mm, so one column takes about ${figure(column)} mm.`,
  ],
  'columns-on-bar': [
    ({ barWidth, places, columns }) =>
      `That goes into ${figure(barWidth)} mm about ${figure(places)} times. Part of a column is no column, so the bar takes ${figure(columns)}.`,
  ],
};
