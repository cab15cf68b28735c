import { isThreadQuestion } from '../../solver/exercises/number/problem.ts';
import type { ThreadSlip } from '../../solver/missteps/thread.ts';
import { figureIn, type Tell } from './telling.ts';
import { THREAD_WORDS } from './thread.ts';

/** Slips of the string to cut. */
export const tellThread: Tell = (slip, problem, answer) =>
  slip in THREAD_WORDS && problem.kind === 'number' && isThreadQuestion(problem)
    ? THREAD_WORDS[slip as ThreadSlip]({ question: problem, mine: figureIn(answer) ?? 0 })
    : null;
