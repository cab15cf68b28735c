import type { Chart } from './chart.ts';
import { blankOf, groundOf } from './chart-ground.ts';
import type { Bundles, Fit, RowPlan, Run, SideName } from './piece.ts';
import { withColours } from './thread/coloured-rows.ts';
import { followLeads, LONG_PLACES } from './thread/floats.ts';

/** What a careful maker would warn about (craft, sections 3, 4, 6 and 7). */
export type WarningCode =
  | 'width-differs'
  | 'height-differs'
  | 'never-full-width'
  | 'bundle-over-most'
  | 'first-row-not-plain'
  | 'hole'
  | 'picture-cut'
  | 'too-many-colours'
  | 'colour-change-on-turning-knot'
  | 'float-too-long';

export interface Warning {
  readonly code: WarningCode;
  /** From 1; absent where the whole piece is meant. */
  readonly row?: number;
  /** From 1. A float's columns stand in the direction it runs, all others from left to right. */
  readonly columns?: readonly [from: number, to: number];
  readonly values: Readonly<Record<string, number | string>>;
}

export interface InspectInput {
  readonly chart: Chart;
  readonly fit: Fit;
  readonly bundles: Bundles;
  readonly rows: readonly RowPlan[];
}

/** Colours a row may have before its back gets too thick (craft, section 7). */
const MOST_COLOURS = 4;

function sizeWarnings({ chart, fit, rows }: InspectInput): Warning[] {
  const warnings: Warning[] = [];
  if (chart.width !== fit.width)
    warnings.push({ code: 'width-differs', values: { chart: chart.width, piece: fit.width } });
  if (chart.height !== rows.length)
    warnings.push({ code: 'height-differs', values: { chart: chart.height, piece: rows.length } });
  return warnings;
}

/** The first row in which a side's bundle has more strands than the most, where there is one. */
function overMost(rows: readonly RowPlan[], fit: Fit, side: SideName): Warning | null {
  for (const { row, leftBundle, rightBundle } of rows) {
    const bundle = side === 'left' ? leftBundle : rightBundle;
    const strands = bundle + (fit.carrySide === side ? 1 : 0);
    if (strands > fit.maxBundle)
      return {
        code: 'bundle-over-most',
        row,
        columns: side === 'left' ? [1, bundle] : [fit.width - bundle + 1, fit.width],
        values: { side, bundle: strands, most: fit.maxBundle },
      };
  }
  return null;
}

/** Stretches of blank cells among the knots of a row, from left to right. */
function holesIn(plan: RowPlan, chart: Chart, blank: number, warnings: Warning[]): void {
  const offset = (plan.row - 1) * chart.width - 1;
  let from = 0;
  for (let column = plan.firstColumn; column <= plan.lastColumn + 1; column += 1) {
    const inHole = column <= plan.lastColumn && chart.cells[offset + column] === blank;
    if (inHole && from === 0) from = column;
    if (!inHole && from > 0) {
      warnings.push({ code: 'hole', row: plan.row, columns: [from, column - 1], values: { cells: column - from } });
      from = 0;
    }
  }
}

const isTurning = (run: Run): boolean => run.knot === 'backward-forward' || run.knot === 'forward-backward';

/**
 * Looks a planned chart over as a careful maker would before cutting a string.
 *
 * Warnings about the whole piece come first, then row by row from the ring. Where the chart's size is not the
 * piece's only that is said, since nothing else could be. Long floats of one colour in one row are one warning:
 * its columns are the longest one's, `values.floats` how many there are. Rows that carry no colours are planned
 * again with the chart; if the chart is no chart, or the bundles no outline, there is nothing to inspect.
 */
