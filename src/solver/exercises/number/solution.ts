import { sumOf } from '../figures.ts';
import { bundlesIn, cornersIn, OUTLINE_RULES, openingCorners } from '../outline.ts';
import type { WorkedStep } from '../steps.ts';
import type { SumField } from '../sum/problem.ts';
import { type SumStepKey, solution as sumSolution } from '../sum/solution.ts';
import { workOut } from '../sum/solve.ts';
import { endsOf, rowsLong } from './cut.ts';
import {
  type FitAsk,
  type FitQuestion,
  type InRowQuestion,
  isFitQuestion,
  isInRowQuestion,
  isThreadQuestion,
  type NumberAsk,
  type NumberField,
  type NumberProblem,
  type PieceQuestion,
  type ThreadQuestion,
} from './problem.ts';
import { fromThread } from './solve.ts';

/** The steps of the sum, as far as the figure asked for, and those of the rows. */
export type NumberStepKey =
  | SumStepKey
  | 'folds-to-cut'
  | 'row-opening'
  | 'row-closing'
  | 'row-at-full-width'
  | 'bundle-in-row'
  | 'knots-in-row'
  | 'corner-cells-in-row'
  | 'full-width-row'
  | 'first-closing-row'
  | 'corner-cells'
  | 'rows-long'
  | 'one-end'
  | 'both-ends'
  | 'lone-end'
  | 'folds-from-strings'
  | 'base-string-in-all';
export type NumberHintKey = `look-${NumberAsk}` | `do-${NumberAsk}`;
export type NumberStep = WorkedStep<NumberStepKey, NumberField>;

const FIELD_OF: { readonly [A in FitAsk]: SumField } = {
  spare: 'spare',
  'each-side': 'bundle',
  'on-bar': 'onBar',
  'folds-to-cut': 'foldsEachSide',
};

function workSum(problem: FitQuestion): NumberStep[] {
  const field = FIELD_OF[problem.ask];
  const sum = { ...sumOf(problem), fields: [field] };
  const total = problem.ask === 'folds-to-cut';
  const steps = sumSolution(sum).map(
    ({ key, values, gives }): NumberStep => ({ key, values, gives: gives === field && !total ? 'figure' : null }),
  );
  if (!total) return steps;
  const { foldsOnBar, foldsEachSide } = workOut(sum);
  return [
    ...steps,
    {
      key: 'folds-to-cut',
      values: { foldsOnBar, foldsEachSide, folds: foldsOnBar + 2 * foldsEachSide },
      gives: 'figure',
    },
  ];
}

/** How a row comes by its bundles; the phases are told apart by what the bundles do there. */
function rowStep(problem: InRowQuestion): NumberStep {
  const { row, height, bundles, closing, openingStep, closingStep } = problem;
  const [left, right] = bundlesIn(OUTLINE_RULES, problem, row);
  if (left === 1 && right === 1)
    return {
      key: 'row-at-full-width',
      values: { row, fullWidthRow: OUTLINE_RULES.fullWidthRow(problem) },
      gives: null,
    };
  const opened = [0, 1].some((side) => OUTLINE_RULES.opening(problem, row, side === 0 ? 0 : 1) > 1);
  return opened
    ? {
        key: 'row-opening',
        values: {
          row,
          mountedLeft: bundles[0],
          mountedRight: bundles[1],
          letOut: Math.floor((row - 1) / openingStep),
          left,
          right,
        },
        gives: null,
      }
    : {
        key: 'row-closing',
        values: {
          row,
          height,
          closingLeft: closing[0],
          closingRight: closing[1],
          rowsAfter: height - row,
          stillOut: Math.floor((height - row) / closingStep),
          left,
          right,
        },
        gives: null,
      };
}

function workRow(problem: InRowQuestion): NumberStep[] {
  const { row, width } = problem;
  const bundles = bundlesIn(OUTLINE_RULES, problem, row);
  const [left, right] = bundles;
  const outside = cornersIn(OUTLINE_RULES, bundles);
  const last: NumberStep =
    problem.ask === 'knots-in-row'
      ? { key: 'knots-in-row', values: { row, width, outside, knots: width - outside }, gives: 'figure' }
      : problem.ask === 'bundle-in-row'
        ? {
            key: 'bundle-in-row',
            values: { row, side: problem.side ?? 'both', bundle: problem.side === 'right' ? right : left },
            gives: 'figure',
          }
        : {
            key: 'corner-cells-in-row',
            values: { row, left: left - 1, right: right - 1, cells: outside },
            gives: 'figure',
          };
  return [rowStep(problem), last];
}

function workPiece(problem: PieceQuestion): NumberStep[] {
  const { bundles, closing, height, openingStep, closingStep } = problem;
  const full = OUTLINE_RULES.fullWidthRow(problem);
  const bundle = Math.max(...bundles);
  if (problem.ask === 'first-closing-row') {
    const most = Math.max(...closing);
    const values = {
      height,
      bundle: most,
      step: closingStep,
      takenIn: most - 1,
      row: OUTLINE_RULES.firstClosingRow(problem),
    };
    return [{ key: 'first-closing-row', values, gives: 'figure' }];
  }
  const values = { bundle, step: openingStep, letOut: bundle - 1, row: full };
  if (problem.ask === 'full-width-row') return [{ key: 'full-width-row', values, gives: 'figure' }];
  const eachRow = Array.from({ length: full - 1 }, (_, index): NumberStep => {
    const row = index + 1;
    const [left, right] = bundlesIn(OUTLINE_RULES, problem, row);
    return {
      key: 'corner-cells-in-row',
      values: { row, left: left - 1, right: right - 1, cells: left + right - 2 },
      gives: null,
    };
  });
  const cells = openingCorners(OUTLINE_RULES, problem);
  return [...eachRow, { key: 'corner-cells', values: { rows: full - 1, cells }, gives: 'figure' }];
}

/** mm to the whole millimetre on the way; the length itself is rounded up to the next 5 mm. */
function workThread(problem: ThreadQuestion): NumberStep[] {
  if (problem.ask === 'base-string-in-all') {
    const { baseStrings, foldLength } = problem;
    const folds = baseStrings / 2;
    return [
      { key: 'folds-from-strings', values: { baseStrings, folds }, gives: null },
      { key: 'base-string-in-all', values: { folds, foldLength, length: fromThread(problem) }, gives: 'figure' },
    ];
  }
  const { height, rowPitch, takeUp, mountingAndFinishing, tail, place } = problem;
  const length = fromThread(problem);
  const rows = rowsLong(problem);
  const end = rows + mountingAndFinishing + tail;
  return [
    { key: 'rows-long', values: { height, rowPitch, takeUp, rows }, gives: null },
    { key: 'one-end', values: { rows, mountingAndFinishing, tail, end }, gives: null },
    {
      key: place === 'lone' ? 'lone-end' : 'both-ends',
      values: { end, ends: endsOf(place) * end, length },
      gives: 'figure',
    },
  ];
}

/** The figure worked out step by step. */
export const solution = (problem: NumberProblem): NumberStep[] =>
  isFitQuestion(problem)
    ? workSum(problem)
    : isThreadQuestion(problem)
      ? workThread(problem)
      : isInRowQuestion(problem)
        ? workRow(problem)
        : workPiece(problem);
