import type { FitAsk, FitQuestion } from '../../solver/exercises/number/problem.ts';
import type { SumProblem } from '../../solver/exercises/sum/problem.ts';
import type { OddMethod, SideName } from '../../solver/piece.ts';
import { count, figure } from '../numbers.ts';
import { fieldLabel } from './labels.ts';
import type { QuestionWords } from './question-words.ts';

interface ChartOnBar {
  readonly width: number;
  readonly capacity: number;
  readonly oddMethod: OddMethod | null;
  readonly startSide: SideName;
}

/** A chart no wider than the bar has no bundle, so nothing is said of where row 1 begins. */
export function chartOnBar({ width, capacity, oddMethod, startSide }: ChartOnBar): string {
  const odd = {
    'lone-string': ' The odd string is a lone string.',
    'carried-end': ` The odd string is a carried end. Row 1 begins on the ${startSide}.`,
  };
  return `The chart is ${count(width, 'column')} wide. The bar takes ${figure(capacity)}.${oddMethod === null ? '' : odd[oddMethod]}`;
}

const FIT_ASKED: Readonly<Record<FitAsk, string>> = {
  spare: 'How many strings are spare, before anything is borrowed?',
  'each-side': 'How many strings does each side bundle have in the end?',
  'on-bar': 'How many strings hang on the bar in the end?',
  'folds-to-cut': 'How many folds do you cut in all, for the bar and both sides?',
};

/** Where a carried end or a lone string could be counted in or left out. */
function fitAsked(ask: FitAsk, oddMethod: OddMethod | null): string {
  if (ask === 'folds-to-cut')
    return oddMethod === 'lone-string' ? `${FIT_ASKED[ask]} The lone string is no fold.` : FIT_ASKED[ask];
  const counts = oddMethod === 'carried-end' && ask !== 'on-bar';
  return counts ? `${FIT_ASKED[ask]} Count the carried end too.` : FIT_ASKED[ask];
}

/** A single figure of a fitting sum. */
export const fitFigureAsked = (problem: FitQuestion): QuestionWords => ({
  given: chartOnBar(problem),
  ask: fitAsked(problem.ask, problem.oddMethod),
});

/** A fitting sum. */
export function sumAsked(problem: SumProblem): QuestionWords {
  const [only, ...others] = problem.fields;
  const single = only !== undefined && others.length === 0;
  return {
    given: chartOnBar(problem),
    ask: single
      ? `Work out this figure: ${fieldLabel(problem, only)}.`
      : 'Work out the fitting sum, one figure after the other.',
  };
}
