import type { WorkedStep } from '../steps.ts';
import { factsOf } from '../whole-piece.ts';
import { type SAY_POINTS as Points, SAY_POINTS, type SayField, type SayProblem, type SayTopic } from './problem.ts';

export type SayStepKey = { [T in SayTopic]: `${T}:${(typeof Points)[T][number]}` }[SayTopic];
export type SayHintKey = `look-${SayTopic}` | `do-${SayTopic}`;
export type SayStep = WorkedStep<SayStepKey, SayField>;

/** The model answer, point by point. */
export function solution(problem: SayProblem): SayStep[] {
  const { topic } = problem;
  const values = factsOf(problem);
  const points = SAY_POINTS[topic];
  return points.map((point, index): SayStep => {
    // The pair is one of the topic's own; the compiler sees only that both are known.
    const key = `${topic}:${point}` as SayStepKey;
    return { key, values, gives: index === points.length - 1 ? 'points' : null };
  });
}
