import type { AnswerOf } from '../../solver/exercises/contract.ts';
import { readActs } from '../../solver/exercises/row/judge.ts';
import type { TiedSlip } from '../../solver/missteps/knots.ts';
import { KNOT_WORDS } from './knots.ts';
import type { Tell } from './telling.ts';

/** Slips in a row that was tied. */
export const tellKnots: Tell = (slip, problem, answer) =>
  slip in KNOT_WORDS && problem.kind === 'row'
    ? KNOT_WORDS[slip as TiedSlip]({ row: problem, acts: readActs((answer ?? {}) as AnswerOf<'row'>) })
    : null;
