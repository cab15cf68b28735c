import type { Chart } from './chart.ts';
import { CHART_LIMITS } from './chart-form.ts';
import { stop } from './chart-mistake.ts';

/** Every UTF-16 unit. */
const UNITS = 0x10000;

/**
 * Reads the rows of a chart's text, one line a row, of which there is at least one; `above` is the number of lines
 * over them. Stops at the first mistake.
 */
export function readRows(
  rows: readonly string[],
  above: number,
  keys: readonly string[],
): Pick<Chart, 'width' | 'height' | 'cells'> {
  const width = rows[0]?.length ?? 0;
  const height = rows.length;
  const widest = CHART_LIMITS.width.high;
  const highest = CHART_LIMITS.height.high;
  // 0 for a unit that is no key, else one more than the key's palette index: a table, because charts may be large.
  const places = new Uint8Array(UNITS);
  keys.forEach((key, index) => {
    places[key.charCodeAt(0)] = index + 1;
  });
  const cells = new Uint8Array(Math.min(width, widest) * Math.min(height, highest));
  let at = 0;
  for (const [index, text] of rows.entries()) {
    const line = above + index + 1;
    if (text === '') stop({ line, column: 1 }, 'empty-row', 0, width);
    if (index === highest) stop({ line, column: 1 }, 'too-high', height, highest);
    for (let column = 0; column < text.length; column += 1) {
      const key = places[text.charCodeAt(column)] ?? 0;
      const place = { line, column: column + 1 };
      if (key === 0) {
        const cell = String.fromCodePoint(text.codePointAt(column) ?? 0);
        stop(place, /\s/.test(cell) ? 'space-in-row' : 'unknown-key', cell, keys.join(' '));
      }
      if (column === width) stop(place, 'ragged-row', text.length, width);
      if (column === widest) stop(place, 'too-wide', text.length, widest);
      cells[at] = key - 1;
      at += 1;
    }
    const end = { line, column: text.length + 1 };
    if (text.length < width) stop(end, 'ragged-row', text.length, width);
    if (width < CHART_LIMITS.width.low) stop(end, 'too-narrow', width, CHART_LIMITS.width.low);
  }
  return { width, height, cells };
}
