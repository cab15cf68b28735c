import { isMeasureQuestion } from '../../solver/exercises/number/problem.ts';
import type { MeasuringSlip } from '../../solver/missteps/measuring.ts';
import { MEASURING_WORDS } from './measuring.ts';
import { figureIn, type Tell } from './telling.ts';

/** Slips of measuring a ring. */
export const tellMeasuring: Tell = (slip, problem, answer) =>
  slip in MEASURING_WORDS && problem.kind === 'number' && isMeasureQuestion(problem)
    ? MEASURING_WORDS[slip as MeasuringSlip]({ question: problem, mine: figureIn(answer) ?? 0 })
    : null;
