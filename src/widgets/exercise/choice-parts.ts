import { type ChooseGroupName, groupOf } from '../../solver/exercises/choose/groups.ts';
import type { ChooseProblem } from '../../solver/exercises/choose/problem.ts';
import type { Hints } from '../../words/exercises/hints/hint.ts';
import type { Sayings } from '../../words/exercises/steps/saying.ts';
import type { Tell } from '../../words/slips/telling.ts';

interface Parts {
  readonly tell: () => Promise<Tell>;
  readonly steps: () => Promise<Sayings>;
  readonly hints: () => Promise<Partial<Hints<'choose'>>>;
}

/** The words of choices, by what they are about: a page fetches those of the question that was asked. */
const PARTS: { readonly [Group in ChooseGroupName]: Parts } = {
  knots: {
    tell: async () => (await import('../../words/slips/choose-knots.ts')).tellKnotsChoice,
    steps: async () => (await import('../../words/exercises/steps/choose-knots.ts')).CHOOSE_KNOTS_STEPS,
    hints: async () => (await import('../../words/exercises/hints/choose-knots.ts')).CHOOSE_KNOTS_HINTS,
  },
  shape: {
    tell: async () => (await import('../../words/slips/choose-shape.ts')).tellShapeChoice,
    steps: async () => (await import('../../words/exercises/steps/choose-shape.ts')).CHOOSE_SHAPE_STEPS,
    hints: async () => (await import('../../words/exercises/hints/choose-shape.ts')).CHOOSE_SHAPE_HINTS,
  },
  sum: {
    tell: async () => (await import('../../words/slips/choose-sum.ts')).tellSumChoice,
    steps: async () => (await import('../../words/exercises/steps/choose-sum.ts')).CHOOSE_SUM_STEPS,
    hints: async () => (await import('../../words/exercises/hints/choose-sum.ts')).CHOOSE_SUM_HINTS,
  },
  work: {
    tell: async () => (await import('../../words/slips/choose-work.ts')).tellWorkChoice,
    steps: async () => (await import('../../words/exercises/steps/choose-work.ts')).CHOOSE_WORK_STEPS,
    hints: async () => (await import('../../words/exercises/hints/choose-work.ts')).CHOOSE_WORK_HINTS,
  },
};

export const choiceParts = ({ ask }: ChooseProblem): Parts => PARTS[groupOf(ask)];
