import { bundlesIn, OUTLINE_RULES, type Pair } from '../outline.ts';
import type { Faulty } from './in-row.ts';
import type { ShownLine, SpotFault, SpotPlan } from './problem.ts';

type Plan = Omit<SpotPlan, 'shown'>;

const bundles = (problem: Plan, row: number): Pair => bundlesIn(OUTLINE_RULES, problem, row);

const lineOf = (problem: Plan, row: number, [left, right]: Pair): ShownLine => ({
  row,
  left,
  right,
  knots: OUTLINE_RULES.knots(problem, [left, right]),
});

/** The rows as they should be. */
export const truePlan = (problem: Plan, from: number, to: number): ShownLine[] =>
  Array.from({ length: to - from + 1 }, (_, index) => lineOf(problem, from + index, bundles(problem, from + index)));

/** Every way in which one of these rows can be wrong; the first and the last stay right, and frame the rest. */
export function faultyPlans(problem: Plan, from: number, to: number): Faulty<readonly ShownLine[]>[] {
  const right = truePlan(problem, from, to);
  return right.slice(1, -1).flatMap((line, index) => {
    const { row } = line;
    const now = bundles(problem, row);
    const before = bundles(problem, row - 1);
    const after = bundles(problem, row + 1);
    const held = now.filter((strings) => strings > 1);
    const wrong: (readonly [SpotFault, ShownLine])[] = [];
    if (held.length > 0) {
      wrong.push(['strings-counted', { ...line, knots: problem.width }]);
      wrong.push(['bundles-left-out', { ...line, knots: line.knots - held.length }]);
    }
    // Where both sides move on either side of it, one row too far or too short makes a step of two.
    if (now.every((strings, side) => strings !== after[side] && strings !== before[side])) {
      wrong.push(['row-after', lineOf(problem, row, after)]);
      wrong.push(['row-before', lineOf(problem, row, before)]);
      wrong.push(['one-side-only', lineOf(problem, row, [now[0], before[1]])]);
      wrong.push(['one-side-only', lineOf(problem, row, [before[0], now[1]])]);
    }
    return wrong.map(([fault, shown]) => ({
      place: `row-${row}` as const,
      fault,
      shown: right.with(index + 1, shown),
    }));
  });
}
