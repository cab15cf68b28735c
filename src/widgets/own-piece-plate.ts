import { type PiecePlateOptions, piecePlate } from '../figures/piece/index.ts';
import type { DrawnFigure } from '../figures/show.ts';
import type { Plan } from '../solver/plan.ts';
import { pieceFigureWords } from '../words/figures/piece.ts';

/** The whole piece as a plate of a lesson, from the learner's own plan. */
export const drawOwnPiece = (plan: Plan, options: PiecePlateOptions, id: string): DrawnFigure =>
  piecePlate(plan, options, { id, words: pieceFigureWords });
