import type { Slipped, Slips } from '../../missteps/contract.ts';
import type { SlipSet } from '../../missteps/ids.ts';
import { slippedHabits, TIED_SLIPS, type TiedSlip } from '../../missteps/knots.ts';
import { actsBy, HABITS, type RowHabits } from './habits.ts';
import { judge, readActs } from './judge.ts';
import type { RowAct, RowProblem, RowSolution } from './problem.ts';
import { solve } from './solve.ts';
import { isMove } from './tie.ts';

const known = (slip: string): TiedSlip | undefined => TIED_SLIPS.find((each) => each === slip);

const rowBy = (problem: RowProblem, habits: Partial<RowHabits>): RowSolution => ({
  acts: actsBy({ ...HABITS, ...habits }, problem).map(({ act }) => act),
});

/** The ways in which two slips are made in one row; none where both change the same habit. */
function together(one: TiedSlip, other: TiedSlip): Partial<RowHabits>[] {
  return slippedHabits(one).flatMap((first) =>
    slippedHabits(other).flatMap((second) =>
      Object.keys(first).some((habit) => habit in second) ? [] : [{ ...first, ...second }],
    ),
  );
}

const ways = ([slip, other]: SlipSet): readonly Partial<RowHabits>[] => {
  const one = known(slip);
  const two = other === undefined ? undefined : known(other);
  if (one === undefined || (other !== undefined && two === undefined)) return [];
  return two === undefined ? slippedHabits(one) : together(one, two);
};

const isWrong = (problem: RowProblem, answer: RowSolution): boolean => judge(problem, answer).outcome === 'not-right';

function slippedBy(problem: RowProblem, sets: readonly SlipSet[]): Slipped<RowSolution>[] {
  return sets.flatMap((slips) =>
    ways(slips)
      .map((habits) => ({ slips, answer: rowBy(problem, habits) }))
      .filter(({ answer }) => isWrong(problem, answer)),
  );
}

const SINGLES: readonly SlipSet[] = TIED_SLIPS.map((slip) => [slip]);
const PAIRS: readonly SlipSet[] = TIED_SLIPS.flatMap((one, index) =>
  TIED_SLIPS.slice(index + 1).map((other): SlipSet => [one, other]),
);

/**
 * One text for all orders that hands can work in: moves before the first knot, knots, moves after it. A move after the
 * last knot came too late, and says so. Two strings taken together and then passed behind are carried behind.
 */
function asText(acts: readonly RowAct[]): string {
  const first = acts.findIndex((act) => !isMove(act));
  const from = first < 0 ? acts.length : first;
  const last = acts.findLastIndex((act) => !isMove(act));
  const before = acts.slice(0, from).join().replace('take-in,carry-behind', 'carry-behind');
  const after = acts
    .slice(from)
    .flatMap((act, index) => (isMove(act) ? [`${act}${index + from > last ? ' late' : ''}`] : []));
  return [before, acts.filter((act) => !isMove(act)).join(), after.join()].join(' / ');
}

/** Short rows first: opening, closing and straight, in both directions. */
function* followUps(problem: RowProblem): Generator<RowProblem> {
  for (const width of [8, 9, 10])
    for (const [change, sizes] of [
      ['let-out', [2, 3]],
      ['take-in', [1, 2]],
      ['none', [2, 1]],
    ] as const)
      for (const size of sizes)
        for (const direction of ['rightward', 'leftward'] as const) {
          const row = direction === 'rightward' ? 3 : 4;
          if (width === problem.width && size === problem.before[0]) continue;
          yield { kind: 'row', width, row, direction, before: [size, size], change };
        }
}

/** The slips of tying a row. */
export const slips: Slips<'row'> = {
  missteps: Object.fromEntries(
    TIED_SLIPS.map((slip) => [
      slip,
      (problem: RowProblem): RowSolution => {
        const [answer] = slippedBy(problem, [[slip]]);
        return answer?.answer ?? solve(problem);
      },
    ]),
  ),
  every: (problem, set) => ways(set).map((habits) => rowBy(problem, habits)),
  singles: (problem) => slippedBy(problem, SINGLES),
  pairs: (problem) => slippedBy(problem, PAIRS),
  like: (_, answer) => {
    const done = readActs(answer);
    const text = done.length > 0 ? asText(done) : null;
    return ({ acts }) => text === asText(acts);
  },
  figuresIn: (_, answer) => readActs(answer).length,
  followUps,
};
