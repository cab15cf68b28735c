import type { Plan } from '../solver/plan.ts';
import { back } from './back.ts';
import { bar } from './bar.ts';
import { capacityRange } from './capacity-range.ts';
import { chart } from './chart.ts';
import { closing } from './closing.ts';
import { cutStrings } from './cut-strings.ts';
import type { Words } from './drawing.ts';
import { evening } from './evening.ts';
import { fault } from './fault.ts';
import { foldsWhy } from './folds-why.ts';
import { gathering } from './gathering.ts';
import { levelEnds } from './level-ends.ts';
import { opening } from './opening.ts';
import { outline } from './outline.ts';
import { placing } from './placing.ts';
import { row } from './row.ts';
import { rowRead } from './row-read.ts';
import { type DrawnFigure, type ShowOptions, showFigure } from './show.ts';
import { silhouette } from './silhouette.ts';
import { steadyRing } from './steady-ring.ts';
import { swatch } from './swatch.ts';
import { tenTurns } from './ten-turns.ts';
import { tightFloat } from './tight-float.ts';
import { trialRow } from './trial-row.ts';
import { waysToHang } from './ways-to-hang.ts';

/** Every figure by its name: one file and one line each. */
export const figures = {
  back,
  bar,
  'capacity-range': capacityRange,
  chart,
  closing,
  'cut-strings': cutStrings,
  evening,
  fault,
  'folds-why': foldsWhy,
  gathering,
  'level-ends': levelEnds,
  opening,
  outline,
  placing,
  row,
  'row-read': rowRead,
  silhouette,
  'steady-ring': steadyRing,
  swatch,
  'ten-turns': tenTurns,
  'tight-float': tightFloat,
  'trial-row': trialRow,
  'ways-to-hang': waysToHang,
};

export type FigureName = keyof typeof figures;
type KeyOf<Name extends FigureName> = ReturnType<(typeof figures)[Name]['describe']>[number]['key'];
/** Every sentence and label that any figure needs. */
export type FigureKey = { [Name in FigureName]: KeyOf<Name> }[FigureName];
export type FigureWords = Words<FigureKey>;
export type FigureOptions<Name extends FigureName> = Parameters<(typeof figures)[Name]['draw']>[1];

export type { Drawing, Shape, Words } from './drawing.ts';
export { markOf } from './marks.ts';
export { type DrawnFigure, type ShowOptions, showFigure } from './show.ts';

/**
 * A figure of a plan by its name, as SVG text, with its title and the same content in words.
 *
 * @param options those of the figure; rows the piece has not got are taken as the nearest it has
 * @example
 * drawFigure('bar', plan, { stage: 'shared' }, { id: 'plate-1', words: figureWords }).svg
 */
export function drawFigure<Name extends FigureName>(
  name: Name,
  plan: Plan,
  options: FigureOptions<Name>,
  show: ShowOptions<FigureKey>,
): DrawnFigure {
  return showFigure<object, FigureKey, Plan>(figures[name], plan, options, show);
}
