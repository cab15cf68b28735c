import type { AnswerOf, ExerciseProblem, FieldOf, KindName } from '../../solver/exercises/contract.ts';
import { readWhole } from '../../solver/exercises/read.ts';
import type { SlipId, SlipSet } from '../../solver/missteps/ids.ts';
import { fieldLabel } from '../exercises/labels.ts';
import type { SlipText } from './slip-text.ts';

export type Answer = AnswerOf<KindName> | null | undefined;

/** What is said of a slip of one family in this problem; null where it is none of them or can't be made in it. */
export type Tell = (slip: SlipId, problem: ExerciseProblem, answer: Answer) => SlipText | null;

/** The single figure that was entered, where one was. */
export function figureIn(answer: Answer): number | null {
  const reading = readWhole((answer as { figure?: unknown } | null | undefined)?.figure);
  return reading.verdict === 'read' ? reading.value : null;
}

/** A slip as it is told to the learner, in whole sentences. */
export interface SlipWords {
  readonly did: string;
  readonly why: string;
  readonly next: string;
}

/**
 * One slip in the learner's own figures: what was done, why that does not come out, the next step.
 *
 * @param tell of the slip's family
 * @param certain false: the figures can come about in another way, so it says 'You would get this if …'
 * @returns null where the slip can't be made in this problem
 */
export function slipIn(
  tell: Tell,
  problem: ExerciseProblem,
  slip: SlipId,
  answer: Answer,
  certain = true,
): SlipWords | null {
  const text = tell(slip, problem, answer);
  return text && { ...text, did: `${certain ? 'You' : 'You would get this if you'} ${text.did}.` };
}

/**
 * All that may lie behind an answer, as a diagnosis has it: a list for each explanation, with one slip in it or
 * the two that were made together.
 */
export const explanationsIn = (
  tell: Tell,
  problem: ExerciseProblem,
  answer: Answer,
  { explanations, needsFollowUp }: { readonly explanations: readonly SlipSet[]; readonly needsFollowUp: boolean },
): SlipWords[][] =>
  explanations.map((slips) =>
    slips.flatMap((slip) => {
      const words = slipIn(tell, problem, slip, answer, !needsFollowUp);
      return words === null ? [] : [words];
    }),
  );

/** Where no slip explains an answer: says so, and where to look. */
export function noSlipWords(problem: ExerciseProblem, first: FieldOf<KindName> | null): string {
  if (problem.kind === 'say') return 'Add what is missing in your own words. Then tick it.';
  if (problem.kind === 'order')
    return 'No single slip we know leads to this order. Begin with the first step that stands too early.';
  return problem.kind === 'sum' && first !== null
    ? `No slip we know leads to these figures. The first that does not follow is “${fieldLabel(problem, first)}”. The worked solution shows each step.`
    : 'No slip we know leads to this answer. The worked solution shows each step.';
}

/** Round a question that finds out which slip it was. */
export const FOLLOW_UP = {
  several: 'This answer can come about in more than one way. One small question tells which it was.',
  single: 'One small question tells.',
  settled: 'So this is what it was:',
  unsettled:
    'It can’t be told from this which slip it was, so none is noted down. The worked solution shows each step.',
} as const;
