import type {
  AnswerOf,
  Asking,
  ExerciseProblem,
  FieldOf,
  JudgeOptions,
  KindName,
  ProblemOf,
} from '../../solver/exercises/contract.ts';
import { type Family, type FigureFamily, familyOf, numberFamilyOf } from '../../solver/exercises/family.ts';
import type { Slips } from '../../solver/missteps/contract.ts';
import { explain } from '../../solver/missteps/explain.ts';
import type { SlipSet } from '../../solver/missteps/ids.ts';
import { explanationsIn, FOLLOW_UP, type Tell } from '../../words/slips/telling.ts';
import { questionOf } from './asked.ts';
import type { Explained } from './help.ts';

/** What looks for the slip in a problem of each kind; a single figure has those of its family. */
const MISSTEPS: { readonly [K in KindName]: (problem: ProblemOf<K>) => Promise<Slips<K>> } = {
  sum: async () => (await import('../../solver/exercises/sum/missteps.ts')).slips,
  number: async (problem) => (await NUMBER_MISSTEPS[numberFamilyOf(problem)]()).slips,
  mark: async () => (await import('../../solver/exercises/mark/missteps.ts')).slips,
  row: async () => (await import('../../solver/exercises/row/missteps.ts')).slips,
  spot: async () => (await import('../../solver/exercises/spot/missteps.ts')).slips,
  order: async () => (await import('../../solver/exercises/order/missteps.ts')).slips,
  choose: async () => (await import('../../solver/exercises/choose/missteps.ts')).slips,
  say: async () => (await import('../../solver/exercises/say/missteps.ts')).slips,
};
const NUMBER_MISSTEPS: { readonly [F in FigureFamily]: () => Promise<{ readonly slips: Slips<'number'> }> } = {
  fitting: () => import('../../solver/exercises/number/fit-missteps.ts'),
  rows: () => import('../../solver/exercises/number/row-missteps.ts'),
  thread: () => import('../../solver/exercises/number/thread-missteps.ts'),
  reading: () => import('../../solver/exercises/number/row-missteps.ts'),
  measuring: () => import('../../solver/exercises/number/measure-missteps.ts'),
};

const TELLING: { readonly [F in Exclude<Family, 'choose'>]: () => Promise<Tell> } = {
  fitting: async () => (await import('../../words/slips/tell-fitting.ts')).tellFitting,
  rows: async () => (await import('../../words/slips/tell-rows.ts')).tellRows,
  thread: async () => (await import('../../words/slips/tell-thread.ts')).tellThread,
  reading: async () => (await import('../../words/slips/tell-reading.ts')).tellReading,
  measuring: async () => (await import('../../words/slips/tell-measuring.ts')).tellMeasuring,
  knots: async () => (await import('../../words/slips/tell-knots.ts')).tellKnots,
  order: async () => (await import('../../words/slips/tell-order.ts')).tellOrder,
  // Nothing is named as a slip there.
  say: async () => () => null,
};

async function tellingOf(problem: ExerciseProblem): Promise<Tell> {
  if (problem.kind === 'choose') return (await import('./choice-parts.ts')).choiceParts(problem).tell();
  return TELLING[familyOf(problem) as Exclude<Family, 'choose'>]();
}

export interface Explaining<K extends KindName> {
  explain(
    problem: ProblemOf<K>,
    answer: AnswerOf<K>,
    first: FieldOf<K> | null,
    options?: JudgeOptions<FieldOf<K>>,
  ): Promise<Explained>;
}

/** What lies behind the wrong answers of one kind, in words. A page fetches this with the first of them. */
export function slipsFor<K extends KindName>(kind: K, judge: Asking<K>['judge']): Explaining<K> {
  async function told(
    say: string,
    problem: ProblemOf<K>,
    answer: AnswerOf<K>,
    explanations: readonly SlipSet[],
    certain: boolean,
  ): Promise<Explained> {
    const tell = await tellingOf(problem);
    const slips = explanationsIn(tell, problem, answer, { explanations, needsFollowUp: !certain }).flat();
    return { slips: { say, slips, named: certain ? explanations[0] : undefined }, followUp: undefined };
  }

  /** Asks the smallest case on which the explanations differ; where there is none, says that it can't be told. */
  async function decide(
    problem: ProblemOf<K>,
    answer: AnswerOf<K>,
    sets: readonly SlipSet[],
    earlier: readonly ProblemOf<K>[],
  ): Promise<Explained> {
    const [{ partingCase, stillPossible }, slips] = await Promise.all([
      import('../../solver/missteps/parting.ts'),
      MISSTEPS[kind](problem),
    ]);
    const asked = partingCase(slips, judge, problem, sets, earlier);
    if (!asked) return told(FOLLOW_UP.unsettled, problem, answer, sets, false);
    return {
      ...(await told(sets.length > 1 ? FOLLOW_UP.several : FOLLOW_UP.single, problem, answer, sets, false)),
      followUp: {
        problem: asked,
        question: await questionOf(kind, asked),
        settle: async (next) => {
          const left = stillPossible(slips, asked, next as AnswerOf<K>, sets);
          if (left.length === 0) return { slips: { say: FOLLOW_UP.unsettled, slips: [] }, followUp: undefined };
          if (left.length === 1) return told(FOLLOW_UP.settled, problem, answer, left, true);
          return decide(problem, answer, left, [...earlier, asked]);
        },
      },
    };
  }

  return {
    async explain(problem, answer, first, options) {
      // Most wrong answers are explained: the words come along with what looks for the slip.
      const [slips] = await Promise.all([MISSTEPS[kind](problem), tellingOf(problem)]);
      const { explanations, needsFollowUp } = explain(slips, problem, answer, options);
      if (explanations.length === 0)
        return {
          slips: {
            say: await (await import('./plain-words.ts')).plainWords<K>(
              problem,
              first,
              judge(problem, answer, options),
            ),
            slips: [],
          },
          followUp: undefined,
        };
      return explanations.length === 1 && !needsFollowUp
        ? told('', problem, answer, explanations, true)
        : decide(problem, answer, explanations, []);
    },
  };
}
