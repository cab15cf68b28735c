import { pieceLength } from '../../thread/base-string.ts';
import { pitchesOf } from '../../thread/pitch.ts';
import type { ReadThread } from '../../thread/thread.ts';
import type { CutPlace, CutQuestion } from './problem.ts';

/** mm at each end to hold (craft, section 9). */
const TAIL = 90;
/** Cutting a little long or short does no harm: the tail takes it up. */
const TOLERANCE = 0.05;

/** A fold has two ends, a lone string one. */
export const endsOf = (place: CutPlace): number => (place === 'lone' ? 1 : 2);

export type Cut = Pick<CutQuestion, 'place' | 'width' | 'diameter' | 'threadKind' | 'barThickness' | 'rowPitch'>;

/** mm of one piece of so many rows, as the cut list has it. */
export function lengthOf({ place, width, diameter, threadKind, barThickness, rowPitch }: Cut, height: number): number {
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
