import { conclude, judgedFields } from '../conclude.ts';
import type { FieldResult, Judged, JudgeOptions } from '../contract.ts';
import { type Reading, readParity, readWhole } from '../read.ts';
import { SUM_FIELDS, type SumAnswer, type SumField, type SumFigures, type SumProblem } from './problem.ts';
import { SUM_RULES, workOut } from './solve.ts';

/** Reads one field of an answer; an answer that is no record has nothing in it. */
const readField = (answer: SumAnswer | null | undefined, field: SumField): Reading<number> =>
  (field === 'parity' ? readParity : readWhole)(answer?.[field]);

/** The figures entered and readable, among those that are judged. */
export function entered(
  problem: SumProblem,
  answer: SumAnswer,
  options: JudgeOptions<SumField> = {},
): Partial<SumFigures> {
  const figures: Partial<SumFigures> = {};
  for (const field of judgedFields(problem.fields, options)) {
    const reading = readField(answer, field);
    if (reading.verdict === 'read') figures[field] = reading.value;
  }
  return figures;
}

/**
 * Judges a sum, figure by figure: against the truth first, then against what was entered before it. A figure
 * that any of a maker's rules gives from those follows, so that one slip is one slip. Where nothing was
 * entered before, either the truth stands in or what the figures entered so far lead to: a learner may have
 * worked it out on paper.
 *
 * Empty fields make the answer `unreadable`, with the first of them named, unless `partial` or `upTo` says
 * that not all have to be there.
 */
export function judge(problem: SumProblem, answer: SumAnswer, options: JudgeOptions<SumField> = {}): Judged<SumField> {
  const truth = workOut(problem);
  // Two ways to stand in for what was not entered.
  const withTruth: SumFigures = { ...truth };
  const ledTo: SumFigures = { ...truth };
  const results: { [F in SumField]?: FieldResult } = {};
  const judged = judgedFields(problem.fields, options);
  for (const field of SUM_FIELDS) {
    const [rule] = SUM_RULES[field];
    ledTo[field] = rule(problem, ledTo);
    if (!judged.includes(field)) continue;
    const reading = readField(answer, field);
    if (reading.verdict !== 'read') {
      results[field] = reading;
      continue;
    }
    const { value } = reading;
    const follows = [withTruth, ledTo].some((before) => SUM_RULES[field].some((way) => way(problem, before) === value));
    results[field] = { verdict: value === truth[field] ? 'right' : follows ? 'follows' : 'wrong' };
    withTruth[field] = value;
    ledTo[field] = value;
  }
  return conclude(problem.fields, results, options);
}
