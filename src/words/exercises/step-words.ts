import type { KindName } from '../../solver/exercises/contract.ts';
import type { StepKeyOf } from '../../solver/exercises/steps.ts';
import type { Step } from '../../solver/problem.ts';
import { CHOOSE_STEPS } from './steps/choose.ts';
import { FITTING_STEPS } from './steps/fitting.ts';
import { KNOT_STEPS } from './steps/knots.ts';
import { MARKING_STEPS } from './steps/marking.ts';
import { MEASURING_STEPS } from './steps/measuring.ts';
import { ORDER_STEPS } from './steps/order.ts';
import { READING_STEPS } from './steps/reading.ts';
import { ROW_STEPS } from './steps/rows.ts';
import { SAY_STEPS } from './steps/say.ts';
import { lineOf, type Saying } from './steps/saying.ts';
import { THREAD_STEPS } from './steps/thread.ts';

/** All families together, for Node; a page fetches the one it needs. */
const STEPS: Readonly<Record<StepKeyOf<KindName>, Saying>> = {
  ...FITTING_STEPS,
  ...ROW_STEPS,
  ...KNOT_STEPS,
  ...THREAD_STEPS,
  ...MEASURING_STEPS,
  ...READING_STEPS,
  ...MARKING_STEPS,
  ...ORDER_STEPS,
  ...CHOOSE_STEPS,
  ...SAY_STEPS,
};

/** One step of a worked solution, in one to three sentences. */
export const stepWords = <K extends KindName>(_kind: K, step: Step<StepKeyOf<K>>): string => lineOf(STEPS, step).text;

/** The step's sum in figures, '32 − 5 + 1 = 28'; empty where a step has none. */
export const stepSum = <K extends KindName>(_kind: K, step: Step<StepKeyOf<K>>): string => lineOf(STEPS, step).sum;
