import { choiceProblem, type Problem, type Refusal, refuse } from '../../problem.ts';
import { drawFigures } from '../draw-figures.ts';
import { drawPiece } from '../draw-piece.ts';
import { knownLevel, type Level } from '../level.ts';
import { OUTLINE_RULES, type OutlineFigures } from '../outline.ts';
import { make as makeRow } from '../row/make.ts';
import { type Draw, draw, pick, type Seed } from '../seed.ts';
import { faultyPlans } from './in-plan.ts';
import { type Faulty, faultyRows } from './in-row.ts';
import { faultySums, WRITTEN } from './in-sum.ts';
import {
  SPOT_FAULTS,
  SPOT_SHEETS,
  type SpotOptions,
  type SpotPlan,
  type SpotProblem,
  type SpotRow,
  type SpotSum,
} from './problem.ts';

/** Other draws that are looked through where the first has no room for the fault that is asked for. */
const TRIES = 300;
/** Rows of a plan that are shown: few enough to check each. */
const LINES = 5;

/** One of these sheets: first a fault, then a place for it, so that no fault is rare because it has few places. */
function drawn<Shown>(next: Draw, sheets: readonly Faulty<Shown>[], { fault }: SpotOptions): Faulty<Shown> | undefined {
  const names = [...new Set(sheets.map((sheet) => sheet.fault))];
  const name = fault ?? pick(next, names);
  return pick(
    next,
    sheets.filter((sheet) => sheet.fault === name),
  );
}

function inRow(seed: Seed, level: Level, options: SpotOptions): SpotRow | Refusal<Problem> {
  let refusal: Refusal<Problem> = refuse({ code: 'no-fit', values: {} });
  for (let tried = 0; tried < TRIES; tried += 1) {
    const made = makeRow(`${seed} row ${tried}`, level, options);
    if ('ok' in made) {
      refusal = made;
      continue;
    }
    const row = { ...made, kind: 'spot', in: 'row' } as const;
    const sheet = drawn(draw(`${seed} fault ${tried}`), faultyRows(row), options);
    if (sheet) return { ...row, shown: sheet.shown };
  }
  return refusal;
}

/** Five rows of the opening or of the closing, with as many bundles among them as there can be. */
function linesOf(next: Draw, piece: OutlineFigures, phase: SpotOptions['phase']): readonly [number, number] {
  const closing = OUTLINE_RULES.firstClosingRow(piece);
  const closes = closing > 0 && (phase === 'closing' || (phase === undefined && next(0, 1) === 1));
  const to = closes ? piece.height : Math.min(piece.height, LINES);
  return [Math.max(1, to - LINES + 1), to];
}

function inPlan(seed: Seed, level: Level, options: SpotOptions): SpotPlan | Refusal<Problem> {
  let refusal: Refusal<Problem> = refuse({ code: 'no-fit', values: {} });
  for (let tried = 0; tried < TRIES; tried += 1) {
    const next = draw(`${seed} plan ${tried}`);
    const made = drawPiece(next, level, { ...options, oddMethod: options.oddMethod ?? 'lone-string' });
    if ('ok' in made) {
      refusal = made;
      continue;
    }
    const piece = { kind: 'spot', in: 'plan', ...made.piece } as const;
    const sheet = drawn(next, faultyPlans(piece, ...linesOf(next, made.piece, options.phase)), options);
    if (sheet) return { ...piece, shown: sheet.shown };
  }
  return refusal;
}

function inSum(seed: Seed, level: Level, options: SpotOptions): SpotSum | Refusal<Problem> {
  let refusal: Refusal<Problem> = refuse({ code: 'no-fit', values: {} });
  for (let tried = 0; tried < TRIES; tried += 1) {
    const next = draw(`${seed} sum ${tried}`);
    const fit = drawFigures(next, level, options, ({ width, capacity }) => width > capacity);
    if ('ok' in fit) {
      refusal = fit;
      continue;
    }
    const sum = { kind: 'spot', in: 'sum', ...fit, fields: WRITTEN } as const;
    const sheet = drawn(next, faultySums(sum), options);
    if (sheet) return { ...sum, shown: sheet.shown };
  }
  return refusal;
}

/**
 * A row, a plan or a sum with one fault in it. What is drawn is the fault first, then its place. A level that is not one
 * of the four counts as `mixed`.
 *
 * @returns the problem; a refusal where `options` hold figures that do not go together, or that leave no room for the
 *   fault asked for
 */
export function make(seed: Seed, level: Level): SpotProblem;
export function make(seed: Seed, level: Level, options: SpotOptions): SpotProblem | Refusal<Problem>;
export function make(seed: Seed, level: Level, options: SpotOptions = {}): SpotProblem | Refusal<Problem> {
  const asked = knownLevel(level);
  // A fault that is asked for may need more than the first levels have: an odd half, or a bundle of four.
  const known = options.fault !== undefined && asked !== 'mixed' ? 'alone' : asked;
  const drawnSheet = pick(draw(seed), SPOT_SHEETS) ?? 'row';
  const sheet = options.in ?? drawnSheet;
  const bad =
    choiceProblem('in', sheet, SPOT_SHEETS) ??
    (options.fault === undefined ? null : choiceProblem('fault', options.fault, SPOT_FAULTS[sheet]));
  if (bad) return refuse(bad);
  return { row: inRow, plan: inPlan, sum: inSum }[sheet](seed, known, options);
}
