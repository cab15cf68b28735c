import type { PaletteEntry } from '../solver/chart.ts';
import { type Fit, opposite, type RowPlan, type Run, type SideName } from '../solver/piece.ts';
import { knotName } from './knot-words.ts';
import { count, figure, list, numberWord } from './numbers.ts';

export type RowLineKey = 'row' | 'loop' | 'pin' | 'let-out' | 'take-in' | 'carry-behind' | 'knots' | 'turn' | 'ends';

/** One instruction of a row, to be read on the page or aloud. */
export interface RowLine {
  readonly key: RowLineKey;
  readonly text: string;
  /** The run of the row that this line ties, as an index from 0; null where it ties nothing. */
  readonly run: number | null;
}

export interface RowWording {
  readonly row: RowPlan;
  /** The row before it; left out for row 1. */
  readonly before?: RowPlan | null | undefined;
  readonly fit: Fit;
  /** The chart's palette, where colours are to be named. */
  readonly palette?: readonly PaletteEntry[] | null | undefined;
}

const DIRECTIONS: Readonly<Record<RowPlan['direction'], string>> = {
  rightward: 'left to right',
  leftward: 'right to left',
};

const directionWords = (direction: RowPlan['direction']): string => DIRECTIONS[direction];

/** A colour by the name its chart gives it. */
export const colourName = (palette: readonly PaletteEntry[] | null | undefined, colour: number): string =>
  palette?.[colour]?.name.trim() || `colour ${colour + 1}`;

const isTurning = ({ knot }: Run): boolean => knot === 'forward-backward' || knot === 'backward-forward';

/** What a row's lines are made from, by the edge it starts at and the edge it ends at. */
interface Edges {
  readonly start: SideName;
  readonly end: SideName;
  readonly startBundle: number;
  readonly endBundle: number;
  /** The end edge's bundle in the row before. */
  readonly endBefore: number;
  /** Every string was held by one bundle or the other in the row before, so strings go straight across. */
  readonly allHeld: boolean;
}

const bundleOf = (row: RowPlan, side: SideName): number => (side === 'left' ? row.leftBundle : row.rightBundle);

function edgesOf({ row, before, fit }: RowWording): Edges {
  const start = row.direction === 'rightward' ? 'left' : 'right';
  const end = opposite(start);
  const endBundle = bundleOf(row, end);
  return {
    start,
    end,
    startBundle: bundleOf(row, start),
    endBundle,
    endBefore: before ? bundleOf(before, end) : endBundle,
    allHeld: before ? before.leftBundle + before.rightBundle === fit.width : false,
  };
}

const foldsToLoop = (folds: number, side: SideName): string =>
  `Loop ${count(folds, 'fold')} through the ring at the ${side} end of the bar. Keep the ends level, and tie no knot on the ring.`;

const carried = (fit: Fit, side: SideName): string => (fit.carrySide === side ? ', with the carried end' : '');

/** The move before the first knot, in the order in which strings move (craft, section 5). */
function moveLine(row: RowPlan, { start, end, allHeld, endBundle, endBefore }: Edges): RowLine | null {
  const { startMove } = row;
  if (startMove === 'none') return null;
  const across =
    startMove === 'let-out' && allHeld && endBundle > endBefore
      ? ` It joins the ${end} bundle in this row and gets no knot of its own.`
      : '';
  const text = {
    'let-out': `Let one string out on the ${start}: pass the innermost string of the bundle behind the leading string, to the inner side.${across}`,
    'take-in': `Take one string in on the ${start}: pass the next string${allHeld ? `, from the ${end} bundle,` : ''} behind the leading string to the outer side. It joins the bundle.`,
    'carry-behind': `Carry the leading string behind the two edge strings on the ${start}, to their inner side. They are a bundle of two now.`,
  }[startMove];
  return { key: startMove, text, run: null };
}

/** The turning knot with which a row starts. */
function startTurn(run: Run, edges: Edges, fit: Fit, colour: string): string {
  const { start } = edges;
  const what =
    run.strands === 1
      ? `the one string left at the ${start} edge`
      : `${run.strands === 2 ? 'both strings' : `all ${figure(run.strands)} strings`} of the ${start} bundle`;
  return `Tie a ${knotName(run.knot)}${colour} round ${what}${carried(fit, start)}.`;
}

/** The turning knot with which a row ends; where the bundle grows or shrinks nothing moves, the knot alone says it. */
function endTurn(run: Run, { end, endBefore }: Edges, fit: Fit, colour: string): string {
  const knot = `ie a ${knotName(run.knot)}${colour} round`;
  const strings = figure(run.strands);
  const ride = carried(fit, end);
  if (run.strands < endBefore) return `T${knot} the ${strings} strings left in the ${end} bundle${ride}.`;
  if (run.strands === endBefore)
    return `T${knot} ${run.strands === 2 ? 'both' : `all ${strings}`} strings of the ${end} bundle${ride}.`;
  if (endBefore === 1) return `Take the last two strings on the ${end} together: t${knot} both${ride}.`;
  return `Take one more string into the ${end} bundle: t${knot} all ${strings} strings${ride}.`;
}

const howMany = ({ count: knots }: Run): string => (knots < 21 ? numberWord(knots) : figure(knots));

