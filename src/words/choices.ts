import type { OddMethod, SideName } from '../solver/piece.ts';
import type { ThreadKind } from '../solver/thread/thread.ts';

export type Choice = OddMethod | SideName | ThreadKind | 'metric' | 'inches' | 'example' | 'mine';

const CHOICES: Readonly<Record<Choice, string>> = {
  'lone-string': 'a lone string',
  'carried-end': 'a carried end',
  left: 'left',
  right: 'right',
  soft: 'soft thread that flattens',
  firm: 'firm or waxed cord',
  metric: 'centimetres',
  inches: 'inches',
  example: 'the example’s figures',
  mine: 'your own figures',
};

/** A choice as it stands inside a sentence: 'a lone string'. */
export const choiceWord = (choice: string): string => (choice in CHOICES ? CHOICES[choice as Choice] : choice);
