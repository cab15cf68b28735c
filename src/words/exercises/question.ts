import type { ExerciseProblem, KindName, ProblemOf } from '../../solver/exercises/contract.ts';
import {
  type CutPlace,
  type CutQuestion,
  type FitAsk,
  type InAllQuestion,
  isRowsQuestion,
  type MeasureQuestion,
  type NumberProblem,
} from '../../solver/exercises/number/problem.ts';
import type { OddMethod, SideName } from '../../solver/piece.ts';
import type { ThreadKind } from '../../solver/thread/thread.ts';
import { count, figure } from '../numbers.ts';
import { fieldLabel } from './labels.ts';
import { markAsked } from './mark-question.ts';
import type { QuestionWords } from './question-words.ts';
import { rowsAsked } from './rows-question.ts';

export type { QuestionWords } from './question-words.ts';

interface ChartOnBar {
  readonly width: number;
  readonly capacity: number;
  readonly oddMethod: OddMethod | null;
  readonly startSide: SideName;
}

/** A chart no wider than the bar has no bundle, so nothing is said of where row 1 begins. */
function chartOnBar({ width, capacity, oddMethod, startSide }: ChartOnBar): string {
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

const PLACES: Readonly<Record<CutPlace, string>> = {
  bar: 'a fold for the bar',
  side: 'a fold for a side bundle',
  lone: 'the lone string',
};

function cutAsked({ place, height, rowPitch, takeUp, mountingAndFinishing, tail }: CutQuestion): QuestionWords {
  return {
    given: `The piece has ${count(height, 'row')}, and each row is ${figure(rowPitch)} mm high. The rows use ${figure(takeUp)} times their height in string. Besides that, each end needs ${figure(mountingAndFinishing)} mm for mounting and finishing, and ${figure(tail)} mm to hold.`,
    ask: `How many millimetres long do you cut ${PLACES[place]}? A little more or less will do.`,
  };
}

const inAllAsked = ({ baseStrings, foldLength }: InAllQuestion): QuestionWords => ({
  given: `Folds give ${count(baseStrings, 'base string')} of a piece. Each fold is cut ${figure(foldLength)} mm long.`,
  ask: 'How many millimetres of string do you need for all the folds together?',
});

const THREADS: Readonly<Record<ThreadKind, string>> = { soft: 'soft floss', firm: 'firm cord' };

const measureAsked = (problem: MeasureQuestion): QuestionWords =>
  problem.ask === 'capacity-low'
    ? {
        given: `The bar is ${figure(problem.barWidth)} mm wide. Ten turns of the cord take ${figure(problem.tenTurns)} mm. In ${THREADS[problem.threadKind]} a column of knots is ${figure(problem.narrowest)} to ${figure(problem.widest)} times as wide as the cord.`,
        ask: 'How many columns does the bar take at the least?',
      }
    : {
        given: `The bar is ${figure(problem.barWidth)} mm wide. A swatch of ${count(problem.knots, 'knot')} side by side is ${figure(problem.swatchWidth)} mm wide.`,
        ask: 'How many columns does the bar take, by this swatch?',
      };

function numberAsked(problem: NumberProblem): QuestionWords {
  if (isRowsQuestion(problem)) return rowsAsked(problem);
  switch (problem.ask) {
    case 'cut-length':
      return cutAsked(problem);
    case 'base-string-in-all':
      return inAllAsked(problem);
    case 'spare':
    case 'each-side':
    case 'on-bar':
    case 'folds-to-cut':
      return { given: chartOnBar(problem), ask: fitAsked(problem.ask, problem.oddMethod) };
    case 'capacity-low':
    case 'capacity-by-swatch':
      return measureAsked(problem);
  }
}

const ASKED: { readonly [K in KindName]: (problem: ProblemOf<K>) => QuestionWords } = {
  sum: (problem) => {
    const [only, ...others] = problem.fields;
    const single = only !== undefined && others.length === 0;
    return {
      given: chartOnBar(problem),
      ask: single
        ? `Work out this figure: ${fieldLabel(problem, only)}.`
        : 'Work out the fitting sum, one figure after the other.',
    };
  },
  number: numberAsked,
  mark: markAsked,
};

/** The question of an exercise. No figure of its answer is in it. */
export function questionWords(problem: ExerciseProblem): QuestionWords {
  switch (problem.kind) {
    case 'sum':
      return ASKED.sum(problem);
    case 'number':
      return ASKED.number(problem);
    case 'mark':
      return ASKED.mark(problem);
  }
}
