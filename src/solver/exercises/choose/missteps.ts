import type { Slipped, Slips } from '../../missteps/contract.ts';
import type { SlipId, SlipSet } from '../../missteps/ids.ts';
import { chosen } from './judge.ts';
import { picksOf } from './picks.ts';
import type { ChooseProblem, ChooseSolution } from './problem.ts';
import { solve } from './solve.ts';

/** Every slip that some question's choices lead to, in the order of the questions. */
const CHOICE_SLIPS = [
  'direction-not-swapped',
  'row-late',
  'knots-alternated',
  'turning-knots-swapped',
  'ordinary-knot-on-bundle',
  'turning-knot-on-edge-string',
  'last-string-forgotten',
  'turning-knot-kept',
  'leading-string-outside',
  'leading-string-inside',
  'turned-before-freeing',
  'turned-before-taking-in',
  'moves-mixed-up',
  'moved-without-need',
  'carried-though-inside',
  'joined-though-outside',
  'outermost-let-out',
  'two-let-out',
  'corner-cells-s-a-side',
  'bundle-knot-outermost',
  'closing-from-wrong-end',
  'closing-after-opening',
  'bundle-counted-as-strings',
  'bundle-not-counted',
  'one-borrowed',
  'four-borrowed',
  'borrowed-though-even',
  'odd-side-left-odd',
  'odd-side-rounded-down',
  'sides-raised-bar-kept',
  'strings-counted-as-folds',
  'singles-cut',
  'not-doubled',
  'likely-trusted',
  'most-on-bar',
  'rows-in-centimetres',
  'take-up-forgotten',
  'long-float-left',
  'float-pulled-tight',
  'caught-without-need',
  'ended-too-soon',
  'joined-on-turning-knot',
  'colour-left-out',
  'trimmed-too-early',
  'trimmed-before-square-knots',
  'loose-blamed',
  'ends-blamed',
] as const satisfies readonly SlipId[];
export type ChoiceSlip = (typeof CHOICE_SLIPS)[number];

const singles = (problem: ChooseProblem): Slipped<ChooseSolution>[] => {
  const [, ...slipped] = picksOf(problem);
  return slipped.map(([choice, slip]) => ({ slips: [slip], answer: { choice } }));
};

const every = (problem: ChooseProblem, [slip, other]: SlipSet): ChooseSolution[] => {
  if (other !== undefined) return [];
  const made = singles(problem).filter(({ slips }) => slips[0] === slip);
  return made.length > 0 ? made.map(({ answer }) => answer) : [solve(problem)];
};

/** The slips of a choice. Each wrong choice says what was thought, so it is named at once, without a further case. */
export const slips: Slips<'choose'> = {
  missteps: Object.fromEntries(
    CHOICE_SLIPS.map((slip) => [
      slip,
      (problem: ChooseProblem): ChooseSolution => every(problem, [slip])[0] ?? solve(problem),
    ]),
  ),
  every,
  singles,
  pairs: () => [],
  like: (problem, answer) => {
    const choice = chosen(problem, answer);
    return (slipped) => choice !== null && slipped.choice === choice;
  },
  // The words of a choice are more than the figure they stand for: two marks of one slip.
  figuresIn: (problem, answer) => (chosen(problem, answer) === null ? 0 : 2),
  followUps: () => [],
};
