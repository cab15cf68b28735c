import { bundlesIn, cornersIn, OUTLINE_RULES, openingCorners } from '../outline.ts';
import { type InRowQuestion, isInRowQuestion, type PieceQuestion } from './problem.ts';
import type { NumberStep } from './solution.ts';

/**
 * How a row comes by its bundles; the phases are told apart by what the bundles do there. Where the bundle itself is
 * asked for, this step stops short of it: a half-worked form shows it.
 */
function rowStep(problem: InRowQuestion): NumberStep {
  const { row, height, bundles, closing, openingStep, closingStep } = problem;
  const [left, right] = bundlesIn(OUTLINE_RULES, problem, row);
  const asksBundle = problem.ask === 'bundle-in-row';
  if (left === 1 && right === 1)
    return {
      key: 'row-at-full-width',
      values: { row, fullWidthRow: OUTLINE_RULES.fullWidthRow(problem) },
      gives: asksBundle ? 'figure' : null,
    };
  const leaves = asksBundle ? {} : { left, right };
  const opened = [0, 1].some((side) => OUTLINE_RULES.opening(problem, row, side === 0 ? 0 : 1) > 1);
  return opened
    ? {
        key: asksBundle ? 'let-out-by-row' : 'row-opening',
        values: {
          row,
          mountedLeft: bundles[0],
          mountedRight: bundles[1],
          letOut: Math.floor((row - 1) / openingStep),
          ...leaves,
        },
        gives: null,
      }
    : {
        key: asksBundle ? 'out-still-in-row' : 'row-closing',
        values: {
          row,
          height,
          closingLeft: closing[0],
          closingRight: closing[1],
          rowsAfter: height - row,
          stillOut: Math.floor((height - row) / closingStep),
          ...leaves,
        },
        gives: null,
      };
}

/** The bundle that a row is counted from, and how many strings of it are gone there; 0 where all of them are out. */
function changeSince({ bundles, closing, side }: InRowQuestion, { key, values }: NumberStep) {
  const at = side === 'right' ? 1 : 0;
  if (key === 'let-out-by-row') return { from: bundles[at], gone: values['letOut'] ?? 0 };
  return { from: closing[at], gone: key === 'out-still-in-row' ? (values['stillOut'] ?? 0) : 0 };
}

function workRow(problem: InRowQuestion): NumberStep[] {
  const { row, width } = problem;
  const bundles = bundlesIn(OUTLINE_RULES, problem, row);
  const [left, right] = bundles;
  const how = rowStep(problem);
  const outside = cornersIn(OUTLINE_RULES, bundles);
  const last: NumberStep =
    problem.ask === 'knots-in-row'
      ? { key: 'knots-in-row', values: { row, width, outside, knots: width - outside }, gives: 'figure' }
      : problem.ask === 'bundle-in-row'
        ? {
            key: 'bundle-in-row',
            values: {
              row,
              side: problem.side ?? 'both',
              bundle: problem.side === 'right' ? right : left,
              ...changeSince(problem, how),
            },
            gives: 'figure',
          }
        : {
            key: 'corner-cells-in-row',
            values: { row, left: left - 1, right: right - 1, cells: outside },
            gives: 'figure',
          };
  return [how, last];
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

/** A figure of the rows, worked out. */
export const workRows = (problem: InRowQuestion | PieceQuestion): NumberStep[] =>
  isInRowQuestion(problem) ? workRow(problem) : workPiece(problem);
