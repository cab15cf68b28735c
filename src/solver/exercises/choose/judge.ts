import { conclude } from '../conclude.ts';
import type { FieldResult, Judged } from '../contract.ts';
import type { ChooseAnswer, ChooseField, ChooseProblem } from './problem.ts';
import { solve } from './solve.ts';

/** What was chosen, if it is one that stands there. */
export function chosen(problem: ChooseProblem, answer: ChooseAnswer | null | undefined): string | null {
  const choice = typeof answer === 'object' && answer !== null ? answer.choice : null;
  return problem.choices.find((one) => one === choice) ?? null;
}

/** Judges a choice; one that does not stand there cannot be read. */
export function judge(problem: ChooseProblem, answer: ChooseAnswer): Judged<ChooseField> {
  const choice = chosen(problem, answer);
  const entered = typeof answer === 'object' && answer !== null ? answer.choice : null;
  const result: FieldResult =
    choice !== null
      ? { verdict: choice === solve(problem).choice ? 'right' : 'wrong' }
      : entered === null || entered === undefined
        ? { verdict: 'missing' }
        : { verdict: 'unreadable', reason: 'not-on-the-list' };
  return conclude(['choice'], { choice: result }, {});
}
