import { type Problem, type Refusal, refuse } from '../../problem.ts';
import { pieceLength } from '../../thread/base-string.ts';
import { pitchesOf } from '../../thread/pitch.ts';
import { type ReadThread, readThread, type Thread, type ThreadKind } from '../../thread/thread.ts';
import { type FitFigures, sumOf } from '../figures.ts';
import { type Draw, pick } from '../seed.ts';
import { carriedEnds, hasLoneString } from '../sum/solve.ts';
import type { CutPlace, CutQuestion, InAllQuestion, ThreadAsk, ThreadQuestion } from './problem.ts';

/** mm at each end to hold (craft, section 9). */
const TAIL = 90;
/** Cutting a little long or short does no harm: the tail takes it up. */
const TOLERANCE = 0.05;

/** Cords of the workshop: diameters in tenths of a millimetre. */
const CORDS: { readonly [K in ThreadKind]: readonly number[] } = { soft: [8, 10, 12], firm: [8, 10, 12, 15] };

/** A fold has two ends, a lone string one. */
export const endsOf = (place: CutPlace): number => (place === 'lone' ? 1 : 2);

type Cut = Pick<CutQuestion, 'place' | 'width' | 'diameter' | 'threadKind' | 'barThickness' | 'rowPitch'>;

/** mm of one piece of so many rows, as the cut list has it. */
function lengthOf({ place, width, diameter, threadKind, barThickness, rowPitch }: Cut, height: number): number {
  const thread: ReadThread = { diameter, kind: threadKind, barThickness, workingLength: 2000, measured: { rowPitch } };
  return pieceLength(place === 'side' ? 'left' : place, { width, height }, thread, pitchesOf(thread)).likely;
}

/** mm to cut for one piece. */
export const cutLength = (problem: CutQuestion): number => lengthOf(problem, problem.height);

/** Rows take up a little more string than they are high: read off a long piece, so that it is the solver's figure. */
const takeUpOf = (cut: Cut): number => {
  const rows = 1000;
  const along = (lengthOf(cut, rows) - lengthOf(cut, 0)) / endsOf(cut.place);
  return Math.round((along / (rows * cut.rowPitch)) * 100) / 100;
};

/** mm that the rows use at one end, to the whole millimetre. */
export const rowsLong = ({ height, rowPitch, takeUp }: Pick<CutQuestion, 'height' | 'rowPitch' | 'takeUp'>): number =>
  Math.round(height * rowPitch * takeUp);

/**
 * The question with all that a learner needs to work it out by hand: rows, mounting and finishing, and tail
 * make one end; the ends together, rounded up to the next 5 mm, are the solver's length.
 */
export function cutQuestion(cut: Cut, height: number): CutQuestion {
  const takeUp = takeUpOf(cut);
  const end = Math.floor(lengthOf(cut, height) / endsOf(cut.place));
  const mountingAndFinishing = end - rowsLong({ ...cut, height, takeUp }) - TAIL;
  return {
    kind: 'number',
    ask: 'cut-length',
    ...cut,
    height,
    takeUp,
    mountingAndFinishing,
    tail: TAIL,
    tolerance: TOLERANCE,
  };
}

function drawCord(next: Draw): Thread {
  const kind: ThreadKind = next(0, 1) === 1 ? 'firm' : 'soft';
  return { kind, diameter: (pick(next, CORDS[kind]) ?? 10) / 10 };
}

/**
 * A question about the string to be cut for this piece, with the learner's own cord or one that is drawn.
 *
 * @returns a refusal where the learner's cord is out of range
 */
export function drawThreadQuestion(
  next: Draw,
  ask: ThreadAsk,
  fit: FitFigures,
  height: number,
  own: Thread | undefined,
): ThreadQuestion | Refusal<Problem> {
  const drawn = drawCord(next);
  const read = readThread(own ?? drawn);
  if (!read.ok) return refuse(read.problem);
  const { thread } = read;
  const sum = sumOf(fit);
  const lone = hasLoneString(sum);
  const places: CutPlace[] = ['bar'];
  if (fit.width > fit.capacity) places.push('side');
  if (lone > 0) places.push('lone');
  const cut: Cut = {
    place: ask === 'cut-length' ? (pick(next, places) ?? 'bar') : 'bar',
    width: fit.width,
    diameter: thread.diameter,
    threadKind: thread.kind,
    barThickness: thread.barThickness,
    // A learner reckons with tenths.
    rowPitch: Math.max(0.1, Math.round(pitchesOf(thread).row.likely * 10) / 10),
  };
  if (ask === 'cut-length') return cutQuestion(cut, height);
  const inAll: InAllQuestion = {
    kind: 'number',
    ask,
    baseStrings: fit.width + carriedEnds(sum) - lone,
    foldLength: lengthOf(cut, height),
  };
  return inAll;
}
