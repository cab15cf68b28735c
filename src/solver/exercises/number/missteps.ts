import { FIT_PROCEDURES, smallSums } from './fit-missteps.ts';
import { MEASURE_PROCEDURES, smallMeasures } from './measure-missteps.ts';
import { isFitQuestion, isMeasureQuestion, isThreadQuestion } from './problem.ts';
import { slipsBy } from './procedures.ts';
import { ROW_PROCEDURES, smallPieces } from './row-missteps.ts';
import { smallCuts, THREAD_PROCEDURES } from './thread-missteps.ts';

/** The slips of a single figure, of all families; a page fetches the family it needs. */
export const slips = slipsBy(
  new Map([...FIT_PROCEDURES, ...ROW_PROCEDURES, ...THREAD_PROCEDURES, ...MEASURE_PROCEDURES]),
  (problem) =>
    isFitQuestion(problem)
      ? smallSums(problem)
      : isThreadQuestion(problem)
        ? smallCuts(problem)
        : isMeasureQuestion(problem)
          ? smallMeasures(problem)
          : smallPieces(problem),
);
