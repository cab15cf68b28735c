import type { Run } from '../piece.ts';

/** Knots of one colour beside each other, in the order in which they are tied. */
export interface ColourRun {
  readonly colour: number;
  readonly knots: number;
}

/** Where a colour runs along the back inside one row, between two uses of it. */
export interface RowFloat {
  readonly colour: number;
  /** Knots of other colours that it skips. */
  readonly columns: number;
  /** Knots of the row tied before it begins. */
  readonly after: number;
}

/** A row's runs by colour alone: neighbours of one colour are one run, whatever their knots. */
export function colourRuns(runs: readonly Run[]): ColourRun[] {
  const joined: { colour: number; knots: number }[] = [];
  for (const { colour = 0, count } of runs) {
    const before = joined.at(-1);
    if (before?.colour === colour) before.knots += count;
    else joined.push({ colour, knots: count });
  }
  return joined;
}

/**
 * The floats that begin and end within one row, in the order in which they end (craft, section 7). What leads into the
 * row from an earlier one is not among them.
 *
 * @example rowFloats([{ colour: 0, knots: 4 }, { colour: 1, knots: 3 }, { colour: 0, knots: 2 }])
 * // [{ colour: 0, columns: 3, after: 4 }]
 */
export function rowFloats(runs: readonly ColourRun[]): RowFloat[] {
  const ended = new Map<number, number>();
  const floats: RowFloat[] = [];
  let tied = 0;
  for (const { colour, knots } of runs) {
    const after = ended.get(colour);
    if (after !== undefined && after < tied) floats.push({ colour, columns: tied - after, after });
    tied += knots;
    ended.set(colour, tied);
  }
  return floats;
}
