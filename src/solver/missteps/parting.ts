import type { AnswerOf, Asking, KindName, ProblemOf } from '../exercises/contract.ts';
import type { Slips } from './contract.ts';
import type { SlipId, SlipSet } from './ids.ts';

/** After this many questions it stays undecided. */
export const MOST_FOLLOW_UPS = 2;

const asSet = (explanation: SlipId | SlipSet): SlipSet =>
  typeof explanation === 'string' ? [explanation] : explanation;

/**
 * The next question by which explanations of a wrong answer can be told apart: the smallest case of the same
 * kind, with other figures, on which all of them lead to different answers; where there is none, the smallest
 * that parts the most of them. A single explanation gets the smallest case on which it shows at all.
 *
 * @param slips of the kind
 * @param judge of the kind
 * @param explanations slips, or sets of slips made together, as a diagnosis gives them
 * @param earlier follow-ups asked already; after two there is no other
 * @returns the problem, always the same for the same input; null where the explanations can't be told apart
 */
export function partingCase<K extends KindName>(
  slips: Slips<K>,
  judge: Asking<K>['judge'],
  problem: ProblemOf<K>,
  explanations: readonly (SlipId | SlipSet)[],
  earlier: readonly ProblemOf<K>[] = [],
): ProblemOf<K> | null {
  const sets = explanations.map(asSet);
  if (sets.length === 0 || earlier.length >= MOST_FOLLOW_UPS) return null;
  const before = new Set([problem, ...earlier].map((one) => JSON.stringify(one)));
  const most = sets.length * (sets.length - 1) + sets.length;
  let best: { problem: ProblemOf<K>; score: number } | null = null;
  for (const candidate of slips.followUps(problem)) {
    if (before.has(JSON.stringify(candidate))) continue;
    const answers = sets.map((set) => slips.every(candidate, set));
    let parted = 0;
    answers.forEach((one, index) => {
      const alike = one.map((answer) => slips.like(candidate, answer));
      for (const other of answers.slice(index + 1))
        if (!other.some((answer) => alike.some((isThis) => isThis(answer)))) parted += 1;
    });
    const isWrong = (answer: AnswerOf<K>): boolean => judge(candidate, answer).outcome === 'not-right';
    const showing = answers.filter((each) => each.every(isWrong)).length;
    if (sets.length > 1 ? parted === 0 : showing === 0) continue;
    const score = 2 * parted + showing;
    if (best === null || score > best.score) best = { problem: candidate, score };
    if (score === most) break;
  }
  return best?.problem ?? null;
}

/**
 * The explanations that are still possible after a follow-up: those that lead to what was entered there. One
 * left: that is it. None: can't tell. Several: the next follow-up, or can't tell.
 */
export function stillPossible<K extends KindName>(
  slips: Slips<K>,
  problem: ProblemOf<K>,
  answer: AnswerOf<K>,
  explanations: readonly (SlipId | SlipSet)[],
): SlipSet[] {
  const isEntered = slips.like(problem, answer);
  return explanations.map(asSet).filter((set) => slips.every(problem, set).some(isEntered));
}
