import type {
  ClassQuestion,
  CutPlace,
  CutQuestion,
  FloatQuestion,
  InAllQuestion,
  MeasureQuestion,
  ThreadQuestion,
  TimeQuestion,
} from '../../solver/exercises/number/problem.ts';
import { INCH } from '../../solver/inch.ts';
import type { ThreadKind } from '../../solver/thread/thread.ts';
import { count, figure, list } from '../numbers.ts';
import { threadName } from '../thread-names.ts';
import type { QuestionWords } from './question-words.ts';

const PLACES: Readonly<Record<CutPlace, string>> = {
  bar: 'a fold for the bar',
  side: 'a fold for a side bundle',
  lone: 'the lone string',
};

/** A cord and its rows are finer than the eighths of an inch, and these sums are made to come out in whole millimetres. */
const inMillimetres = `This exercise stays in millimetres, because a cord is finer than the eighths of an inch. An inch is ${INCH} mm.`;

function cutAsked({ place, height, rowPitch, takeUp, mountingAndFinishing, tail }: CutQuestion): QuestionWords {
  return {
    given: `The piece has ${count(height, 'row')}, and each row is ${figure(rowPitch)} mm high. The rows use ${figure(takeUp)} times their height in string. Besides that, each end needs ${figure(mountingAndFinishing)} mm for mounting and finishing, and ${figure(tail)} mm to hold.`,
    ask: `How many millimetres long do you cut ${PLACES[place]}? A little more or less will do.`,
    inMillimetres,
  };
}

const inAllAsked = ({ baseStrings, foldLength }: InAllQuestion): QuestionWords => ({
  given: `The folds of a piece give ${count(baseStrings, 'base string')} in all. Each fold is cut ${figure(foldLength)} mm long.`,
  ask: 'How many millimetres of string do you need for all the folds together?',
  inMillimetres,
});

const THREADS: Readonly<Record<ThreadKind, string>> = { soft: 'soft floss', firm: 'firm cord' };

/** What a ring takes. */
export const measureAsked = (problem: MeasureQuestion): QuestionWords =>
  problem.ask === 'capacity-low'
    ? {
        given: `The bar is ${figure(problem.barWidth)} mm wide. Ten turns of the cord take ${figure(problem.tenTurns)} mm. In ${THREADS[problem.threadKind]} a column of knots is ${figure(problem.narrowest)} to ${figure(problem.widest)} times as wide as the cord.`,
        ask: 'How many columns does the bar take at the least?',
        inMillimetres,
      }
    : {
        given: `The bar is ${figure(problem.barWidth)} mm wide. A swatch of ${count(problem.knots, 'knot')} side by side is ${figure(problem.swatchWidth)} mm wide.`,
        ask: 'How many columns does the bar take, by this swatch?',
        inMillimetres,
      };

const floatAsked = ({ runs }: FloatQuestion): QuestionWords => ({
  given: `From its first knot to its last, a row is tied in ${list(runs.map(({ colour, knots }) => `${figure(knots)} ${threadName(colour)}`))}.`,
  ask: 'How many columns does the longest float skip?',
});

const classAsked = ({ width, onBar, bundle, learners }: ClassQuestion): QuestionWords => ({
  given: `${count(learners, 'learner')} make the same piece, ${count(width, 'column')} wide. ${figure(onBar)} strings hang on the bar and ${figure(bundle)} in each side bundle, all of them in folds.`,
  ask: 'How many folds do you cut for all of them?',
});

const timeAsked = ({ knots, secondsPerKnot, beside }: TimeQuestion): QuestionWords => ({
  given: `A piece has ${count(knots, 'knot')}. One knot takes ${count(secondsPerKnot, 'second')}. Mounting and finishing take ${count(beside, 'minute')} together.`,
  ask: 'How many minutes does the whole piece take?',
});

/** A length of string, a count of folds, a float, or the time that all of it takes. */
export function threadAsked(problem: ThreadQuestion): QuestionWords {
  switch (problem.ask) {
    case 'longest-float':
      return floatAsked(problem);
    case 'folds-for-class':
      return classAsked(problem);
    case 'making-minutes':
      return timeAsked(problem);
    case 'cut-length':
      return cutAsked(problem);
    case 'base-string-in-all':
      return inAllAsked(problem);
  }
}
