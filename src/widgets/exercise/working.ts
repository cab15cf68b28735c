import type { ChooseProblem } from '../../solver/exercises/choose/problem.ts';
import type { ExerciseProblem, KindName, ProblemOf } from '../../solver/exercises/contract.ts';
import { type Family, familyOf } from '../../solver/exercises/family.ts';
import {
  isChartQuestion,
  isFitQuestion,
  isMeasureQuestion,
  isThreadQuestion,
} from '../../solver/exercises/number/problem.ts';
import type { WorkedStepOf } from '../../solver/exercises/steps.ts';
import { lineOf, type Sayings } from '../../words/exercises/steps/saying.ts';
import type { WorkingLine } from '../working-list.tsx';

const markingSteps = async (): Promise<Sayings> =>
  (await import('../../words/exercises/steps/marking.ts')).MARKING_STEPS;

const SAYINGS: { readonly [F in Family]: (problem: ExerciseProblem) => Promise<Sayings> } = {
  fitting: async () => (await import('../../words/exercises/steps/fitting.ts')).FITTING_STEPS,
  rows: async (problem) =>
    problem.kind === 'mark' ? markingSteps() : (await import('../../words/exercises/steps/rows.ts')).ROW_STEPS,
  thread: async () => (await import('../../words/exercises/steps/thread.ts')).THREAD_STEPS,
  reading: async (problem) =>
    problem.kind === 'mark' ? markingSteps() : (await import('../../words/exercises/steps/reading.ts')).READING_STEPS,
  measuring: async () => (await import('../../words/exercises/steps/measuring.ts')).MEASURING_STEPS,
  knots: async (problem) =>
    problem.kind === 'row'
      ? (await import('../../words/exercises/steps/row.ts')).TYING_STEPS
      : (await import('../../words/exercises/steps/spot.ts')).SPOT_STEPS,
  order: async () => (await import('../../words/exercises/steps/order.ts')).ORDER_STEPS,
  choose: async (problem) => (await import('./choice-parts.ts')).choiceParts(problem as ChooseProblem).steps(),
  say: async () => (await import('../../words/exercises/steps/say.ts')).SAY_STEPS,
};

/** How a problem of each kind is worked; a single figure as its family is. */
const SOLVING: { readonly [K in KindName]: (problem: ProblemOf<K>) => Promise<readonly WorkedStepOf<K>[]> } = {
  sum: async (problem) => (await import('../../solver/exercises/sum/solution.ts')).solution(problem),
  number: async (problem) =>
    isFitQuestion(problem)
      ? (await import('../../solver/exercises/number/fit-solution.ts')).workSum(problem)
      : isThreadQuestion(problem)
        ? (await import('../../solver/exercises/number/thread-solution.ts')).workThread(problem)
        : isMeasureQuestion(problem)
          ? (await import('../../solver/exercises/number/measure-solution.ts')).workMeasures(problem)
          : isChartQuestion(problem)
            ? (await import('../../solver/exercises/number/reading-solution.ts')).workChart(problem)
            : (await import('../../solver/exercises/number/row-solution.ts')).workRows(problem),
  mark: async (problem) => (await import('../../solver/exercises/mark/solution.ts')).solution(problem),
  row: async (problem) => (await import('../../solver/exercises/row/solution.ts')).solution(problem),
  spot: async (problem) => (await import('../../solver/exercises/spot/solution.ts')).solution(problem),
  order: async (problem) => (await import('../../solver/exercises/order/solution.ts')).solution(problem),
  choose: async (problem) => (await import('../../solver/exercises/choose/solution.ts')).solution(problem),
  say: async (problem) => (await import('../../solver/exercises/say/solution.ts')).solution(problem),
};

/** Steps of a problem in words; those of its family are fetched with the first. */
export async function linesOf<K extends KindName>(
  problem: ExerciseProblem,
  steps: readonly WorkedStepOf<K>[],
): Promise<WorkingLine[]> {
  const sayings = await SAYINGS[familyOf(problem)](problem);
  return steps.map((step) => lineOf(sayings, step));
}

/** The whole working of a problem. A page fetches this when it is asked for. */
export async function workingOf<K extends KindName>(kind: K, problem: ProblemOf<K>): Promise<WorkingLine[]> {
  const [steps] = await Promise.all([SOLVING[kind](problem), SAYINGS[familyOf(problem)](problem)]);
  return linesOf(problem, steps);
}

/** The working without the steps that give a figure asked for. */
export async function partOf<K extends KindName>(kind: K, problem: ProblemOf<K>): Promise<WorkingLine[]> {
  const steps = await SOLVING[kind](problem);
  return linesOf(
    problem,
    steps.filter(({ gives }) => gives === null),
  );
}
