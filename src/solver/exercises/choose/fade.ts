import type { Faded } from '../contract.ts';
import type { ChooseField, ChooseProblem, ChooseSolution } from './problem.ts';

/** A choice cannot be half given: its working stands there instead, without the step that chooses. */
export const fade = (_problem: ChooseProblem): Faded<Partial<ChooseSolution>, ChooseField> => ({
  given: {},
  open: ['choice'],
});
