import type { AnswerOf, ExerciseProblem, FieldOf, KindName } from '../../solver/exercises/contract.ts';
import { sumOf } from '../../solver/exercises/figures.ts';
import { readCells } from '../../solver/exercises/mark/judge.ts';
import type { MarkProblem } from '../../solver/exercises/mark/problem.ts';
import {
  type InRowQuestion,
  isFitQuestion,
  isInRowQuestion,
  isThreadQuestion,
  type NumberProblem,
  type PieceQuestion,
} from '../../solver/exercises/number/problem.ts';
import { fromSum } from '../../solver/exercises/number/solve.ts';
import { bundlesIn, OUTLINE_RULES } from '../../solver/exercises/outline.ts';
import { readWhole } from '../../solver/exercises/read.ts';
import { entered } from '../../solver/exercises/sum/judge.ts';
import type { SumAnswer, SumFigures, SumProblem } from '../../solver/exercises/sum/problem.ts';
import { carriedEnds, workOut } from '../../solver/exercises/sum/solve.ts';
import { type FittingSlip, slippedSums } from '../../solver/missteps/fitting.ts';
import type { SlipId, SlipSet } from '../../solver/missteps/ids.ts';
import type { RowSlip } from '../../solver/missteps/rows.ts';
import type { ThreadSlip } from '../../solver/missteps/thread.ts';
import { fieldLabel } from '../exercises/labels.ts';
import { FITTING_WORDS, type SlippedSum } from './fitting.ts';
import { ROW_WORDS, type SlippedRow } from './rows.ts';
import type { SlipText } from './slip-text.ts';
import { THREAD_WORDS } from './thread.ts';

export type { SlipText } from './slip-text.ts';

type Answer = AnswerOf<KindName> | null | undefined;

/** The single figure that was entered, where one was. */
function figureIn(answer: Answer): number | null {
  const reading = readWhole((answer as { figure?: unknown } | null | undefined)?.figure);
  return reading.verdict === 'read' ? reading.value : null;
}

/** The sum as the learner worked it: this slip's own figures, and over them what was entered. */
function mySum(
  slip: FittingSlip,
  problem: SumProblem | NumberProblem,
  sum: SumProblem,
  answer: Answer,
): Readonly<SumFigures> {
  const ways = slippedSums(slip, sum);
  const [likeliest = workOut(sum)] = ways;
  if (problem.kind === 'sum') {
    const written = entered(problem, (answer ?? {}) as SumAnswer);
    const fits = (way: Readonly<SumFigures>): boolean =>
      problem.fields.every((field) => (written[field] ?? way[field]) === way[field]);
    return { ...(ways.find(fits) ?? likeliest), ...written };
  }
  const figure = figureIn(answer);
  return isFitQuestion(problem) ? (ways.find((way) => fromSum(problem.ask, way) === figure) ?? likeliest) : likeliest;
}

function slippedSum(slip: FittingSlip, problem: SumProblem | NumberProblem, answer: Answer): SlippedSum | null {
  if (problem.kind === 'number' && !isFitQuestion(problem)) return null;
  const sum = problem.kind === 'sum' ? problem : sumOf(problem);
  const { width, capacity } = problem;
  return {
    width,
    capacity,
    strands: width + carriedEnds(sum),
    due: workOut(sum),
    mine: mySum(slip, problem, sum, answer),
  };
}

/** The row of the first marked cell, where the row is what was asked for. */
function rowMarked(problem: MarkProblem, answer: Answer): number | null {
  if (problem.target !== 'first-closing-row') return null;
  const reading = readCells(problem, answer as AnswerOf<'mark'>);
  return 'cells' in reading ? (reading.cells[0]?.[0] ?? null) : null;
}

/** The row that is asked about, where it is only one. */
function rowAsked(problem: InRowQuestion | PieceQuestion | MarkProblem): number | null {
  if (problem.kind === 'number') return isInRowQuestion(problem) ? problem.row : null;
  return problem.from === problem.to ? problem.from : null;
}

