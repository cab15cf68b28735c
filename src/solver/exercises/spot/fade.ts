import type { Faded } from '../contract.ts';
import type { SpotField, SpotProblem, SpotSolution } from './problem.ts';
import { solve } from './solve.ts';

/** The half-worked form: the place is given and the name is open; the other way round where the place was missed last. */
export function fade(
  problem: SpotProblem,
  lastMissed: SpotField | null = null,
): Faded<Partial<SpotSolution>, SpotField> {
  const { place, fault } = solve(problem);
  return lastMissed === 'place' ? { given: { fault }, open: ['place'] } : { given: { place }, open: ['fault'] };
}