/** The ordinary knots of one run, and which of them fall on a string that is let out or an edge with a carried end. */
function plainKnots(run: Run, index: number, row: RowPlan, edges: Edges, fit: Fit, colour: string): string {
  const { start, end, startBundle, endBundle, endBefore } = edges;
  const [from, to] = run.columns;
  const endEdge = end === 'right' ? row.lastColumn : row.firstColumn;
  const inwards = end === 'right' ? -1 : 1;
  const says = [`Tie ${howMany(run)} ${knotName(run.knot)}${run.count === 1 ? '' : 's'}${colour}.`];
  const first = run.count === 1 ? 'It is' : 'The first is';
  const final = run.count === 1 ? 'It is' : 'The last is';

  if (index === 1 && row.startMove === 'let-out') says.push(`${first} on the string you let out.`);
  if (index === 0 && startBundle === 1 && fit.carrySide === start)
    says.push(`${first} round the edge string and the carried end together.`);
  if (endBundle < endBefore && to === endEdge + inwards)
    says.push(`${final} on the innermost string of the ${end} bundle, which you let out here.`);
  else if (endBundle < endBefore && endBundle === 1 && to === endEdge && from !== to)
    says.push(
      `${run.count === 2 ? 'They' : 'The last two'} are on the two strings of the ${end} bundle, which hang singly from now on.`,
    );
  if (to === endEdge && endBundle === 1 && fit.carrySide === end)
    says.push(`${final} round the edge string and the carried end together.`);
  return says.join(' ');
}

const onlyColour = (runs: readonly Run[]): number | null => {
  const colour = runs[0]?.colour;
  return colour !== undefined && runs.every((run) => run.colour === colour) ? colour : null;
};

/**
 * A row as short instructions, in the order of the work: where it goes, what moves first, each run of knots,
 * and where the leading string is at the end. True for either hand; left and right are the piece's own.
 * Colours are named where the row has more than one, or once where it has one.
 */
export function rowWords(wording: RowWording): RowLine[] {
  const { row, before, fit, palette } = wording;
  const edges = edgesOf(wording);
  const { start, end, startBundle, endBundle } = edges;
  const { runs } = row;
  const only = palette ? onlyColour(runs) : null;
  const all = only === null ? '' : `, all in ${colourName(palette, only)}`;
  const lines: RowLine[] = [
    {
      key: 'row',
      text: `Row ${figure(row.row)}, ${directionWords(row.direction)}: ${count(row.knots, 'knot')}${all}.`,
      run: null,
    },
  ];

  const isFirst = row.row === 1 && !before;
  if (isFirst) {
    const { folds } = fit[start];
    if (folds > 0) lines.push({ key: 'loop', text: foldsToLoop(folds, start), run: null });
    const place = startBundle > 1 ? 'on the inner side of this bundle' : `outside the edge string on the ${start}`;
    lines.push({ key: 'pin', text: `Pin the leading string ${place}.`, run: null });
  }
  const move = moveLine(row, edges);
  if (move) lines.push(move);

  runs.forEach((run, index) => {
    const isLast = index === runs.length - 1;
    if (isFirst && isLast && fit[end].folds > 0)
      lines.push({ key: 'loop', text: foldsToLoop(fit[end].folds, end), run: null });
    const colour = palette && only === null && run.colour !== undefined ? ` in ${colourName(palette, run.colour)}` : '';
    if (!isTurning(run))
      lines.push({ key: 'knots', text: plainKnots(run, index, row, edges, fit, colour), run: index });
    else {
      const text = index === 0 ? startTurn(run, edges, fit, colour) : endTurn(run, edges, fit, colour);
      lines.push({ key: 'turn', text, run: index });
    }
  });

  const rests = endBundle > 1 ? `on the inner side of the ${end} bundle` : `outside the ${end} edge`;
  lines.push({ key: 'ends', text: `The leading string is now ${rests}.`, run: null });
  return lines;
}

/**
 * The same instructions for a printed plan: runs of which nothing more is to be said stand in one line,
 * 'Tie forward knots: six in chalk, one in tar, six in chalk.'
 */
export function rowLedger(wording: RowWording): RowLine[] {
  const { row, palette } = wording;
  const ledger: RowLine[] = [];
  let open: string[] = [];
  for (const line of rowWords(wording)) {
    const run = line.run === null ? undefined : row.runs[line.run];
    // A second sentence says on which string a knot falls, and must stay beside its run.
    const bare = line.key === 'knots' && !line.text.slice(0, -1).includes('.');
    if (run?.colour !== undefined && palette && bare && line.text.includes(' in ')) {
      open.push(`${howMany(run)} in ${colourName(palette, run.colour)}`);
      const text = `Tie ${knotName(run.knot)}s: ${open.join(', ')}.`;
      if (open.length === 1) ledger.push(line);
      else ledger[ledger.length - 1] = { ...line, text };
    } else {
      open = [];
      ledger.push(line);
    }
  }
  return ledger;
}

/** The same instructions as one text, to be spoken. */
export const rowSpeech = (wording: RowWording): string =>
  rowWords(wording)
    .map(({ text }) => text)
    .join(' ');

/** A row in one line, with its colour where it has only one: 'Row 5, left to right: 24 knots, with a bundle of 2 on the left and 2 on the right'. */
export function rowSummary(
  { row, direction, knots, leftBundle, rightBundle, runs }: RowPlan,
  palette?: readonly PaletteEntry[] | null,
): string {
  const bundles = [leftBundle > 1 && `${leftBundle} on the left`, rightBundle > 1 && `${rightBundle} on the right`];
  const held = bundles.filter((bundle) => bundle !== false);
  const ends = held.length === 0 ? '' : `, with a bundle of ${list(held)}`;
  const only = palette ? onlyColour(runs) : null;
  const all = only === null ? '' : `, all in ${colourName(palette, only)}`;
  return `Row ${figure(row)}, ${directionWords(direction)}: ${count(knots, 'knot')}${all}${ends}`;
}
