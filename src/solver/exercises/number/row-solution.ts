import { bundlesIn, cornersIn, OUTLINE_RULES, openingCorners } from '../outline.ts';
import { type InRowQuestion, isInRowQuestion, type PieceQuestion } from './problem.ts';
import type { NumberStep } from './solution.ts';

/** Why a row has the bundles it has; the phases are told apart by what the bundles do there. */
function rowStep(problem: InRowQuestion, [left, right]: readonly [number, number]): NumberStep {
  const { row, height, bundles, closing, openingStep, closingStep } = problem;
  if (left === 1 && right === 1)
    return {
      key: 'row-at-full-width',
      values: { row, fullWidthRow: OUTLINE_RULES.fullWidthRow(problem) },
      gives: null,
    };
  const opened = [0, 1].some((side) => OUTLINE_RULES.opening(problem, row, side === 0 ? 0 : 1) > 1);
  const values = opened
    ? { row, mountedLeft: bundles[0], mountedRight: bundles[1], letOut: Math.floor((row - 1) / openingStep) }
    : {
        row,
        height,
        closingLeft: closing[0],
        closingRight: closing[1],
        rowsAfter: height - row,
        stillOut: Math.floor((height - row) / closingStep),
      };
  return { key: opened ? 'row-opening' : 'row-closing', values, gives: null };
}

/** The whole bundle of the side asked for, and how many of its strings are not in it; none where that is no sum. */
function bundleComesFrom(problem: InRowQuestion, { key, values }: NumberStep, bundle: number) {
  const sides = key === 'row-opening' ? problem.bundles : problem.closing;
  const whole = sides[problem.side === 'right' ? 1 : 0];
  const apart = Number(values['letOut'] ?? values['stillOut'] ?? 0);
  return { whole, apart: whole - apart === bundle ? apart : 0 };
}

function workRow(problem: InRowQuestion): NumberStep[] {
  const { row, width } = problem;
  const bundles = bundlesIn(OUTLINE_RULES, problem, row);
  const [left, right] = bundles;
  const why = rowStep(problem, bundles);
  if (problem.ask === 'bundle-in-row') {
    const bundle = problem.side === 'right' ? right : left;
    const { whole, apart } = bundleComesFrom(problem, why, bundle);
    return [
      why,
      { key: 'bundle-in-row', values: { row, side: problem.side ?? 'both', whole, apart, bundle }, gives: 'figure' },
    ];
  }
  const outside = cornersIn(OUTLINE_RULES, bundles);
  const last: NumberStep =
    problem.ask === 'knots-in-row'
      ? { key: 'knots-in-row', values: { row, width, outside, knots: width - outside }, gives: 'figure' }
      : {
          key: 'corner-cells-in-row',
          values: { row, left: left - 1, right: right - 1, cells: outside },
          gives: 'figure',
        };
  return [why, { key: 'bundles-left', values: { left, right }, gives: null }, last];
}

function workPiece(problem: PieceQuestion): NumberStep[] {
  const { bundles, closing, height, openingStep, closingStep } = problem;
  const full = OUTLINE_RULES.fullWidthRow(problem);
  const bundle = Math.max(...bundles);
  if (problem.ask === 'first-closing-row') {
    const most = Math.max(...closing);
    const takenIn = most - 1;
    const row = OUTLINE_RULES.firstClosingRow(problem);
    return [
      { key: 'strings-to-take-in', values: { bundle: most, takenIn }, gives: null },
      { key: 'first-closing-row', values: { height, step: closingStep, takenIn, row }, gives: 'figure' },
    ];
  }
  if (problem.ask === 'full-width-row') {
    const letOut = bundle - 1;
    return [
      { key: 'strings-to-let-out', values: { bundle, letOut }, gives: null },
      { key: 'full-width-row', values: { step: openingStep, letOut, row: full }, gives: 'figure' },
    ];
  }
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

/** A figure of the rows, worked out. */
export const workRows = (problem: InRowQuestion | PieceQuestion): NumberStep[] =>
  isInRowQuestion(problem) ? workRow(problem) : workPiece(problem);
