import type { RowPlan, Run, SideName } from '../piece.ts';
import { LONGEST_FREE_FLOAT } from './free-float.ts';

/** Rows a colour may rest before its string is ended and joined anew (craft, section 7). */
export const RESTING_ROWS = 10;

/** A palette index is a byte, so a table of so many lines holds every colour. */
const COLOURS = 256;
/** Places of a colour's line in the table: what it comes to over all rows … */
const LINE = 16;
const KNOTS = 0;
const STARTS = 1;
const FLOATS = 2;
const COLUMNS_IN_ROWS = 3;
const FLOATS_BETWEEN_ROWS = 4;
/** … the row and the column boundary where it was last used (row 0 is never) … */
const LAST_ROW = 5;
const LAST_PLACE = 6;
/** … and this row: where it began, its columns so far (negative in a leftward row), its floats (see `LONG_ONE`). */
const BEGAN = 7;
const ROW_COLUMNS = 8;
const ROW_FLOATS = 9;
/** Its longest float of this row, as a rank, and the float that led into this row: rank, boundary, rows. */
const LONGEST = 10;
const LED_IN = 11;
const LED_IN_FROM = 12;
const LED_IN_ROWS = 13;

/** Long floats are counted from this bit upwards, all floats below it: a row has fewer than 2¹⁵ of either. */
const LONG_ONE = 16;
/**
 * A float's rank: its length, then how early in the row it ends, so that the greatest rank is the longest
 * float, the first of equals. A boundary fits in the bits below the length.
 */
const LENGTH_ONE = 10;
const BOUNDARY = (1 << LENGTH_ONE) - 1;
/** The greatest rank of a float that is not too long. */
const SHORT_RANKS = ((LONGEST_FREE_FLOAT + 1) << LENGTH_ONE) - 1;

/** Numbers of one float in the list of those between rows, and of one colour's in the list of long ones. */
const BETWEEN_PLACES = 3;
export const LONG_PLACES = 6;

/** The string of one colour, followed from row 1 to the last. */
export interface Lead {
  /** Palette index. */
  readonly colour: number;
  readonly knots: number;
  /** How often the string is begun: once, and again after each rest of ten rows or more. */
  readonly starts: number;
  /** Floats. */
  readonly floats: number;
  /** Columns skipped by the floats that stay within a row, added up. */
  readonly columnsInRows: number;
  /** How many of its floats go from one row to a later one. */
  readonly floatsBetweenRows: number;
  /** Its knots over more than one strand, two numbers each: strands, and knots over so many. */
  readonly overBundles: readonly number[];
}

/** What following every leading string through the rows gives. */
export interface Leads {
  /** Colours that tie a knot, in palette order. */
  readonly leads: readonly Lead[];
  /** The floats from one row to a later one, three numbers each: colour, columns, rows. */
  readonly betweenRows: Int32Array;
  /**
   * The long floats of one colour in one row, six numbers each: the row where they are needed, colour,
   * column boundaries where the longest begins and ends, rows that one spans, how many there are.
   */
  readonly long: Int32Array;
  /** Different colours in each row, index 0 = row 1. */
  readonly coloursInRow: Uint16Array;
}

const isTurning = (run: Run): boolean => run.knot === 'backward-forward' || run.knot === 'forward-backward';

/** Rows are never changed once planned, so what was followed is kept for as long as they are. */
const followed = new WeakMap<
  readonly RowPlan[],
  { readonly coloured: boolean; readonly carrySide: SideName | null; readonly leads: Leads }
>();

/**
 * Follows the leading strings through all rows, run by run. A place is a column boundary: the base strings to
 * its left. A string floats where knots of another colour were tied between two uses of it; a colour that
 * rested for ten rows or more is begun anew instead (craft, sections 5, 7 and 9).
 *
 * Inspection and cut list both need this for the same rows: the second to ask gets what the first one got.
 *
 * @param coloured false: all runs count as colour 0.
 * @param carrySide the side whose edge knots go round one strand more than columns.
 */
export function followLeads(rows: readonly RowPlan[], coloured: boolean, carrySide: SideName | null): Leads {
  const known = followed.get(rows);
  if (known && known.coloured === coloured && known.carrySide === carrySide) return known.leads;
  const leads = follow(rows, coloured, carrySide);
  followed.set(rows, { coloured, carrySide, leads });
  return leads;
}

/**
 * The inner walk. Over a chart of hundreds of thousands of cells it makes nothing per run and keeps one table,
 * a line a colour. Since the leading string never jumps within a row, a run begins where the last one ended;
 * turning knots stand only at the two ends of a row and are seen to there.
 */
