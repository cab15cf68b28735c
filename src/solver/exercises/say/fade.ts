import type { Faded } from '../contract.ts';
import type { SayField, SayProblem, SaySolution } from './problem.ts';

/** An explanation cannot be half given. */
export const fade = (_problem: SayProblem): Faded<Partial<SaySolution>, SayField> => ({ given: {}, open: ['points'] });
