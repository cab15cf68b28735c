import { HABITS, type RowHabits } from '../exercises/row/habits.ts';
import type { RowProblem } from '../exercises/row/problem.ts';
import type { Knot } from '../piece.ts';
import type { RowSlip } from './rows.ts';

export const KNOT_SLIPS = [
  'direction-not-swapped',
  'ordinary-knot-on-bundle',
  'turning-knots-swapped',
  'turning-knot-on-edge-string',
  'two-let-out',
  'carry-behind-forgotten',
] as const;
export type KnotSlip = (typeof KNOT_SLIPS)[number];

/** Slips of the rows that show when a row is tied. */
const TIED_ROW_SLIPS = [
  'bundle-counted-as-strings',
  'bundle-not-counted',
  'one-string-a-row',
] as const satisfies RowSlip[];
export type TiedSlip = KnotSlip | (typeof TIED_ROW_SLIPS)[number];

/** Every slip that can be made in tying a row. */
export const TIED_SLIPS: readonly TiedSlip[] = [...KNOT_SLIPS, ...TIED_ROW_SLIPS];

type Habits = Partial<RowHabits>;

const opposite = (problem: RowProblem): Knot => (HABITS.ordinary(problem) === 'forward' ? 'backward' : 'forward');
const oneMoreOut = (moves: number): number => (moves < 0 ? moves - 1 : moves);

/**
 * Each slip as the habits of somebody who makes it, all else as a maker does. Where learners who think alike do one of
 * two things, both stand here, the likelier first. Where a slip can't come in, the row comes out right.
 */
const HABITS_OF: { readonly [Id in TiedSlip]: readonly [Habits, ...Habits[]] } = {
  // The row back is tied like the row out.
  'direction-not-swapped': [
    {
      ordinary: (problem) => (problem.row > 1 ? opposite(problem) : HABITS.ordinary(problem)),
      single: (problem) => (problem.row > 1 ? opposite(problem) : HABITS.ordinary(problem)),
    },
  ],
  // A bundle is passed like a single string.
  'ordinary-knot-on-bundle': [{ turning: HABITS.ordinary }],
  'turning-knots-swapped': [{ turning: (_, side) => (side === 'right' ? 'backward-forward' : 'forward-backward') }],
  // Every edge turns, even the one that the leading string has to pass.
  'turning-knot-on-edge-string': [
    { single: HABITS.turning },
    // Only where the row ends: the way in is seen to be barred.
    {
      single: (problem, side) =>
        (side === 'right') === (problem.direction === 'rightward')
          ? HABITS.turning(problem, side)
          : HABITS.single(problem, side),
    },
  ],
  // One row does the work of two.
  'two-let-out': [
    {
      movesAtStart: (problem) => oneMoreOut(HABITS.movesAtStart(problem)),
      movesAtEnd: (problem) => oneMoreOut(HABITS.movesAtEnd(problem)),
    },
    { movesAtStart: (problem) => oneMoreOut(HABITS.movesAtStart(problem)) },
    { movesAtEnd: (problem) => oneMoreOut(HABITS.movesAtEnd(problem)) },
  ],
  // The two edge strings become a bundle, and the leading string stays outside; or nothing moves at all.
  'carry-behind-forgotten': [{ joins: ['take-in'] }, { joins: [] }],
  // A knot for every string of a bundle.
  'bundle-counted-as-strings': [{ knotsOnBundle: (strings) => strings }],
  // The bundles hang beside the row, and only what is between them is tied.
  'bundle-not-counted': [{ knotsOnBundle: () => 0 }],
  // One string in all: the side where the row begins, or the one where it ends.
  'one-string-a-row': [{ movesAtEnd: () => 0 }, { movesAtStart: () => 0 }],
};

/** The habits that this slip changes, the likeliest way first. */
export const slippedHabits = (slip: TiedSlip): readonly Habits[] => HABITS_OF[slip];
