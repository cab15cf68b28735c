import type { Knot } from '../../piece.ts';
import type { RowAct, RowField, RowProblem } from './problem.ts';
import { edgesOf } from './tie.ts';

/** How a maker ties a row (craft, section 5). A slip puts a habit of its own in the place of one of these. */
export interface RowHabits {
  /** Strings moved at the starting edge: below 0 let out, above 0 taken in. */
  readonly movesAtStart: (problem: RowProblem) => number;
  readonly movesAtEnd: (problem: RowProblem) => number;
  /** How the leading string gets inside two edge strings that become a bundle. */
  readonly joins: readonly RowAct[];
  readonly ordinary: (problem: RowProblem) => Knot;
  /** On the edge of this side, while its knot has to turn. */
  readonly turning: (problem: RowProblem, side: 'left' | 'right') => Knot;
  /** On a single edge string that the leading string passes. */
  readonly single: (problem: RowProblem, side: 'left' | 'right') => Knot;
  /** Knots that a bundle of so many strings gets. */
  readonly knotsOnBundle: (strings: number) => number;
}

const ordinaryOf = ({ direction }: RowProblem): Knot => (direction === 'rightward' ? 'forward' : 'backward');

export const HABITS: RowHabits = {
  movesAtStart: (problem) => {
    const { was, due } = edgesOf(problem);
    return due.start - was.start;
  },
  movesAtEnd: (problem) => {
    const { was, due } = edgesOf(problem);
    return due.end - was.end;
  },
  joins: ['carry-behind'],
  ordinary: ordinaryOf,
  turning: (_, side) => (side === 'right' ? 'forward-backward' : 'backward-forward'),
  single: ordinaryOf,
  knotsOnBundle: () => 1,
};

/** An act, and the part of the row that it belongs to. */
export interface PartAct {
  readonly part: RowField;
  readonly act: RowAct;
}

const repeat = (part: RowField, act: RowAct, times: number): PartAct[] =>
  Array.from({ length: Math.max(0, times) }, () => ({ part, act }));

/** The whole row as somebody ties it who has these habits. */
export function actsBy(habits: RowHabits, problem: RowProblem): PartAct[] {
  const { was } = edgesOf(problem);
  const { width } = problem;
  const [startSide, endSide] =
    problem.direction === 'rightward' ? (['left', 'right'] as const) : (['right', 'left'] as const);
  const moved = habits.movesAtStart(problem);
  const movedAtEnd = habits.movesAtEnd(problem);
  const start = Math.max(1, was.start + moved);
  const end = Math.max(1, was.end + movedAtEnd);
  const plain = habits.ordinary(problem);

  const acts: PartAct[] = [];
  if (moved < 0) acts.push(...repeat('start-move', 'let-out', was.start - start));
  else if (moved > 0 && was.start === 1)
    acts.push(...habits.joins.map((act) => ({ part: 'start-move', act }) as const));
  else acts.push(...repeat('start-move', 'take-in', moved));

  // The knot turns where the leading string lies inside the edge: at a bundle, or at the one string left of it.
  const turnsAtStart = was.start > 1 || start > 1;
  const first = turnsAtStart ? habits.turning(problem, startSide) : habits.single(problem, startSide);
  acts.push(
    ...(start > 1
      ? repeat('start-edge', habits.knotsOnBundle(start) === 1 ? first : plain, habits.knotsOnBundle(start))
      : repeat('start-edge', first, 1)),
  );
  acts.push(...repeat('between', plain, width - start - Math.max(was.end, end)));
  acts.push(...repeat('end-move', movedAtEnd < 0 ? 'let-out' : 'take-in', Math.abs(end - was.end)));
  acts.push(...repeat('between', plain, was.end - end));
  const last = end > 1 ? habits.turning(problem, endSide) : habits.single(problem, endSide);
  acts.push(
    ...(end > 1
      ? repeat('end-edge', habits.knotsOnBundle(end) === 1 ? last : plain, habits.knotsOnBundle(end))
      : repeat('end-edge', last, 1)),
  );
  return acts;
}
