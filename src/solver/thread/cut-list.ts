import type { Chart } from '../chart.ts';
import type { Bundles, Fit, RowPlan } from '../piece.ts';
import { type Refusal, refuse } from '../problem.ts';
import { type PiecePlace, pieceLength } from './base-string.ts';
import { withColours } from './coloured-rows.ts';
import { type Figure, multipleOf, sumOf } from './figure.ts';
import { followLeads } from './floats.ts';
import { type LeadingColour, leadingOf } from './leading.ts';
import { pitchesOf } from './pitch.ts';
import { readThread, type Thread } from './thread.ts';
import { type MakingTime, makingTime } from './time.ts';

export interface CutListInput {
  readonly fit: Fit;
  readonly bundles: Bundles;
  readonly rows: readonly RowPlan[];
  /** With a chart the leading string is listed by colour. */
  readonly chart?: Chart | null | undefined;
  readonly thread: Thread;
}

/** Cut pieces of one kind. */
export interface CutPieces {
  readonly place: PiecePlace;
  /** Pieces to cut; each but the lone string is folded in half. */
  readonly count: number;
  /** mm for one piece, a multiple of 5. */
  readonly length: Figure;
}

export interface CutTotals {
  /** Pieces to cut for base strings. */
  readonly pieces: number;
  /** Base strings they give: the width, and one more with a carried end. */
  readonly baseStrings: number;
  /** mm of base string. */
  readonly base: Figure;
  readonly knots: number;
  /** mm of leading string, all colours. */
  readonly leading: Figure;
  readonly workingLengths: Figure;
  readonly joins: Figure;
  /** mm of thread in all. */
  readonly thread: Figure;
}

export interface CutList {
  readonly ok: true;
  readonly pieces: readonly CutPieces[];
  readonly leading: readonly LeadingColour[];
  readonly totals: CutTotals;
  /** Seconds. */
  readonly time: MakingTime;
}

function piecesOf(fit: Fit, length: (place: PiecePlace) => Figure): CutPieces[] {
  const pieces: CutPieces[] = [];
  const add = (place: PiecePlace, count: number) => {
    if (count > 0) pieces.push({ place, count, length: length(place) });
  };
  add('bar', fit.folds);
  add('left', fit.left.folds);
  add('right', fit.right.folds);
  add('lone', fit.loneStrings);
  return pieces;
}

/**
 * What to cut and how long it will take: base strings by where they hang, leading string by colour, totals
 * and time (craft, section 9). Kinds of piece and colours that do not occur are left out.
 *
 * @returns lengths in mm and time in seconds, each figure with its range and source; or a problem for thread
 *   figures out of range (diameter 0.2 to 10 mm, bar 0.5 to 20 mm thick, working length 300 to 20 000 mm), for
 *   a piece without rows, or for a chart of another size than the rows.
 */
export function cutList(input: CutListInput): CutList | Refusal {
  const { fit, bundles, rows, chart, thread } = input ?? {};
  if (!fit) return refuse({ code: 'no-fit', field: 'fit', values: {} });
  if (!Array.isArray(rows) || rows.length === 0) return refuse({ code: 'no-rows', field: 'rows', values: {} });
  const size = { width: fit.width, height: rows.length };
  const [left, right] = [bundles?.left?.length ?? 0, bundles?.right?.length ?? 0];
  if (left !== size.height || right !== size.height)
    return refuse({ code: 'sides-differ-in-length', field: 'bundles', values: { left, right, rows: size.height } });
  if (chart && (chart.width !== size.width || chart.height !== size.height))
    return refuse({
      code: 'chart-size-differs',
      field: 'chart',
      values: { chartWidth: chart.width, chartHeight: chart.height, ...size },
    });
  const cord = readThread(thread);
  if (!cord.ok) return cord;
  const tied = chart ? withColours({ fit, bundles, rows, chart }) : rows;
  if ('ok' in tied) return tied;

  const pitches = pitchesOf(cord.thread);
  const coloured = Boolean(chart);
  const leading = leadingOf(followLeads(tied, coloured, fit.carrySide), coloured, cord.thread, pitches);
  const pieces = piecesOf(fit, (place) => pieceLength(place, size, cord.thread, pitches));
  const base = sumOf(pieces.map(({ count, length }) => multipleOf(length, count)));
  const string = sumOf(leading.map(({ length }) => length));
  const knots = leading.reduce((sum, colour) => sum + colour.knots, 0);
  return {
    ok: true,
    pieces,
    leading,
    totals: {
      pieces: pieces.reduce((sum, { count }) => sum + count, 0),
      baseStrings: pieces.reduce((sum, { place, count }) => sum + (place === 'lone' ? count : 2 * count), 0),
      base,
      knots,
      leading: string,
      workingLengths: sumOf(leading.map(({ workingLengths }) => workingLengths)),
      joins: sumOf(leading.map(({ joins }) => joins)),
      thread: sumOf([base, string]),
    },
    time: makingTime(knots, fit, cord.thread),
  };
}
