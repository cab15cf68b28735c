import type { KindName, ProblemOf } from '../../solver/exercises/contract.ts';
import { solving } from '../../solver/exercises/solving.ts';
import type { WorkedStepOf } from '../../solver/exercises/steps.ts';
import { stepSum, stepWords } from '../../words/exercises/step-words.ts';
import type { WorkingLine } from './question.tsx';

export const linesOf = <K extends KindName>(kind: K, steps: readonly WorkedStepOf<K>[]): WorkingLine[] =>
  steps.map((step) => ({ sum: stepSum(kind, step), text: stepWords(kind, step) }));

/** The whole working of a problem. A page fetches this when it is asked for. */
export const workingOf = <K extends KindName>(kind: K, problem: ProblemOf<K>): WorkingLine[] =>
  linesOf(kind, solving[kind](problem));

/** The working without the steps that give a figure asked for. */
export const partOf = <K extends KindName>(kind: K, problem: ProblemOf<K>): WorkingLine[] =>
  linesOf(
    kind,
    solving[kind](problem).filter(({ gives }) => gives === null),
  );
