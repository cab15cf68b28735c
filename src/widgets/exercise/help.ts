import type { AnswerOf, FieldOf, JudgeOptions, KindName, ProblemOf } from '../../solver/exercises/contract.ts';
import { diagnose, followUp, helping, settle } from '../../solver/exercises/helping.ts';
import type { WorkedStepOf } from '../../solver/exercises/steps.ts';
import type { SlipSet } from '../../solver/missteps/ids.ts';
import { type QuestionWords, questionWords } from '../../words/exercises/question.ts';
import { hintWords, WORKED_CASE } from '../../words/exercises/hint-words.ts';
import { stepSum, stepWords } from '../../words/exercises/step-words.ts';
import { explanationWords, FOLLOW_UP, noSlipWords, type SlipWords } from '../../words/slips/index.ts';
import type { WorkingLine } from './question.tsx';

export interface FollowUpCase {
  readonly problem: ProblemOf<KindName>;
  readonly question: QuestionWords;
  /** What the answer to it shows: the slip it was, or a further case. */
  readonly settle: (answer: AnswerOf<KindName>) => Explained;
}

/** What lies behind a wrong answer: a leading sentence, the slips as far as they are known, and a case that decides. */
export interface Explained {
  readonly slips?: { readonly say: string; readonly slips: readonly SlipWords[] } | undefined;
  readonly followUp?: FollowUpCase | undefined;
}

/** Everything that was fetched for a learner who asked for help or went wrong. */
export interface HelpBoard extends Explained {
  readonly hints?: readonly string[] | undefined;
  readonly worked?:
    | { readonly says: string; readonly question: QuestionWords; readonly steps: readonly WorkingLine[] }
    | undefined;
  readonly solution?: readonly WorkingLine[] | undefined;
  /** Nothing further to say. */
  readonly hintsDone?: boolean | undefined;
}

export interface HelpFor<K extends KindName> {
  explain(
    problem: ProblemOf<K>,
    answer: AnswerOf<K>,
    first: FieldOf<K> | null,
    options?: JudgeOptions<FieldOf<K>>,
  ): Explained;
  hint(problem: ProblemOf<K>, before: HelpBoard | null, field: FieldOf<K> | null): HelpBoard;
  solution(problem: ProblemOf<K>): readonly WorkingLine[];
  /** The working without the steps that give a figure asked for. */
  partOf(problem: ProblemOf<K>): readonly WorkingLine[];
}

/** Hints, worked solutions, slips and follow-up cases of one kind, in words. A page loads this on first use. */
export function helpFor<K extends KindName>(kind: K): HelpFor<K> {
  const told = (say: string, problem: ProblemOf<K>, answer: AnswerOf<K>, explanations: readonly SlipSet[], certain: boolean): Explained => ({
    slips: { say, slips: explanationWords(problem, answer, { explanations, needsFollowUp: !certain }).flat() },
    followUp: undefined,
  });

  /** Asks the smallest case on which the explanations differ; where there is none, says that it can't be told. */
  function decide(problem: ProblemOf<K>, answer: AnswerOf<K>, sets: readonly SlipSet[], earlier: readonly ProblemOf<K>[]): Explained {
    const asked = followUp(kind, problem, sets, earlier);
    if (!asked) return told(FOLLOW_UP.unsettled, problem, answer, sets, false);
    return {
      ...told(sets.length > 1 ? FOLLOW_UP.several : FOLLOW_UP.single, problem, answer, sets, false),
      followUp: {
        problem: asked,
        question: questionWords(asked),
        settle: (next) => {
          const left = settle(kind, asked, next as AnswerOf<K>, sets);
          if (left.length === 0) return { slips: { say: FOLLOW_UP.unsettled, slips: [] }, followUp: undefined };
          if (left.length === 1) return told(FOLLOW_UP.settled, problem, answer, left, true);
          return decide(problem, answer, left, [...earlier, asked]);
        },
      },
    };
  }

  const lines = (steps: readonly WorkedStepOf<K>[]): WorkingLine[] =>
    steps.map((step) => ({ sum: stepSum(kind, step), text: stepWords(kind, step) }));

  return {
    explain(problem, answer, first, options) {
      const { explanations, needsFollowUp } = diagnose(kind, problem, answer, options);
      if (explanations.length === 0) return { slips: { say: noSlipWords(problem, first), slips: [] }, followUp: undefined };
      return explanations.length === 1 && !needsFollowUp
        ? told('', problem, answer, explanations, true)
        : decide(problem, answer, explanations, []);
    },
    hint(problem, before, field) {
      const { look, do: act, worked } = helping[kind].hints(problem, field);
      const given = before?.hints ?? [];
      const next = [look, act][given.length];
      if (next) return { ...before, hints: [...given, hintWords(kind, next)] };
      if (before?.worked || !worked) return { ...before, hintsDone: true };
      return {
        ...before,
        worked: { says: WORKED_CASE, question: questionWords(worked.problem), steps: lines(worked.steps) },
        hintsDone: true,
      };
    },
    solution: (problem) => lines(helping[kind].solution(problem)),
    partOf: (problem) => lines(helping[kind].solution(problem).filter(({ gives }) => gives === null)),
  };
}
