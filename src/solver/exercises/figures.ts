import type { OddMethod, SideName } from '../piece.ts';
import type { SumProblem } from './sum/problem.ts';
import { workOut } from './sum/solve.ts';

/** A chart and a bar, as far as they are settled. */
export interface GivenFigures {
  /** Columns of the chart, 2 to 400. */
  readonly width?: number | undefined;
  /** Strings the bar takes, 2 to 400. */
  readonly capacity?: number | undefined;
  /**
   * What is done about the odd string of an odd width; left out, a lone string, or drawn at level `mixed` unless
   * width and capacity are given.
   */
  readonly oddMethod?: OddMethod | undefined;
  /** Left out, the left, or drawn in the same way. */
  readonly startSide?: SideName | undefined;
  /** The most strands of a side bundle, 2 to 40, default 8. */
  readonly maxBundle?: number | undefined;
}

export type FitFigures = Pick<SumProblem, 'width' | 'capacity' | 'oddMethod' | 'startSide'>;

/** The sum of these figures, with nothing asked yet. */
export const sumOf = ({ width, capacity, oddMethod, startSide }: FitFigures): SumProblem => ({
  kind: 'sum',
  width,
  capacity,
  oddMethod,
  startSide,
  fields: [],
});

/** Strands in each side bundle, or null where fewer than two strings would be left on the bar. */
export function strandsOfSide(figures: FitFigures): number | null {
  const { onBar, bundle } = workOut(sumOf(figures));
  return onBar < 2 ? null : bundle;
}

/** Whether these figures give a level piece with at least two strings on the bar and no bundle over the most. */
export const makeable = (figures: FitFigures, maxBundle: number): boolean => {
  const bundle = strandsOfSide(figures);
  return bundle !== null && bundle <= maxBundle;
};
