import { SAY_POINTS, type SayPoint, type SayProblem } from '../../solver/exercises/say/problem.ts';
import { solution } from '../../solver/exercises/say/solution.ts';
import { SAY_CLAUSES, SAY_STEPS } from '../../words/exercises/steps/say.ts';
import { lineOf } from '../../words/exercises/steps/saying.ts';

/** What marks an explanation, and the model answer. A page fetches it when something was written. */
export { judge } from '../../solver/exercises/say/judge.ts';

export interface Model {
  /** The model answer, a sentence for each point. */
  readonly answer: string;
  /** What can be ticked, beginning small: 'half of the 10 spare strings is 5, and that is odd'. */
  readonly points: readonly { readonly point: SayPoint; readonly says: string }[];
}

/** The model answer to a problem, whole and by its points. */
export function modelOf(problem: SayProblem): Model {
  const steps = solution(problem);
  const points: readonly SayPoint[] = SAY_POINTS[problem.topic];
  return {
    answer: steps.map((step) => lineOf(SAY_STEPS, step).text).join(' '),
    points: steps.flatMap(({ key, values }, index) => {
      const point = points[index];
      return point === undefined ? [] : [{ point, says: SAY_CLAUSES[key](values) }];
    }),
  };
}
