import type { WorkedStep } from '../steps.ts';
import { chooseFacts } from './facts.ts';
import type { ChooseAsk, ChooseField, ChooseProblem } from './problem.ts';
import { solve } from './solve.ts';

export type ChooseStepKey = `why-${ChooseAsk}` | 'chosen';
export type ChooseHintKey = `look-${ChooseAsk}` | `do-${ChooseAsk}`;
export type ChooseStep = WorkedStep<ChooseStepKey, ChooseField>;

/** What has to be known to choose, and then the choice. */
export function solution(problem: ChooseProblem): ChooseStep[] {
  const { choice } = solve(problem);
  const values = { ...chooseFacts(problem), choice };
  return [
    { key: `why-${problem.ask}`, values, gives: null },
    { key: 'chosen', values, gives: 'choice' },
  ];
}