function follow(rows: readonly RowPlan[], coloured: boolean, carrySide: SideName | null): Leads {
  const table = new Int32Array(COLOURS * LINE);
  const coloursInRow = new Uint16Array(rows.length);
  const used = new Uint8Array(COLOURS);
  const mask = coloured ? COLOURS - 1 : 0;
  const overBundles: number[] = [];
  let betweenRows = new Int32Array(BETWEEN_PLACES * rows.length);
  let betweenUsed = 0;
  let long = new Int32Array(LONG_PLACES * rows.length);
  let longUsed = 0;
  let before = -1;
  for (let index = 0; index < rows.length; index += 1) {
    const plan = rows[index];
    const firstRun = plan?.runs[0];
    const lastRun = plan?.runs[plan.runs.length - 1];
    if (!plan || !firstRun || !lastRun) continue;
    const { runs } = plan;
    // No colour has more than one of either in a row.
    betweenRows = withRoom(betweenRows, betweenUsed + BETWEEN_PLACES * runs.length);
    long = withRoom(long, longUsed + LONG_PLACES * runs.length);
    const rightward = plan.direction === 'rightward';
    const sign = rightward ? 0 : -1;
    const earlyFirst = rightward ? BOUNDARY : 0;
    const row = index + 1;
    let colours = 0;
    // In a leftward row the boundary a run ends at lies before its last column.
    let place = firstRun.columns[0] - 1 - sign;
    // A turning knot begins where it ends, on the inner side of its column.
    let begins = isTurning(firstRun) ? (rightward ? place + 1 : place - 1) : place;
    for (let at = 0; at < runs.length; at += 1) {
      const run = runs[at];
      if (!run) continue;
      const line = ((run.colour ?? 0) & mask) * LINE;
      const ends = run.columns[1] + sign;
      if (table[line + LAST_ROW] === row) {
        if (line !== before) {
          const apart = (begins - (table[line + LAST_PLACE] ?? 0)) | 0;
          const skipped = (apart ^ sign) - sign;
          // Without branches: chance decides which floats are long, so they would be guessed wrong.
          table[line + ROW_FLOATS] =
            (table[line + ROW_FLOATS] ?? 0) + 1 + (((LONGEST_FREE_FLOAT - skipped) >>> 31) << LONG_ONE);
          const longest = table[line + LONGEST] ?? 0;
          const more = (((skipped << LENGTH_ONE) | (begins ^ earlyFirst)) - longest) | 0;
          table[line + LONGEST] = longest + (more & ~(more >> 31));
        }
        table[line + ROW_COLUMNS] = (table[line + ROW_COLUMNS] ?? 0) + ends - place;
      } else {
        used[colours] = line / LINE;
        colours += 1;
        const rowBefore = table[line + LAST_ROW] ?? 0;
        const rests = row - rowBefore;
        table[line + LAST_ROW] = row;
        table[line + BEGAN] = place;
        table[line + ROW_COLUMNS] = ends - place;
        table[line + ROW_FLOATS] = 0;
        table[line + LONGEST] = 0;
        table[line + LED_IN] = 0;
        if (rowBefore === 0 || rests > RESTING_ROWS) table[line + STARTS] = (table[line + STARTS] ?? 0) + 1;
        else if (line !== before) {
          const from = table[line + LAST_PLACE] ?? 0;
          const skipped = Math.abs(begins - from);
          const rank = (skipped << LENGTH_ONE) | (begins ^ earlyFirst);
          table[line + ROW_FLOATS] = 1 + (skipped > LONGEST_FREE_FLOAT ? 1 << LONG_ONE : 0);
          table[line + LONGEST] = rank;
          table[line + LED_IN] = rank;
          table[line + LED_IN_FROM] = from;
          table[line + LED_IN_ROWS] = rests;
          table[line + FLOATS_BETWEEN_ROWS] = (table[line + FLOATS_BETWEEN_ROWS] ?? 0) + 1;
          betweenRows[betweenUsed] = line / LINE;
          betweenRows[betweenUsed + 1] = skipped;
          betweenRows[betweenUsed + 2] = rests;
          betweenUsed += BETWEEN_PLACES;
        }
      }
      table[line + LAST_PLACE] = ends;
      before = line;
      place = ends;
      begins = ends;
    }

    coloursInRow[index] = colours;
    for (let at = 0; at < colours; at += 1) longUsed = addRow(table, used[at] ?? 0, row, rightward, long, longUsed);
    // A turning knot ends where it began; only now, since the columns of this row are added up.
    if (runs.length > 1 && isTurning(lastRun)) table[before + LAST_PLACE] = rightward ? place - 1 : place + 1;

    // The carried end lies under the edge knot of its side, whatever the columns there.
    const carried = carrySide === null ? null : (carrySide === 'right') === rightward ? lastRun : firstRun;
    const firstCore = firstRun.strands + (carried === firstRun && carried !== lastRun ? 1 : 0);
    const lastCore = lastRun.strands + (carried === lastRun ? 1 : 0);
    if (firstCore > 1 && firstRun !== lastRun) overBundles.push((firstRun.colour ?? 0) & mask, firstCore);
    if (lastCore > 1) overBundles.push((lastRun.colour ?? 0) & mask, lastCore);
  }
  return {
    leads: leadsOf(table, overBundles),
    betweenRows: betweenRows.subarray(0, betweenUsed),
    long: long.subarray(0, longUsed),
    coloursInRow,
  };
}

