import { type Accessor, createEffect, createSignal } from 'solid-js';
import type { Problem } from '../solver/problem.ts';
import type { ProblemWording, problemWords } from '../words/problems.ts';

/**
 * A problem in words. They are fetched with the first problem: most learners never meet one, and need not load what is
 * said about it.
 */
export function createProblemWords(
  problem: Accessor<Problem | null>,
  wording?: Accessor<ProblemWording>,
): Accessor<string> {
  const [say, setSay] = createSignal<typeof problemWords | null>(null);
  createEffect(() => {
    if (problem() && !say()) void import('../words/problems.ts').then((words) => setSay(() => words.problemWords));
  });
  return () => {
    const found = problem();
    return found ? (say()?.(found, wording?.()) ?? '') : '';
  };
}
