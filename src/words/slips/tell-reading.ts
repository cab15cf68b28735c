import { READING_WORDS, type ReadingSlip } from './reading.ts';
import { isOfRows, slippedRow, tellRows } from './tell-rows.ts';
import type { Tell } from './telling.ts';

/** Slips of reading a chart, and those of the rows, which are made there too. */
export const tellReading: Tell = (slip, problem, answer) =>
  slip in READING_WORDS && isOfRows(problem)
    ? READING_WORDS[slip as ReadingSlip](slippedRow(problem, answer))
    : tellRows(slip, problem, answer);
