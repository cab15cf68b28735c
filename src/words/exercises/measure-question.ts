import type {
  CutPlace,
  CutQuestion,
  InAllQuestion,
  MeasureQuestion,
  ThreadQuestion,
} from '../../solver/exercises/number/problem.ts';
import type { ThreadKind } from '../../solver/thread/thread.ts';
import { count, figure } from '../numbers.ts';
import type { QuestionWords } from './question-words.ts';

const PLACES: Readonly<Record<CutPlace, string>> = {
  bar: 'a fold for the bar',
  side: 'a fold for a side bundle',
  lone: 'the lone string',
};

function cutAsked({ place, height, rowPitch, takeUp, mountingAndFinishing, tail }: CutQuestion): QuestionWords {
  return {
    given: `The piece has ${count(height, 'row')}, and each row is ${figure(rowPitch)} mm high. The rows use ${figure(takeUp)} times their height in string. Besides that, each end needs ${figure(mountingAndFinishing)} mm for mounting and finishing, and ${figure(tail)} mm to hold.`,
    ask: `How many millimetres long do you cut ${PLACES[place]}? A little more or less will do.`,
  };
}

const inAllAsked = ({ baseStrings, foldLength }: InAllQuestion): QuestionWords => ({
  given: `Folds give ${count(baseStrings, 'base string')} of a piece. Each fold is cut ${figure(foldLength)} mm long.`,
  ask: 'How many millimetres of string do you need for all the folds together?',
});

const THREADS: Readonly<Record<ThreadKind, string>> = { soft: 'soft floss', firm: 'firm cord' };

/** What a ring takes. */
export const measureAsked = (problem: MeasureQuestion): QuestionWords =>
  problem.ask === 'capacity-low'
    ? {
        given: `The bar is ${figure(problem.barWidth)} mm wide. Ten turns of the cord take ${figure(problem.tenTurns)} mm. In ${THREADS[problem.threadKind]} a column of knots is ${figure(problem.narrowest)} to ${figure(problem.widest)} times as wide as the cord.`,
        ask: 'How many columns does the bar take at the least?',
      }
    : {
        given: `The bar is ${figure(problem.barWidth)} mm wide. A swatch of ${count(problem.knots, 'knot')} side by side is ${figure(problem.swatchWidth)} mm wide.`,
        ask: 'How many columns does the bar take, by this swatch?',
      };

/** A length of string. */
export const threadAsked = (problem: ThreadQuestion): QuestionWords =>
  problem.ask === 'cut-length' ? cutAsked(problem) : inAllAsked(problem);
