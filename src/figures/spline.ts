/** One bend of a smooth line: where it begins, the corner that it goes round, and where it ends. */
export type Bend<P> = readonly [from: P, corner: P, to: P];

/**
 * The bends of a smooth line with the given points as corners of its frame (the even quadratic B-spline, both ends
 * included): it never swings beyond them, so cords whose frames keep apart do so too.
 *
 * @param midway the point half-way between two
 * @returns none for fewer than three corners, which make a straight line or none
 */
export const bends = <P>(corners: readonly P[], midway: (a: P, b: P) => P): Bend<P>[] =>
  corners.slice(2).map((next, i): Bend<P> => {
    const [before, corner] = [corners[i] as P, corners[i + 1] as P];
    return [i === 0 ? before : midway(before, corner), corner, i === corners.length - 3 ? next : midway(corner, next)];
  });
