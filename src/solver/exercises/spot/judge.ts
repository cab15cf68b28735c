import { conclude, judgedFields } from '../conclude.ts';
import type { Judged, JudgeOptions } from '../contract.ts';
import { placesOf } from './places.ts';
import {
  SPOT_FAULTS,
  SPOT_FIELDS,
  type SpotAnswer,
  type SpotField,
  type SpotProblem,
  type SpotResult,
} from './problem.ts';
import { solve } from './solve.ts';

const picked = (entry: unknown, known: readonly string[], right: string): SpotResult => {
  const pick = known.find((each) => each === entry);
  return pick === undefined ? { verdict: 'missing' } : { verdict: pick === right ? 'right' : 'wrong', picked: pick };
};

/** Judges the place that was picked, and the name that was given to the fault; each for itself. */
export function judge(
  problem: SpotProblem,
  answer: SpotAnswer,
  options: JudgeOptions<SpotField> = {},
): Judged<SpotField, SpotResult> {
  const { place, fault } = solve(problem);
  const results = {
    place: picked(answer?.place, placesOf(problem), place),
    fault: picked(answer?.fault, SPOT_FAULTS[problem.in], fault),
  };
  const asked = judgedFields(SPOT_FIELDS, options);
  return conclude(asked, Object.fromEntries(asked.map((field) => [field, results[field]])), options);
}
