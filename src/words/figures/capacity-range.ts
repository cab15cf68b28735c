import { count, figure } from '../numbers.ts';
import type { Words } from './shared.ts';

const each = (mm: number | string | undefined): string => `if each is ${figure(mm)} mm wide`;

/** What a bar takes, as a range. */
export const capacityRangeFigureWords = {
  'capacity-range': ({ mm }) => `Columns of knots side by side along a bar of ${figure(mm)} mm.`,
  'capacity-low': ({ columns, mm }) => `At the least it takes ${count(columns, 'column')}, ${each(mm)}.`,
  'capacity-likely': ({ columns, mm }) => `Likely it takes ${count(columns, 'column')}, ${each(mm)}.`,
  'capacity-high': ({ columns, mm }) => `At the most it takes ${count(columns, 'column')}, ${each(mm)}.`,
  'capacity-safe': ({ onBar }) =>
    `The plan puts ${count(onBar, 'string')} on the bar, and so many find room even at the least. The plan is safe.`,
  'capacity-not-safe': ({ onBar, least }) =>
    `The plan puts ${count(onBar, 'string')} on the bar. At the least it takes only ${figure(least)}, so a trial row has to decide.`,
  'label-bar-width': ({ mm }) => `the bar: ${figure(mm)} mm`,
  'label-capacity-low': ({ columns }) => `at the least: ${figure(columns)}`,
  'label-capacity-likely': ({ columns }) => `likely: ${figure(columns)}`,
  'label-capacity-high': ({ columns }) => `at the most: ${figure(columns)}`,
  'label-plan-on-bar': ({ onBar }) => `on the bar by the plan: ${figure(onBar)}`,
} satisfies Words;
