import type { Chart } from './chart.ts';

/** The palette index of the blank entry (outside the shape), or null when the chart has none. */
export function blankOf(chart: Chart): number | null {
  const index = chart.palette.findIndex((entry) => entry.blank === true);
  return index < 0 ? null : index;
}

/**
 * The palette index of the background: the entry marked `ground`; else the commonest colour on
 * the rim (first and last row and column, a corner counted once), ties to the lower index. Blank
 * cells are not counted; where the whole rim is blank, the answer is the first entry that is not.
 */
export function groundOf(chart: Chart): number {
  const marked = chart.palette.findIndex((entry) => entry.ground === true);
  if (marked >= 0) return marked;
  const { width, height, cells } = chart;
  const blank = blankOf(chart);
  const counts = chart.palette.map(() => 0);
  const count = (cell: number): void => {
    const index = cells[cell];
    if (index !== undefined) counts[index] = (counts[index] ?? 0) + 1;
  };
  const lastRow = (height - 1) * width;
  for (let column = 0; column < width; column += 1) {
    count(column);
    if (height > 1) count(lastRow + column);
  }
  for (let row = 1; row < height - 1; row += 1) {
    count(row * width);
    count(row * width + width - 1);
  }
  let best = blank === 0 && chart.palette.length > 1 ? 1 : 0;
  counts.forEach((number, index) => {
    if (index !== blank && number > (counts[best] ?? 0)) best = index;
  });
  return best;
}

/** A test for palette indices: whether a cell of that colour belongs to the picture, being neither ground nor blank. */
export function isPicture(chart: Chart): (index: number) => boolean {
  const ground = groundOf(chart);
  const blank = blankOf(chart);
  return (index) => index !== ground && index !== blank;
}