function slippedRow(problem: InRowQuestion | PieceQuestion | MarkProblem, answer: Answer): SlippedRow {
  const row = rowAsked(problem);
  const [left, right] = bundlesIn(OUTLINE_RULES, problem, row ?? 1);
  const asked = problem.kind === 'mark' ? problem.target : problem.ask;
  const from = row ?? (problem.kind === 'mark' ? problem.from : 1);
  const closes = asked === 'first-closing-row' || from > OUTLINE_RULES.fullWidthRow(problem);
  return {
    piece: problem,
    row,
    left,
    right,
    phase: closes ? 'closing' : 'opening',
    mine: problem.kind === 'mark' ? rowMarked(problem, answer) : figureIn(answer),
    wanted: problem.kind === 'number' ? 'figure' : problem.target === 'bundle-knot' ? 'bundle-knots' : 'cells',
  };
}

/** What is said of a slip in this problem; null where the slip can't be made in it. */
function textOf(slip: SlipId, problem: ExerciseProblem, answer: Answer): SlipText | null {
  if (slip in FITTING_WORDS) {
    const sum = problem.kind === 'mark' ? null : slippedSum(slip as FittingSlip, problem, answer);
    return sum && FITTING_WORDS[slip as FittingSlip](sum);
  }
  if (problem.kind === 'sum') return null;
  if (slip in ROW_WORDS) {
    if (problem.kind === 'number' && (isFitQuestion(problem) || isThreadQuestion(problem))) return null;
    return ROW_WORDS[slip as RowSlip](slippedRow(problem, answer));
  }
  if (problem.kind === 'mark' || !isThreadQuestion(problem)) return null;
  return THREAD_WORDS[slip as ThreadSlip]({ question: problem, mine: figureIn(answer) ?? 0 });
}

/** A slip as it is told to the learner, in whole sentences. */
export interface SlipWords {
  readonly did: string;
  readonly why: string;
  readonly next: string;
}

/**
 * One slip in the learner's own figures: what was done, why that does not come out, the next step.
 *
 * @param certain false: the figures can come about in another way, so it says 'You would get this if …'
 * @returns null where the slip can't be made in this problem
 */
export function slipWords(problem: ExerciseProblem, slip: SlipId, answer: Answer, certain = true): SlipWords | null {
  const text = textOf(slip, problem, answer);
  return text && { ...text, did: `${certain ? 'You' : 'You would get this if you'} ${text.did}.` };
}

/**
 * All that may lie behind an answer, as a diagnosis has it: a list for each explanation, with one slip in it or
 * the two that were made together.
 */
export const explanationWords = (
  problem: ExerciseProblem,
  answer: Answer,
  { explanations, needsFollowUp }: { readonly explanations: readonly SlipSet[]; readonly needsFollowUp: boolean },
): SlipWords[][] =>
  explanations.map((slips) =>
    slips.flatMap((slip) => {
      const words = slipWords(problem, slip, answer, !needsFollowUp);
      return words === null ? [] : [words];
    }),
  );

/** Where no slip explains an answer: says so, and where to look. */
export const noSlipWords = (problem: ExerciseProblem, first: FieldOf<KindName> | null): string =>
  problem.kind === 'sum' && first !== null
    ? `No slip we know leads to these figures. The first that does not follow is “${fieldLabel(problem, first)}”. The worked solution shows each step.`
    : 'No slip we know leads to this answer. The worked solution shows each step.';

/** Round a question that finds out which slip it was. */
export const FOLLOW_UP = {
  several: 'This answer can come about in more than one way. One small question tells which it was.',
  single: 'One small question tells whether it was that.',
  settled: 'So this is what it was:',
  unsettled:
    'It can’t be told from this which slip it was, so none is noted down. The worked solution shows each step.',
} as const;
