import type { Slipped, Slips } from '../../missteps/contract.ts';
import { FITTING_SLIPS, type FittingSlip, slippedSums } from '../../missteps/fitting.ts';
import type { SlipId, SlipSet } from '../../missteps/ids.ts';
import { ROW_SLIPS, type RowSlip, slippedRules } from '../../missteps/rows.ts';
import { slippedLength, THREAD_SLIPS, type ThreadSlip } from '../../missteps/thread.ts';
import { type FitFigures, makeable, sumOf } from '../figures.ts';
import { bundlesIn, OUTLINE_RULES } from '../outline.ts';
import { readWhole } from '../read.ts';
import { cutQuestion } from './cut.ts';
import { isNear, toleranceOf } from './judge.ts';
import {
  FIT_ASKS,
  type FitQuestion,
  IN_ROW_ASKS,
  type InRowQuestion,
  isFitQuestion,
  isThreadQuestion,
  type NumberProblem,
  type NumberSolution,
  PIECE_ASKS,
  type PieceQuestion,
  type ThreadQuestion,
} from './problem.ts';
import { fromOutline, fromSum, solve } from './solve.ts';

/** The figures a learner may enter who makes this slip, the likeliest first; the right one where it does not come in. */
function byFitting(slip: FittingSlip, problem: NumberProblem): number[] {
  if (!isFitQuestion(problem)) return [solve(problem).figure];
  return slippedSums(slip, sumOf(problem)).map((figures) => fromSum(problem.ask, figures));
}

/** How near a length must lie to one that a slip gives: makers round on the way. */
const AS_RECKONED = 0.02;

function byRows(slip: RowSlip, problem: NumberProblem): number[] {
  if (isFitQuestion(problem) || isThreadQuestion(problem)) return [solve(problem).figure];
  return slippedRules(slip).map((rules) => fromOutline(rules, problem));
}

const byThread = (slip: ThreadSlip, problem: NumberProblem): number[] => [
  isThreadQuestion(problem) ? slippedLength(slip, problem) : solve(problem).figure,
];

/** No single figure asked for tells of the lone string. */
const SUM_SLIPS = FITTING_SLIPS.filter((slip) => slip !== 'lone-string-forgotten');

type Procedure = (problem: NumberProblem) => number[];

const PROCEDURES: ReadonlyMap<SlipId, Procedure> = new Map<SlipId, Procedure>([
  ...SUM_SLIPS.map((slip): [SlipId, Procedure] => [slip, (problem) => byFitting(slip, problem)]),
  ...ROW_SLIPS.filter((slip) => slip !== 'bundle-knot-outermost').map((slip): [SlipId, Procedure] => [
    slip,
    (problem) => byRows(slip, problem),
  ]),
  ...THREAD_SLIPS.map((slip): [SlipId, Procedure] => [slip, (problem) => byThread(slip, problem)]),
]);

const every = (problem: NumberProblem, [slip, other]: SlipSet): NumberSolution[] =>
  other === undefined ? (PROCEDURES.get(slip)?.(problem) ?? []).map((figure) => ({ figure })) : [];

function singles(problem: NumberProblem): Slipped<NumberSolution>[] {
  const truth = solve(problem).figure;
  return [...PROCEDURES].flatMap(([slip, figures]) =>
    [...new Set(figures(problem))]
      .filter((figure) => !isNear(problem, figure, truth, toleranceOf(problem)))
      .map((figure) => ({ slips: [slip] as const, answer: { figure } })),
  );
}

/** Small charts on small bars; the same ask first, then the others. */
function* smallSums(problem: FitQuestion): Generator<NumberProblem> {
  const { kind, startSide } = problem;
  const method = problem.oddMethod ?? 'lone-string';
  for (const ask of new Set([problem.ask, ...FIT_ASKS])) {
    for (let width = 8; width <= 20; width += 1) {
      for (let capacity = 6; capacity < width; capacity += 1) {
        const figures: FitFigures = { width, capacity, oddMethod: width % 2 === 0 ? null : method, startSide };
        if ((width === problem.width && capacity === problem.capacity) || !makeable(figures, 8)) continue;
        yield { kind, ask, ...figures };
      }
    }
  }
}

/** Level pieces, each with every row that can be asked about; the same ask first, then the others. */
function* smallPieces(problem: InRowQuestion | PieceQuestion): Generator<InRowQuestion | PieceQuestion> {
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

/** Short pieces of the same cord first. */
function* smallCuts(problem: ThreadQuestion): Generator<NumberProblem> {
  for (const size of [8, 10, 12, 16, 20, 30]) {
    if (problem.ask === 'cut-length') {
      const { place, width, diameter, threadKind, barThickness, rowPitch } = problem;
      yield cutQuestion({ place, width, diameter, threadKind, barThickness, rowPitch }, size);
    } else if (size !== problem.baseStrings) yield { ...problem, baseStrings: size };
  }
}

/** The slips of a single figure: those of the fitting sum, and those of the rows. */
export const slips: Slips<'number'> = {
  missteps: Object.fromEntries(
    [...PROCEDURES].map(([slip, figures]) => [
      slip,
      (problem: NumberProblem): NumberSolution => ({ figure: figures(problem)[0] ?? solve(problem).figure }),
    ]),
  ),
  every,
  singles,
  pairs: () => [],
  like: (problem, answer) => {
    const reading = readWhole(answer?.figure);
    return ({ figure }) => reading.verdict === 'read' && isNear(problem, reading.value, figure, AS_RECKONED);
  },
  figuresIn: (_, answer) => (readWhole(answer?.figure).verdict === 'read' ? 1 : 0),
  followUps: (problem) =>
    isFitQuestion(problem) ? smallSums(problem) : isThreadQuestion(problem) ? smallCuts(problem) : smallPieces(problem),
};
