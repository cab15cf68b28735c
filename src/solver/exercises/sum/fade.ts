import type { Faded } from '../contract.ts';
import type { SumField, SumProblem, SumSolution } from './problem.ts';
import { solve } from './solve.ts';

/**
 * The half-worked form: every figure stands there but the one the learner missed last; the last figure where
 * nothing asked for here was missed.
 */
export function fade(problem: SumProblem, lastMissed: SumField | null = null): Faded<SumSolution, SumField> {
  const { fields } = problem;
  const open = lastMissed !== null && fields.includes(lastMissed) ? lastMissed : fields.at(-1);
  const { [open ?? 'spare']: _, ...given } = solve(problem);
  return { given, open: open === undefined ? [] : [open] };
}
