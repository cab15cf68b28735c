import { type Figure, type FigureSource, figureOf, type Spread, wholeUp } from './figure.ts';
import type { Lead, Leads } from './floats.ts';
import { knotLength } from './knot-length.ts';
import type { Pitches } from './pitch.ts';
import type { ReadThread } from './thread.ts';

/** A float is laid a little slack (craft, section 9). */
const FLOAT_SLACK = 1.1;
/** mm of every working length that no knot uses: a tail at its start and one at its end (craft, section 9). */
const TAILS = 160;

/** The leading string of one colour. */
export interface LeadingColour {
  /** Palette index; null for a piece without a chart. */
  readonly colour: number | null;
  readonly knots: number;
  /** mm to have ready: knots, floats, and two tails for each working length. */
  readonly length: Figure;
  /** mm of that in floats along the back. */
  readonly floats: Figure;
  /** How many floats there are. */
  readonly floatCount: number;
  /** Separate starts: the first, and one after each rest of ten rows or more. */
  readonly starts: number;
  /** Working lengths to cut. */
  readonly workingLengths: Figure;
  /** Working lengths after the first. */
  readonly joins: Figure;
}

/** mm straight along the back, by colour, of all floats from one row to a later one. */
function lengthsBetweenRows({ betweenRows }: Leads, columnPitch: number, rowPitch: number): readonly number[] {
  const lengths: number[] = [];
  for (let at = 0; at < betweenRows.length; at += 3) {
    const colour = betweenRows[at] ?? 0;
    const across = (betweenRows[at + 1] ?? 0) * columnPitch;
    const down = (betweenRows[at + 2] ?? 0) * rowPitch;
    lengths[colour] = (lengths[colour] ?? 0) + Math.sqrt(across * across + down * down);
  }
  return lengths;
}

/** mm of all knots of one colour, each with its own core. */
function knotsLength({ knots, overBundles }: Lead, perKnot: (strands: number) => Figure, bound: keyof Spread): number {
  let singles = knots;
  let length = 0;
  for (let at = 0; at < overBundles.length; at += 2) {
    const count = overBundles[at + 1] ?? 0;
    singles -= count;
    length += count * perKnot(overBundles[at] ?? 1)[bound];
  }
  return length + singles * perKnot(1)[bound];
}

/** The length of a knot by its strands, worked out once for each. */
function lengthsPerKnot(thread: ReadThread, pitches: Pitches): (strands: number) => Figure {
  const known: Figure[] = [];
  return (strands) => {
    const length = known[strands] ?? knotLength(strands, thread, pitches);
    known[strands] = length;
    return length;
  };
}

/**
 * Leading string colour by colour, in palette order; a colour that ties no knot is left out (craft, section 9).
 * A colour needs as many working lengths as its string is begun, and as many as its knots and floats fill.
 */
export function leadingOf(followed: Leads, coloured: boolean, thread: ReadThread, pitches: Pitches): LeadingColour[] {
  const between = (bound: keyof Spread) => lengthsBetweenRows(followed, pitches.column[bound], pitches.row[bound]);
  const betweenRows = { low: between('low'), likely: between('likely'), high: between('high') };
  const perKnot = lengthsPerKnot(thread, pitches);
  const knotsMeasured = typeof thread.measured.perKnot === 'number';
  return followed.leads.map((lead) => {
    const { column, row } = pitches;
    const floatsMeasured = column.source === 'measured' && (lead.floatsBetweenRows === 0 || row.source === 'measured');
    const floats = figureOf(
      floatsMeasured ? 'measured' : 'estimate',
      (bound) => FLOAT_SLACK * (lead.columnsInRows * column[bound] + (betweenRows[bound][lead.colour] ?? 0)),
    );
    const source: FigureSource = knotsMeasured && (lead.floats === 0 || floatsMeasured) ? 'measured' : 'estimate';
    const body = figureOf(source, (bound) => knotsLength(lead, perKnot, bound) + floats[bound]);
    const workingLengths = figureOf(source, (bound) =>
      Math.max(lead.starts, wholeUp(body[bound] / (thread.workingLength - TAILS))),
    );
    return {
      colour: coloured ? lead.colour : null,
      knots: lead.knots,
      length: figureOf(source, (bound) => body[bound] + TAILS * workingLengths[bound]),
      floats,
      floatCount: lead.floats,
      starts: lead.starts,
      workingLengths,
      joins: figureOf(source, (bound) => workingLengths[bound] - 1),
    };
  });
}
