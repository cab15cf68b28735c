import { count, list } from '../numbers.ts';
import type { Words } from './shared.ts';

/** The finished picture. */
export const chartFigureWords = {
  chart: ({ title, width, height }) =>
    `${title ? `${title}, finished` : 'The finished piece'}: ${count(width, 'column')} wide and ${count(height, 'row')} high.`,
  'chart-alone': ({ title, width, height }) =>
    `${title || 'A chart'}: ${count(width, 'column')} wide and ${count(height, 'row')} high.`,
  'chart-colours': ({ colours }) => `Its colours: ${list(String(colours).split(', '))}.`,
  'chart-plain': () => 'The shape is drawn plain, since there is no chart.',
} satisfies Words;
