import type { Chart } from './chart.ts';
import { checkChart, keysOf } from './chart-check.ts';
import { written, writtenColour } from './chart-form.ts';
import { COLOUR_LINE, readHeader, TITLE_LINE } from './chart-header.ts';
import { type ChartMistake, MistakeMet, stop } from './chart-mistake.ts';
import { readRows } from './chart-rows.ts';
import { type Refusal, refuse } from './problem.ts';

export { CHART_LIMITS, DEFAULT_KEYS } from './chart-form.ts';
export type { ChartMistake, ChartMistakeKey } from './chart-mistake.ts';

export type ParsedChart = { readonly ok: true; readonly chart: Chart } | Refusal<ChartMistake>;

const isEmpty = (text: string): boolean => !/\S/.test(text);

function read(text: unknown): Chart {
  const start = { line: 1, column: 1 };
  if (typeof text !== 'string') return stop(start, 'not-text', text === null ? 'null' : typeof text, 'string');
  const lines = text.replace(/^\uFEFF/, '').split(/\r?\n/);
  const last = lines.findLastIndex((line) => !isEmpty(line));
  if (last < 0) stop(start, 'empty-text', '', `${TITLE_LINE}, ${COLOUR_LINE}`);
  const used = lines.slice(0, last + 1);
  const end = { line: last + 1, column: (used[last]?.length ?? 0) + 1 };
  const header = readHeader(used);
  if (header.palette.length === 0) stop(end, 'no-colours', 0, COLOUR_LINE);
  let above = header.lines;
  while (above <= last && isEmpty(used[above] ?? '')) above += 1;
  if (above > last) stop(end, 'no-rows', 0, header.keys.join(' '));
  return {
    ...(header.title === null ? {} : { title: header.title }),
    palette: header.palette,
    ...readRows(used.slice(above), above, header.keys),
  };
}

/**
 * Reads a chart from its text form:
 *
 * ```
 * chart Pear
 * colour . chalk #f2ead8 ground
 * colour # kelp green #4e6b3a
 *
 * ..#..
 * .###.
 * ```
 *
 * An optional line `chart TITLE`; one line `colour KEY NAME COLOUR`, with `ground` or `blank` after
 * it where it applies, for each of 1 to 32 colours; an empty line; then one line a row, row 1 (at
 * the ring) first, one character a column, the left one first: 2 to 400 columns, 1 to 1000 rows.
 * A key is one visible character. A colour is `#rrggbb`, `#rgb`, or `none` for the blank entry. A
 * title, name or colour that would not read back as it stands is written as a JSON string.
 * Either kind of line end, spaces at the end of the lines above the rows, more empty lines (but
 * not between rows) and a byte-order mark make no difference.
 *
 * Any text, or anything else, gives a chart or the first mistake, with its line and column; it never
 * throws. `key` is left off an entry whose key is the default one for its place.
 */
export function parseChart(text: unknown): ParsedChart {
  try {
    return { ok: true, chart: read(text) };
  } catch (met) {
    if (met instanceof MistakeMet) return refuse(met.problem);
    throw met;
  }
}

/**
 * Writes a chart in its text form, so that `parseChart` gives the same chart again (but for a `key`
 * that is the default one anyway). The chart must be one that `checkChart` has nothing against;
 * for any other a RangeError names the problem, so that a picture is never saved in a form that
 * can't be opened.
 */
export function formatChart(chart: Chart): string {
  const problem = checkChart(chart);
  if (problem !== null)
    throw new RangeError(`not a chart: ${problem.field ?? 'chart'}, ${problem.values['mistake'] ?? problem.code}`);
  const { title, palette, width, height, cells } = chart;
  const keys = keysOf(chart);
  const units = keys.map((key) => key.charCodeAt(0));
  const colours = palette.map(({ name, colour, ground, blank }, index) => {
    const mark = ground === true ? ' ground' : blank === true ? ' blank' : '';
    return `colour ${keys[index] ?? ''} ${written(name)} ${writtenColour(colour)}${mark}`;
  });
  const rows = Array.from({ length: height }, (_, row) =>
    String.fromCharCode(...Array.from(cells.subarray(row * width, (row + 1) * width), (index) => units[index] ?? 0)),
  );
  return [...(title === undefined ? [] : [`chart ${written(title)}`]), ...colours, '', ...rows, ''].join('\n');
}
