import { another } from '../like.ts';
import type { Hints } from '../steps.ts';
import { clues } from './clues.ts';
import { make } from './make.ts';
import { SAY_TOPICS, type SayProblem, type SayTopic } from './problem.ts';
import { type SayHintKey, type SayStep, solution } from './solution.ts';

/** Another topic: the same one with other figures would say the answer itself. */
const nextTopic = (topic: SayTopic): SayTopic =>
  SAY_TOPICS[(SAY_TOPICS.indexOf(topic) + 3) % SAY_TOPICS.length] ?? 'sides-even';

const workedLike = (problem: SayProblem): SayProblem | null =>
  another(
    problem,
    (seed) => make(seed, 'mixed', { topic: nextTopic(problem.topic) }),
    (other) => other.width !== problem.width,
  );

/** Hints for an explanation. The worked case explains something else, to show how it is done. */
export function hints(problem: SayProblem): Hints<SayProblem, SayStep, SayHintKey> {
  const worked = workedLike(problem);
  return { ...clues(problem), worked: worked && { problem: worked, steps: solution(worked) } };
}
