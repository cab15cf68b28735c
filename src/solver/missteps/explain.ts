import type { AnswerOf, FieldOf, JudgeOptions, KindName, ProblemOf } from '../exercises/contract.ts';
import type { Slips } from './contract.ts';
import type { SlipId, SlipSet } from './ids.ts';

/** What may lie behind a wrong answer. */
export interface Diagnosis {
  /** Each a slip, or two made together, that leads to exactly what was entered. Singles, or else pairs; empty where none fits. */
  readonly explanations: readonly SlipSet[];
  /** The slips of all explanations, each once, in the order of the catalogue. */
  readonly missteps: readonly SlipId[];
  /** Several explain it, or a single figure does not prove it: say "you would get this if …" and record nothing yet. */
  readonly needsFollowUp: boolean;
}

/** A diagnosis of nothing. */
export const NO_SLIP: Diagnosis = { explanations: [], missteps: [], needsFollowUp: false };

const keyOf = (slips: SlipSet): string => slips.join('+');

/** The explanations, each once, whichever way its slips are made. */
function distinct(sets: readonly SlipSet[]): SlipSet[] {
  return [...new Map(sets.map((set) => [keyOf(set), set])).values()];
}

/**
 * Names the slips whose procedure gives every figure entered, whatever was entered; where no single one does,
 * pairs of slips in sums of four figures or more. A slip that explains only part of an answer is not named:
 * a wrong diagnosis is worse than none.
 *
 * For answers that have been judged `not-right`; a right answer has no explanation and gets none.
 */
export function explain<K extends KindName>(
  slips: Slips<K>,
  problem: ProblemOf<K>,
  answer: AnswerOf<K>,
  options: JudgeOptions<FieldOf<K>> = {},
): Diagnosis {
  const figures = slips.figuresIn(problem, answer, options);
  const isEntered = slips.like(problem, answer, options);
  const fitting = (candidates: ReturnType<typeof slips.singles>): SlipSet[] =>
    distinct(candidates.filter((one) => isEntered(one.answer)).map((one) => one.slips));
  const single = fitting(slips.singles(problem));
  const explanations = single.length > 0 ? single : figures < 4 ? [] : fitting(slips.pairs(problem));
  return {
    explanations,
    missteps: [...new Set(explanations.flat())],
    needsFollowUp: explanations.length > 1 || (explanations.length === 1 && figures === 1),
  };
}
