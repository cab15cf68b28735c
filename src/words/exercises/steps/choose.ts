import type { ChooseStepKey } from '../../../solver/exercises/choose/solution.ts';
import { CHOOSE_WORDS } from '../choose.ts';
import { CHOOSE_KNOTS_STEPS } from './choose-knots.ts';
import { CHOOSE_SHAPE_STEPS } from './choose-shape.ts';
import { CHOOSE_SUM_STEPS } from './choose-sum.ts';
import { CHOOSE_WORK_STEPS } from './choose-work.ts';
import { chosen } from './chosen.ts';
import type { Saying } from './saying.ts';

/** All groups together, for Node; a page fetches the one it needs. */
export const CHOOSE_STEPS: Readonly<Record<ChooseStepKey, Saying>> = {
  ...CHOOSE_KNOTS_STEPS,
  ...CHOOSE_SHAPE_STEPS,
  ...CHOOSE_SUM_STEPS,
  ...CHOOSE_WORK_STEPS,
  chosen: chosen(CHOOSE_WORDS),
};
