import type { PlaceInChart } from './place.ts';

/** A band of rows of a chart, in units of its drawing, and where in the chart it lies. */
export interface Band {
  readonly from: number;
  readonly to: number;
  readonly place: PlaceInChart;
}

/** Drawings of a whole chart. */
export const CHARTS = 'svg:is(.fig-outline, .fig-placing)';
const SVG = 'http://www.w3.org/2000/svg';
/** A chart with more rows than this has cells too small to be counted from eight metres when all of it is shown. */
const MOST_ROWS = 25;
/** So many rows at the most fill a frame that shows a part of the chart. */
const BAND_ROWS = 18;
/** What stands below the last row of a band, in units of the drawing. */
const BELOW = 4;

interface Sheet {
  readonly top: number;
  readonly width: number;
  readonly height: number;
}
const sheetOf = (chart: SVGSVGElement): Sheet | null => {
  const sheet = chart.querySelector(':scope > .f-sheet');
  const size = (name: string): number => Number(sheet?.getAttribute(name));
  return sheet && { top: size('y'), width: size('width'), height: size('height') };
};
const numbersOf = (chart: SVGSVGElement) => [...chart.querySelectorAll<SVGTextElement>(':scope > text')];
const placeOf = (number: SVGTextElement): number => Number(number.getAttribute('y'));

/**
 * The bands of rows in which a high chart is shown large, from the ring down; none where the whole of it is large
 * enough. A row’s height is read off the numbers beside the rows, so it holds for whatever the chart was drawn of.
 */
export function bandsOf(chart: SVGSVGElement): readonly Band[] {
  const sheet = sheetOf(chart);
  if (!sheet) return [];
  const rows = numbersOf(chart)
    .filter((number) => placeOf(number) > sheet.top)
    .map((number) => ({ row: Number(number.textContent), y: placeOf(number) }))
    .sort((one, other) => one.row - other.row);
  const [first, last] = [rows[0], rows.at(-1)];
  if (!first || !last || first.row === last.row) return [];
  const cell = (last.y - first.y) / (last.row - first.row);
  const count = Math.round(sheet.height / cell);
  if (count <= MOST_ROWS) return [];
  const bands = Math.ceil(count / BAND_ROWS);
  const rowAt = (band: number): number => Math.round((count * band) / bands);
  const columns = Math.round(sheet.width / cell);
  return Array.from({ length: bands }, (_, band) => {
    const [from, to] = [rowAt(band), rowAt(band + 1)];
    return { from: sheet.top + from * cell, to: sheet.top + to * cell, place: { columns, rows: count, from, to } };
  });
}

/** Shows one band of a chart with the numbers of its columns above it, or the whole chart. */
export function showBand(chart: SVGSVGElement, band: Band | null): void {
  const shown = band ? String(band.from) : '';
  if ((chart.dataset['band'] ?? '') === shown) return;
  chart.dataset['band'] = shown;
  chart.dataset['whole'] ??= chart.getAttribute('viewBox') ?? '';
  chart.querySelector('[data-near-covers]')?.remove();
  chart.setAttribute('viewBox', chart.dataset['whole']);
  const sheet = sheetOf(chart);
  const numbers = numbersOf(chart);
  for (const number of numbers)
    number.toggleAttribute('data-outside', band !== null && (placeOf(number) < band.from || placeOf(number) > band.to));
  if (!band || !sheet) return;
  const [, , width = 0, height = 0] = chart.dataset['whole'].split(/\s+/).map(Number);
  const covers = document.createElementNS(SVG, 'g');
  covers.setAttribute('data-near-covers', '');
  const first = band.from === sheet.top;
  for (const [from, wanted] of [
    [band.from - height, !first],
    [band.to, band.to < sheet.top + sheet.height - 0.5],
  ] as const) {
    if (!wanted) continue;
    const cover = document.createElementNS(SVG, 'rect');
    for (const [name, value] of Object.entries({ x: -width, y: from, width: 3 * width, height }))
      cover.setAttribute(name, String(value));
    covers.append(cover);
  }
  for (const number of numbers.filter((each) => placeOf(each) < sheet.top)) {
    number.toggleAttribute('data-outside', !first);
    if (first) continue;
    const again = number.cloneNode(true) as SVGTextElement;
    again.removeAttribute('data-outside');
    again.setAttribute('y', String(placeOf(number) + band.from - sheet.top));
    covers.append(again);
  }
  chart.append(covers);
  chart.setAttribute('viewBox', `0 ${band.from - sheet.top} ${width} ${band.to - band.from + sheet.top + BELOW}`);
}
