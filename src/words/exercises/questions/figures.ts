import type { ProblemOf } from '../../../solver/exercises/contract.ts';
import type { MarkTarget } from '../../../solver/exercises/mark/problem.ts';
import type {
  CutPlace,
  CutQuestion,
  FitAsk,
  InAllQuestion,
  InRowAsk,
  NumberProblem,
  PieceAsk,
} from '../../../solver/exercises/number/problem.ts';
import type { OutlineFigures } from '../../../solver/exercises/outline.ts';
import type { OddMethod, SideName } from '../../../solver/piece.ts';
import { count, figure, ordinal } from '../../numbers.ts';
import { fieldLabel } from '../labels.ts';
import type { QuestionWords } from '../question-words.ts';

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

const often = (step: number): string => (step === 1 ? 'in every row' : `in every ${ordinal(step)} row`);

const bundles = ([left, right]: OutlineFigures['bundles'], what: string): string =>
  left === right
    ? `${figure(left)} on each side${what}`
    : `${figure(left)} on the left and ${figure(right)} on the right${what}`;

function shapedPiece({ width, height, bundles: mounted, closing, openingStep, closingStep }: OutlineFigures): string {
  const closes =
    Math.max(...closing) < 2
      ? 'It keeps its full width to the end.'
      : `It closes to bundles of ${bundles(closing, '')} in the last row, with one string taken in on each side ${often(closingStep)}.`;
  return `The chart is ${count(width, 'column')} wide and ${count(height, 'row')} high. The side bundles hold ${bundles(mounted, '')} in row 1. After that, one string is let out on each side ${often(openingStep)}. ${closes}`;
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

const IN_ROW_ASKED: Readonly<Record<InRowAsk, (row: number, side: SideName | null) => string>> = {
  'knots-in-row': (row) => `How many knots does row ${row} have?`,
  'bundle-in-row': (row, side) =>
    `How many strings are tied as one ${side === null ? 'at each edge' : `at the ${side} edge`} in row ${row}?`,
  'corner-cells-in-row': (row) => `How many corner cells does row ${row} have, both sides together?`,
};

const PIECE_ASKED: Readonly<Record<PieceAsk, string>> = {
  'full-width-row': 'Which row is the first of full width?',
  'first-closing-row': 'In which row does closing begin?',
  'corner-cells': 'How many corner cells are there from row 1 to full width, both sides together?',
};

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

/** The question of a single figure. */
export function numberQuestion(problem: NumberProblem): QuestionWords {
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
    case 'knots-in-row':
    case 'bundle-in-row':
    case 'corner-cells-in-row':
      return { given: shapedPiece(problem), ask: IN_ROW_ASKED[problem.ask](problem.row, problem.side) };
    case 'full-width-row':
    case 'first-closing-row':
    case 'corner-cells':
      return { given: shapedPiece(problem), ask: PIECE_ASKED[problem.ask] };
  }
}

const MARK_ASKED: Readonly<Record<MarkTarget, (from: number, to: number) => string>> = {
  'corner-cells': (from, to) =>
    from === to ? `Mark every corner cell of row ${from}.` : `Mark every corner cell in rows ${from} to ${to}.`,
  'bundle-knot': (from) => `Mark the cell of each bundle’s knot in row ${from}.`,
  'first-closing-row': () => 'Mark the row in which closing begins. Any cell of it will do.',
};

/** The question of a fitting sum. */
export const sumQuestion = (problem: ProblemOf<'sum'>): QuestionWords => {
  const [only, ...others] = problem.fields;
  const single = only !== undefined && others.length === 0;
  return {
    given: chartOnBar(problem),
    ask: single
      ? `Work out this figure: ${fieldLabel(problem, only)}.`
      : 'Work out the fitting sum, one figure after the other.',
  };
};

/** The question of cells to mark. */
export const markQuestion = (problem: ProblemOf<'mark'>): QuestionWords => ({
  given: shapedPiece(problem),
  ask: MARK_ASKED[problem.target](problem.from, problem.to),
});

/** The question of a sum, a figure or cells, whichever it is. */
export function figureQuestion(problem: ProblemOf<'sum' | 'number' | 'mark'>): QuestionWords {
  if (problem.kind === 'sum') return sumQuestion(problem);
  return problem.kind === 'number' ? numberQuestion(problem) : markQuestion(problem);
}
