import { tellKnotsChoice } from './choose-knots.ts';
import { tellShapeChoice } from './choose-shape.ts';
import { tellSumChoice } from './choose-sum.ts';
import { tellWorkChoice } from './choose-work.ts';
import type { Tell } from './telling.ts';

/** All groups together, for Node; a page fetches the one it needs. */
export const tellChoice: Tell = (slip, problem, answer) =>
  tellKnotsChoice(slip, problem, answer) ??
  tellShapeChoice(slip, problem, answer) ??
  tellSumChoice(slip, problem, answer) ??
  tellWorkChoice(slip, problem, answer);
