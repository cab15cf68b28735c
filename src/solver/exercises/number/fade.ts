import type { Faded } from '../contract.ts';
import type { NumberField, NumberProblem, NumberSolution } from './problem.ts';

/**
 * The half-worked form of a single figure: nothing can be given of it, so what stands there is its working
 * without the step that gives it (`solution`, the steps whose `gives` is null).
 */
export const fade = (_problem: NumberProblem): Faded<Partial<NumberSolution>, NumberField> => ({
  given: {},
  open: ['figure'],
});
