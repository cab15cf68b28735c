import { columnsOn, eachOf } from '../../thread/columns.ts';
import type { MeasureQuestion } from './problem.ts';

/** Turns of cord that are measured together (craft, section 9). */
const TURNS = 10;

/** How a maker comes from what was measured to a capacity. A slip puts a rule of its own in the place of one of these. */
export interface MeasureRules {
  /** Thickness of the cord in mm, from what ten turns take. */
  readonly thickness: (tenTurns: number) => number;
  /** The figure, of the two between which a column lies, that gives the fewest columns. */
  readonly times: (narrowest: number, widest: number) => number;
  /** mm of one column of a swatch. */
  readonly perKnot: (knots: number, swatchWidth: number) => number;
  /** Columns of this pitch on the bar. */
  readonly columns: (barWidth: number, pitch: number) => number;
}

export const MEASURE_RULES: MeasureRules = {
  thickness: (tenTurns) => eachOf(TURNS, tenTurns),
  times: (_, widest) => widest,
  perKnot: eachOf,
  columns: columnsOn,
};

/** mm of one column, by these rules. */
export const columnBy = (rules: MeasureRules, problem: MeasureQuestion): number =>
  problem.ask === 'capacity-low'
    ? rules.thickness(problem.tenTurns) * rules.times(problem.narrowest, problem.widest)
    : rules.perKnot(problem.knots, problem.swatchWidth);

/** Columns that the bar takes, by these rules. */
export const capacityBy = (rules: MeasureRules, problem: MeasureQuestion): number =>
  rules.columns(problem.barWidth, columnBy(rules, problem));
