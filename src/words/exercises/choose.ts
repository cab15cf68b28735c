import type { ChooseAsk } from '../../solver/exercises/choose/problem.ts';
import type { Values } from '../numbers.ts';
import { KNOTS_CHOICES } from './choices/knots.ts';
import { type AskedOf, choiceIn } from './choices/saying.ts';
import { SHAPE_CHOICES } from './choices/shape.ts';
import { SUM_CHOICES } from './choices/sum.ts';
import { WORK_CHOICES } from './choices/work.ts';

/** The questions of the kind, each with its choices. */
export const CHOOSE_WORDS: AskedOf<ChooseAsk> = {
  ...KNOTS_CHOICES,
  ...SHAPE_CHOICES,
  ...SUM_CHOICES,
  ...WORK_CHOICES,
};

/** A choice in the words of its question. */
export const choiceWords = (ask: ChooseAsk, choice: string, values: Values): string =>
  choiceIn(CHOOSE_WORDS[ask], choice, values);
