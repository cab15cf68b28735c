import { conclude } from '../conclude.ts';
import type { FieldResult, Judged } from '../contract.ts';
import type { SayAnswer, SayField, SayProblem } from './problem.ts';
import { solve } from './solve.ts';

/** The points that were ticked; null where nothing was compared yet. */
function ticked(problem: SayProblem, answer: SayAnswer | null | undefined): readonly string[] | null {
  const listed: unknown = typeof answer === 'object' && answer !== null ? answer.points : null;
  return Array.isArray(listed) ? solve(problem).points.filter((point) => listed.includes(point)) : null;
}

/** Judges what the learner ticked: right when every point was said. Before comparing it is no try. */
export function judge(problem: SayProblem, answer: SayAnswer): Judged<SayField> {
  const said = ticked(problem, answer);
  const result: FieldResult =
    said === null
      ? { verdict: 'missing' }
      : { verdict: said.length === solve(problem).points.length ? 'right' : 'wrong' };
  return conclude(['points'], { points: result }, {});
}
