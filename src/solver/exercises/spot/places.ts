import type { SpotPlace, SpotProblem, SpotRow } from './problem.ts';

/** The number from the left of a string between the edges, the first on the way being 1. */
export const stringAt = ({ shown, width, direction }: SpotRow, onTheWay: number): number => {
  const place = shown.start.strings + shown.start.freed.length + onTheWay;
  return direction === 'rightward' ? place : width + 1 - place;
};

const placesInRow = ({ shown }: SpotRow): SpotPlace[] => [
  'start',
  ...shown.between.map((_, index): SpotPlace => `between-${index + 1}`),
  'end',
  'lead',
];

/** The places that can be picked, in the order in which they stand on the sheet. */
export function placesOf(problem: SpotProblem): readonly SpotPlace[] {
  switch (problem.in) {
    case 'row':
      return placesInRow(problem);
    case 'plan':
      return problem.shown.map(({ row }): SpotPlace => `row-${row}`);
    case 'sum':
      return problem.fields;
  }
}
