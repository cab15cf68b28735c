import type { StepKeyOf } from '../../../solver/exercises/steps.ts';
import { TYING_STEPS } from './row.ts';
import type { Saying } from './saying.ts';
import { SPOT_STEPS } from './spot.ts';

export type KnotStepKey = StepKeyOf<'row' | 'spot'>;

/** The steps of what is tied, and of what is found on a sheet. */
export const KNOT_STEPS: Readonly<Record<KnotStepKey, Saying>> = { ...TYING_STEPS, ...SPOT_STEPS };
