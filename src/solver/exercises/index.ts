import { choose } from './choose/index.ts';
import type { KindName } from './contract.ts';
import type { Exercise } from './exercise.ts';
import { mark } from './mark/index.ts';
import { number } from './number/index.ts';
import { order } from './order/index.ts';
import { row } from './row/index.ts';
import { say } from './say/index.ts';
import { spot } from './spot/index.ts';
import { sum } from './sum/index.ts';

export type { Checked } from './check.ts';
export { check } from './check.ts';
export type * from './choose/problem.ts';
export { CHOOSE_ASKS } from './choose/problem.ts';
export type * from './contract.ts';
export type { Exercise } from './exercise.ts';
export type { GivenFigures } from './figures.ts';
export { LEVELS } from './level.ts';
export type * from './mark/problem.ts';
export { DRAWN_TARGETS, MARK_TARGETS } from './mark/problem.ts';
export type * from './number/problem.ts';
export {
  CHART_ASKS,
  DRAWN_ASKS,
  FIT_ASKS,
  IN_ROW_ASKS,
  MEASURE_ASKS,
  NUMBER_ASKS,
  PIECE_ASKS,
  THREAD_ASKS,
} from './number/problem.ts';
export type * from './order/problem.ts';
export { SEQUENCES } from './order/problem.ts';
export type { OutlineFigures, OutlineOptions } from './outline.ts';
export type { Reason } from './read.ts';
export type * from './row/problem.ts';
export { ROW_FIELDS, ROW_PHASES } from './row/problem.ts';
export type * from './say/problem.ts';
export { SAY_TOPICS } from './say/problem.ts';
export { hashSeed } from './seed.ts';
export type * from './spot/problem.ts';
export { SPOT_FAULTS, SPOT_SHEETS } from './spot/problem.ts';
export type * from './steps.ts';
export type * from './sum/problem.ts';
export { SUM_FIELDS } from './sum/problem.ts';

/**
 * Every kind of exercise by its name; a kind that is forgotten here does not compile.
 *
 * @example exercises.sum.make(7, 'alone') // the same sum on every machine, for ever
 */
export const exercises: { readonly [K in KindName]: Exercise<K> } = {
  sum,
  number,
  mark,
  row,
  spot,
  order,
  choose,
  say,
};
