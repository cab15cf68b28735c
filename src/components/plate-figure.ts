import { type DrawnFigure, drawFigure, type FigureName } from '../figures/index.ts';
import { type PiecePlateOptions, piecePlate } from '../figures/piece/index.ts';
import { plateOptions } from '../figures/plate-options.ts';
import type { Plan } from '../solver/index.ts';
import { figureWords } from '../words/figure-words.ts';
import { pieceFigureWords } from '../words/figures/piece.ts';
import { EXAMPLE_THREAD } from './example-thread.ts';

/** What a plate may show of a plan: any figure, or the whole piece. */
export type PlateName = FigureName | 'piece';

/**
 * A plate of a plan, drawn while the pages are built.
 *
 * @param options as a lesson gives them; a row may be the name of a figure of the plan
 */
export function plateFigure(
  name: PlateName,
  plan: Plan,
  options: Readonly<Record<string, unknown>>,
  id: string,
): DrawnFigure {
  const given = plateOptions(name, plan, options, EXAMPLE_THREAD);
  return name === 'piece'
    ? piecePlate(plan, given as PiecePlateOptions, { id, words: pieceFigureWords })
    : drawFigure(name, plan, given, { id, words: figureWords });
}
