import { count, figure, type Values } from '../numbers.ts';
import { measured } from './measured.ts';
import type { Words } from './shared.ts';

const columns = (values: Values): string =>
  `${count(values['columns'], 'column')}, if each is ${measured(values)} wide`;

/** What a bar takes, as a range. */
export const capacityRangeFigureWords = {
  'capacity-range': (values) => `Columns of knots side by side along a bar of ${measured(values)}.`,
  'capacity-low': (values) => `At the least it takes ${columns(values)}.`,
  'capacity-likely': (values) => `Likely it takes ${columns(values)}.`,
  'capacity-high': (values) => `At the most it takes ${columns(values)}.`,
  'capacity-safe': ({ onBar }) =>
    `The plan puts ${count(onBar, 'string')} on the bar, and so many find room even at the least. The plan is safe.`,
  'capacity-not-safe': ({ onBar, least }) =>
    `The plan puts ${count(onBar, 'string')} on the bar. At the least it takes only ${figure(least)}, so a trial row has to decide.`,
  'label-bar-width': (values) => `the bar: ${measured(values)}`,
  'label-capacity-low': ({ columns }) => `at the least: ${figure(columns)}`,
  'label-capacity-likely': ({ columns }) => `likely: ${figure(columns)}`,
  'label-capacity-high': ({ columns }) => `at the most: ${figure(columns)}`,
  'label-plan-on-bar': ({ onBar }) => `on the bar by the plan: ${figure(onBar)}`,
} satisfies Words;
