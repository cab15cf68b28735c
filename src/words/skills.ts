import type { Skill } from '../solver/exercises/skills.ts';

/** Each skill by its name, as it stands in a list and inside a sentence. */
export const SKILL_NAMES: Readonly<Record<Skill, string>> = {
  'reading-chart': 'reading the chart',
  measuring: 'measuring ring and cord',
  'fitting-sum': 'the fitting sum',
  'odd-numbers': 'odd numbers',
  outline: 'the outline and its corner cells',
  cutting: 'what to cut',
  mounting: 'mounting the strings',
  'first-row': 'the first row',
  'row-knots': 'which knot in which row',
  widening: 'widening',
  colours: 'changing colours',
  closing: 'closing in',
  finishing: 'gathering and finishing',
  thread: 'thread and time for a whole piece',
  faults: 'finding and mending faults',
};