export function inspect(input: InspectInput): Warning[] {
  const { chart, fit, bundles } = input ?? {};
  if (!chart || !fit || !Array.isArray(input.rows)) return [];
  const warnings = sizeWarnings(input);
  if (warnings.length > 0) return warnings;
  const rows = withColours({ fit, bundles, rows: input.rows, chart });
  if ('ok' in rows) return [];
  const { leads, long, coloursInRow } = followLeads(rows, true, fit.carrySide);
  const { cells, width } = chart;
  const ground = groundOf(chart);
  const blank = blankOf(chart) ?? -1;
  const hasHoles = leads.some(({ colour }) => colour === blank);

  let most = 0;
  for (const { knots } of rows) if (knots > most) most = knots;
  if (most < width) warnings.push({ code: 'never-full-width', values: { width, most } });

  const leftOver = overMost(rows, fit, 'left');
  const rightOver = overMost(rows, fit, 'right');

  let nextLong = 0;
  let knotBefore = -1;
  for (let index = 0; index < rows.length; index += 1) {
    const plan = rows[index];
    if (!plan) continue;
    const { row, firstColumn, lastColumn, runs } = plan;
    if (leftOver?.row === row) warnings.push(leftOver);
    if (rightOver?.row === row) warnings.push(rightOver);

    const colours = coloursInRow[index] ?? 0;
    if (row === 1 && colours > 1) warnings.push({ code: 'first-row-not-plain', row, values: { colours } });
    if (hasHoles) holesIn(plan, chart, blank, warnings);

    const offset = index * width - 1;
    if (firstColumn > 1) cutOnSide(cells, offset, 1, firstColumn - 1, ground, blank, row, 'left', warnings);
    if (lastColumn < width) cutOnSide(cells, offset, lastColumn + 1, width, ground, blank, row, 'right', warnings);

    if (colours > MOST_COLOURS)
      warnings.push({ code: 'too-many-colours', row, values: { colours, most: MOST_COLOURS } });

    turningChanges(runs, row, knotBefore, warnings);
    knotBefore = runs[runs.length - 1]?.colour ?? knotBefore;
    for (; long[nextLong] === row; nextLong += LONG_PLACES) warnings.push(longFloats(long, nextLong));
  }
  return warnings;
}

/**
 * The turning knots of a row, at its two ends, that change colour: the first one against the last knot of the
 * row before (-1 where there is none) and the knot after it, the last one against the knot before it.
 */
function turningChanges(runs: readonly Run[], row: number, knotBefore: number, warnings: Warning[]): void {
  const first = runs[0];
  const last = runs[runs.length - 1];
  if (!first || !last) return;
  if (isTurning(first)) {
    const colour = first.colour ?? 0;
    const after = runs[1]?.colour ?? colour;
    if (after !== colour) warnings.push(turningChange(row, first, colour, after));
    else if (knotBefore >= 0 && knotBefore !== colour) warnings.push(turningChange(row, first, colour, knotBefore));
  }
  if (runs.length > 1 && isTurning(last)) {
    const colour = last.colour ?? 0;
    const before = runs[runs.length - 2]?.colour ?? colour;
    if (before !== colour) warnings.push(turningChange(row, last, colour, before));
  }
}

/** The warning about the long floats of one colour in one row, from its place in `Leads.long`. */
function longFloats(long: Int32Array, at: number): Warning {
  const begins = long[at + 2] ?? 0;
  const ends = long[at + 3] ?? 0;
  return {
    code: 'float-too-long',
    row: long[at] ?? 0,
    columns: ends > begins ? [begins + 1, ends] : [begins, ends + 1],
    values: {
      colour: long[at + 1] ?? 0,
      columns: Math.abs(ends - begins),
      rows: long[at + 4] ?? 0,
      floats: long[at + 5] ?? 0,
    },
  };
}

const turningChange = (row: number, run: Run, colour: number, beside: number): Warning => ({
  code: 'colour-change-on-turning-knot',
  row,
  columns: [run.columns[0], run.columns[0]],
  values: { colour, beside },
});

/** Picture cells among the corner cells of one side of a row. */
function cutOnSide(
  cells: Uint8Array,
  offset: number,
  from: number,
  to: number,
  ground: number,
  blank: number,
  row: number,
  side: SideName,
  warnings: Warning[],
): void {
  let first = 0;
  let last = 0;
  let lost = 0;
  for (let column = from; column <= to; column += 1) {
    const cell = cells[offset + column];
    if (cell === ground || cell === blank) continue;
    if (first === 0) first = column;
    last = column;
    lost += 1;
  }
  if (lost > 0) warnings.push({ code: 'picture-cut', row, columns: [first, last], values: { side, lost } });
}
