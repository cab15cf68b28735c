import { ROW_SLIPS, type RowSlip, slippedRules } from '../../missteps/rows.ts';
import { bundlesIn, OUTLINE_RULES } from '../outline.ts';
import {
  IN_ROW_ASKS,
  type InRowQuestion,
  isFitQuestion,
  isThreadQuestion,
  type NumberProblem,
  PIECE_ASKS,
  type PieceQuestion,
} from './problem.ts';
import { type Procedures, slipsBy } from './procedures.ts';
import { fromOutline, solve } from './solve.ts';

function byRows(slip: RowSlip, problem: NumberProblem): number[] {
  if (isFitQuestion(problem) || isThreadQuestion(problem)) return [solve(problem).figure];
  return slippedRules(slip).map((rules) => fromOutline(rules, problem));
}

/** Where a bundle's knot stands is marked and never counted. */
const COUNTED = ROW_SLIPS.filter((slip) => slip !== 'bundle-knot-outermost');

export const ROW_PROCEDURES: Procedures = new Map(
  COUNTED.map((slip) => [slip, (problem: NumberProblem) => byRows(slip, problem)]),
);

/** Level pieces, each with every row that can be asked about; the same ask first, then the others. */
export function* smallPieces(problem: InRowQuestion | PieceQuestion): Generator<InRowQuestion | PieceQuestion> {
  const asks = [problem.ask, ...IN_ROW_ASKS, ...PIECE_ASKS];
  const { kind, openingStep, closingStep } = problem;
  for (const ask of new Set(asks)) {
    for (const bundle of [2, 4, 6]) {
      for (const closingBundle of [bundle, bundle + 1]) {
        const width = 2 * closingBundle + 4;
        const height = openingStep * (bundle - 1) + closingStep * (closingBundle - 1) + 4;
        if (width === problem.width && height === problem.height) continue;
        const bundles = [bundle, bundle] as const;
        const closing = [closingBundle, closingBundle] as const;
        const piece = { kind, width, height, bundles, closing, openingStep, closingStep };
        const inRow = IN_ROW_ASKS.find((known) => known === ask);
        const whole = PIECE_ASKS.find((known) => known === ask);
        if (whole) yield { ...piece, ask: whole };
        if (!inRow) continue;
        for (let row = 1; row <= height; row += 1) {
          // A row at full width has knots to count, but no bundle to ask about.
          const bundled = Math.max(...bundlesIn(OUTLINE_RULES, piece, row)) > 1;
          if (bundled || inRow === 'knots-in-row') yield { ...piece, ask: inRow, row, side: null };
        }
      }
    }
  }
}

/** The slips of a figure of the rows. */
export const slips = slipsBy(ROW_PROCEDURES, (problem) =>
  isFitQuestion(problem) || isThreadQuestion(problem) ? [] : smallPieces(problem),
);
