import { count, figure } from '../numbers.ts';
import type { Words } from './shared.ts';

/** A plain row along the bar. */
export const trialRowFigureWords = {
  'trial-row': ({ columns }) => `One plain row of ${count(columns, 'knot')}, tied on folds along the bar.`,
  'trial-row-flat': () => 'The knots lie flat side by side, and the row is no longer than the bar.',
  'trial-row-crowded': ({ columns }) =>
    `There is room for ${figure(columns)}. Every other knot is pushed down below its neighbours, so the row stacks up in two layers.`,
  'label-trial-row': ({ columns }) => `room for ${count(columns, 'knot')}`,
  'label-trial-row-crowded': ({ columns }) => `${count(columns, 'knot')} in the same room`,
} satisfies Words;
