import type { Asking, KindName } from '../../solver/exercises/contract.ts';
import { verdicts } from './later.ts';
import type { KindView } from './view.ts';

/** A judge, and its words, that are fetched with the first check: most who read a page check nothing on it. */
export function lateJudge<K extends KindName>(
  fetch: () => Promise<{ readonly judge: Asking<K>['judge'] }>,
): Pick<KindView<K>, 'ready' | 'judge'> {
  let judge: Asking<K>['judge'] | undefined;
  return {
    ready: async () => {
      const [fetched] = await Promise.all([fetch(), verdicts.ready()]);
      judge = fetched.judge;
    },
    judge: (problem, answer, options) => {
      if (!judge) throw new Error('An answer is judged once its judge is there.');
      return judge(problem, answer, options);
    },
  };
}
