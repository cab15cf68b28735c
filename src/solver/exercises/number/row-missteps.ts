import { ROW_SLIPS, type RowSlip, slippedRules } from '../../missteps/rows.ts';
import { bundlesIn, OUTLINE_RULES, type OutlineFigures } from '../outline.ts';
import {
  type ChartQuestion,
  IN_ROW_ASKS,
  isChartQuestion,
  isRowsQuestion,
  type NumberProblem,
  PIECE_ASKS,
  type RowsQuestion,
} from './problem.ts';
import { type Procedures, slipsBy } from './procedures.ts';
import { fromOutline, solve } from './solve.ts';

/** Nothing is marked in a figure. */
const COUNTED = ROW_SLIPS.filter((slip) => slip !== 'plain-corners-marked');

const byRows = (slip: RowSlip, problem: NumberProblem): number[] =>
  isRowsQuestion(problem) ? slippedRules(slip).map((rules) => fromOutline(rules, problem)) : [solve(problem).figure];

export const ROW_PROCEDURES: Procedures = new Map(
  COUNTED.map((slip) => [slip, (problem: NumberProblem) => byRows(slip, problem)]),
);

/** The same question about a level piece, in all the ways that can part two slips; smallest first. */
function* likeChart(problem: ChartQuestion, piece: OutlineFigures): Generator<ChartQuestion> {
  const { kind } = problem;
  const full = OUTLINE_RULES.fullWidthRow(piece);
  switch (problem.ask) {
    case 'column-of-knot':
      for (let row = full + 1; row >= 1; row -= 1)
        yield { kind, ask: problem.ask, ...piece, row, knot: 3, startSide: problem.startSide };
      return;
    case 'knots-of-colour': {
      const { colour, stretches } = problem;
      const ground = stretches.find((stretch) => stretch.colour !== colour)?.colour ?? '';
      for (const [first, second] of [
        [3, 2],
        [2, 3],
      ] as const) {
        const left = piece.width - first - second - 2;
        const lengths = [1, first, left, second, 1];
        yield {
          kind,
          ask: problem.ask,
          ...piece,
          row: full,
          colour,
          stretches: lengths.map((cells, at) => ({ colour: at % 2 === 1 ? colour : ground, cells })),
        };
      }
      return;
    }
    case 'plain-rows-above':
      for (let inset = Math.max(...piece.bundles) - 1; inset >= 1; inset -= 1)
        yield { kind, ask: problem.ask, ...piece, pictureRow: 1, inset };
  }
}

/** Level pieces, each with every row that can be asked about; the same ask first, then the others. */
export function* smallPieces(problem: RowsQuestion): Generator<RowsQuestion> {
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
        if (isChartQuestion(problem) && ask === problem.ask) yield* likeChart(problem, piece);
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
export const slips = slipsBy(ROW_PROCEDURES, (problem) => (isRowsQuestion(problem) ? smallPieces(problem) : []));