/** The list itself, or a longer copy where it has no room for so many numbers. */
function withRoom(list: Int32Array<ArrayBuffer>, wanted: number): Int32Array<ArrayBuffer> {
  if (wanted <= list.length) return list;
  const longer = new Int32Array(Math.max(wanted, 2 * list.length));
  longer.set(list);
  return longer;
}

/**
 * Adds what a colour did in a row to what it did before, and writes down its long floats after the first
 * `longUsed` numbers of the list.
 *
 * @returns how many numbers of the list are used then.
 */
function addRow(
  table: Int32Array,
  colour: number,
  row: number,
  rightward: boolean,
  long: Int32Array,
  longUsed: number,
): number {
  const line = colour * LINE;
  const knots = Math.abs(table[line + ROW_COLUMNS] ?? 0);
  const floats = table[line + ROW_FLOATS] ?? 0;
  table[line + KNOTS] = (table[line + KNOTS] ?? 0) + knots;
  table[line + FLOATS] = (table[line + FLOATS] ?? 0) + (floats & ((1 << LONG_ONE) - 1));
  // From its first column in the row to its last it either knots or floats.
  const reach = Math.abs((table[line + LAST_PLACE] ?? 0) - (table[line + BEGAN] ?? 0));
  table[line + COLUMNS_IN_ROWS] = (table[line + COLUMNS_IN_ROWS] ?? 0) + reach - knots;

  const longest = table[line + LONGEST] ?? 0;
  if (longest <= SHORT_RANKS) return longUsed;
  const skipped = longest >> LENGTH_ONE;
  const to = (longest & BOUNDARY) ^ (rightward ? BOUNDARY : 0);
  const ledIn = longest === table[line + LED_IN];
  const from = ledIn ? (table[line + LED_IN_FROM] ?? 0) : rightward ? to - skipped : to + skipped;
  long[longUsed] = row;
  long[longUsed + 1] = colour;
  long[longUsed + 2] = from;
  long[longUsed + 3] = to;
  long[longUsed + 4] = ledIn ? (table[line + LED_IN_ROWS] ?? 0) : 0;
  long[longUsed + 5] = floats >> LONG_ONE;
  return longUsed + LONG_PLACES;
}

/** Sorts what was met row by row into one lead a colour. */
function leadsOf(table: Int32Array, overBundles: readonly number[]): Lead[] {
  /** Knots by colour and strands, with gaps where there are none. */
  const knotsOver: number[][] = [];
  for (let at = 0; at < overBundles.length; at += 2) {
    const colour = overBundles[at] ?? 0;
    const strands = overBundles[at + 1] ?? 0;
    knotsOver[colour] ??= [];
    knotsOver[colour][strands] = (knotsOver[colour][strands] ?? 0) + 1;
  }
  const leads: Lead[] = [];
  for (let colour = 0; colour < COLOURS; colour += 1) {
    const line = colour * LINE;
    if ((table[line + STARTS] ?? 0) === 0) continue;
    leads.push({
      colour,
      knots: table[line + KNOTS] ?? 0,
      starts: table[line + STARTS] ?? 0,
      floats: table[line + FLOATS] ?? 0,
      columnsInRows: table[line + COLUMNS_IN_ROWS] ?? 0,
      floatsBetweenRows: table[line + FLOATS_BETWEEN_ROWS] ?? 0,
      // Gaps are passed over.
      overBundles: (knotsOver[colour] ?? []).flatMap((knots, strands) => [strands, knots]),
    });
  }
  return leads;
}
