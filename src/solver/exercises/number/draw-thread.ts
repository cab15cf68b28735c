import { type Problem, type Refusal, refuse } from '../../problem.ts';
import { pitchesOf } from '../../thread/pitch.ts';
import { readThread, type Thread, type ThreadKind } from '../../thread/thread.ts';
import { type FitFigures, sumOf } from '../figures.ts';
import { type Draw, pick } from '../seed.ts';
import { carriedEnds, hasLoneString, workOut } from '../sum/solve.ts';
import { type Cut, cutQuestion, lengthOf } from './cut.ts';
import type { CutPlace, InAllQuestion, ThreadAsk, ThreadQuestion } from './problem.ts';

/** Cords of the workshop: diameters in tenths of a millimetre. */
const CORDS: { readonly [K in ThreadKind]: readonly number[] } = { soft: [8, 10, 12], firm: [8, 10, 12, 15] };

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
  ask: Exclude<ThreadAsk, 'longest-float' | 'making-minutes'>,
  fit: FitFigures,
  height: number,
  own: Thread | undefined,
): ThreadQuestion | Refusal<Problem> {
  const drawn = drawCord(next);
  const read = readThread(own ?? drawn);
  if (!read.ok) return refuse(read.problem);
  const { thread } = read;
  const sum = sumOf(fit);
  if (ask === 'folds-for-class') {
    const { onBar, bundle } = workOut(sum);
    const ends = onBar - hasLoneString(sum);
    return { kind: 'number', ask, width: fit.width, onBar: ends, bundle, learners: next(4, 20) };
  }
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
