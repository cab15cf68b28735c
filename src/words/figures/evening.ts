import { count, figure, type Value } from '../numbers.ts';
import type { Words } from './shared.ts';

const PARTS: Readonly<Record<string, string>> = {
  welcome: 'welcome and cautions',
  showing: 'showing the first row',
  mounting: 'mounting the folds',
  opening: 'the opening rows',
  straight: 'the straight part',
  break: 'a break for the hands',
  'straight-on': 'the rest of the straight part',
  closing: 'the closing rows',
  finishing: 'gathering and finishing',
  clearing: 'counting pins, clearing up',
};
const part = (name: Value): string => PARTS[String(name)] ?? '';

/** Minutes after the beginning as a clock shows them: 1:05. */
const clock = (minutes: Value): string =>
  `${figure(Math.floor(Number(minutes) / 60))}:${String(Number(minutes) % 60).padStart(2, '0')}`;

/** The timetable of an evening. */
export const eveningFigureWords = {
  evening: ({ minutes }) => `The plan of an evening of ${count(minutes, 'minute')}.`,
  'evening-part': ({ part: name, from, minutes }) =>
    `At ${clock(from)}: ${part(name)}, about ${count(minutes, 'minute')}.`,
  'evening-end': ({ to }) => `At ${clock(to)} everybody goes home.`,
  'label-evening': ({ part: name, from }) => `${clock(from)}  ${part(name)}`.replace('  ', ' '),
  'label-evening-end': ({ to }) => `${clock(to)} home`,
} satisfies Words;
