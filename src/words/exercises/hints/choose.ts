import { CHOOSE_KNOTS_HINTS } from './choose-knots.ts';
import { CHOOSE_SHAPE_HINTS } from './choose-shape.ts';
import { CHOOSE_SUM_HINTS } from './choose-sum.ts';
import { CHOOSE_WORK_HINTS } from './choose-work.ts';
import type { Hints } from './hint.ts';

/** All groups together, for Node; a page fetches the one it needs. */
export const CHOOSE_HINTS: Hints<'choose'> = {
  ...CHOOSE_KNOTS_HINTS,
  ...CHOOSE_SHAPE_HINTS,
  ...CHOOSE_SUM_HINTS,
  ...CHOOSE_WORK_HINTS,
};
