import type { AnswerOf, FieldOf, JudgeOptions, KindName, ProblemOf } from '../../solver/exercises/contract.ts';
import { diagnose } from '../../solver/missteps/diagnose.ts';
import type { SlipSet } from '../../solver/missteps/ids.ts';
import { explanationWords, FOLLOW_UP, noSlipWords } from '../../words/slips/index.ts';
import type { Explained } from './help.ts';

export interface Slips<K extends KindName> {
  explain(
    problem: ProblemOf<K>,
    answer: AnswerOf<K>,
    first: FieldOf<K> | null,
    options?: JudgeOptions<FieldOf<K>>,
  ): Promise<Explained>;
}

/** What lies behind the wrong answers of one kind, in words. A page fetches this with the first of them. */
export function slipsFor<K extends KindName>(kind: K): Slips<K> {
  const told = (
    say: string,
    problem: ProblemOf<K>,
    answer: AnswerOf<K>,
    explanations: readonly SlipSet[],
    certain: boolean,
  ): Explained => ({
    slips: { say, slips: explanationWords(problem, answer, { explanations, needsFollowUp: !certain }).flat() },
    followUp: undefined,
  });

  /** Asks the smallest case on which the explanations differ; where there is none, says that it can't be told. */
  async function decide(
    problem: ProblemOf<K>,
    answer: AnswerOf<K>,
    sets: readonly SlipSet[],
    earlier: readonly ProblemOf<K>[],
  ): Promise<Explained> {
    const [{ followUp, settle }, { questionWords }] = await Promise.all([
      import('../../solver/missteps/follow-up.ts'),
      import('../../words/exercises/question.ts'),
    ]);
    const asked = followUp(kind, problem, sets, earlier);
    if (!asked) return told(FOLLOW_UP.unsettled, problem, answer, sets, false);
    return {
      ...told(sets.length > 1 ? FOLLOW_UP.several : FOLLOW_UP.single, problem, answer, sets, false),
      followUp: {
        problem: asked,
        question: questionWords(asked),
        settle: async (next) => {
          const left = settle(kind, asked, next as AnswerOf<K>, sets);
          if (left.length === 0) return { slips: { say: FOLLOW_UP.unsettled, slips: [] }, followUp: undefined };
          if (left.length === 1) return told(FOLLOW_UP.settled, problem, answer, left, true);
          return decide(problem, answer, left, [...earlier, asked]);
        },
      },
    };
  }

  return {
    async explain(problem, answer, first, options) {
      const { explanations, needsFollowUp } = diagnose(kind, problem, answer, options);
      if (explanations.length === 0)
        return { slips: { say: noSlipWords(problem, first), slips: [] }, followUp: undefined };
      return explanations.length === 1 && !needsFollowUp
        ? told('', problem, answer, explanations, true)
        : decide(problem, answer, explanations, []);
    },
  };
}
