import { showPlace } from './place.ts';

/** Room for a chart to mark, in units of the frame: beside its question, or below it where it is wide. */
const CHARTS = { tall: { width: 560, height: 588 }, wide: { width: 1000, height: 380 } } as const;
/** The largest cell that is wanted, what its line takes, and the lowest row with room for a number of its own. */
const CELL = { most: 50, line: 1.2, numbered: 28 };
/** Rows of a wide chart may be higher than its columns are wide, up to this, so that they are told apart. */
const HIGH = 1.5;
/**
 * Lower rows than this are not told apart from eight metres, so a chart gives way no further; then its columns do, since
 * words beside it need the width. By so much at a time.
 */
const LEAST = { row: 22, cell: 14, less: 0.94 };
/** For larger words a chart gives way to this part of its room at the most, as long as its rows stay as high as this. */
const SHARE = { least: 0.8, row: 28.4 };
/** A chart with more rows than this is shown in bands, which have so many rows at the most. */
const ROWS = { whole: 25, band: 18 };
/** A chart that is no higher than this stands below its question, if its cells are as large there. */
const LOW = 220;

/** Rows of a chart to mark, from the first that is shown up to the one that is not, counted from 0. */
export interface RowBand {
  readonly from: number;
  readonly to: number;
}

const gridIn = (frame: Element): HTMLTableElement | null => frame.querySelector('.mark-grid');
const rowsOf = (grid: HTMLTableElement): HTMLTableRowElement[] =>
  [...grid.rows].filter((row) => !row.hasAttribute('data-outside'));

/**
 * The bands in which a high chart to mark is shown, from the ring down; none where all of it is large enough. The whole of
 * a high one would be a grey grid to a room.
 */
export function rowBandsOf(exercise: Element): readonly RowBand[] {
  const count = gridIn(exercise)?.rows.length ?? 0;
  if (count <= ROWS.whole) return [];
  const bands = Math.ceil(count / ROWS.band);
  const edge = (band: number): number => Math.round((count * band) / bands);
  return Array.from({ length: bands }, (_, band) => ({ from: edge(band), to: edge(band + 1) }));
}

/** Shows one band of a chart to mark, or the whole of it. */
export function showRows(frame: HTMLElement, band: RowBand | null): void {
  const grid = gridIn(frame);
  if (!grid) return;
  const outside = (at: number): boolean => band !== null && (at < band.from || at >= band.to);
  const rows = [...grid.rows];
  const columns = (rows[0]?.cells.length ?? 0) - 1;
  showPlace(frame, band && columns > 0 ? { ...band, columns, rows: rows.length } : null);
  if (rows.every((row, at) => row.hasAttribute('data-outside') === outside(at))) return;
  for (const [at, row] of rows.entries()) row.toggleAttribute('data-outside', outside(at));
  fitCells(frame);
}

/** Which way the rows go on that are not shown, when an arrow key leads out of the band from this cell. */
export function outOfBand(cell: Element, key: string): 'on' | 'back' | null {
  const row = cell.closest('tr');
  const beyond = { ArrowDown: row?.nextElementSibling, ArrowUp: row?.previousElementSibling }[key];
  if (!beyond?.hasAttribute('data-outside')) return null;
  return key === 'ArrowDown' ? 'on' : 'back';
}

function setCells(grid: HTMLTableElement, cell: number, row: number): void {
  grid.style.setProperty('--cell', cell.toFixed(2));
  grid.style.setProperty('--row', row.toFixed(2));
  grid.toggleAttribute('data-close', row < CELL.numbered);
}

/** The part of its room that each chart to mark takes, where it has given way for larger words. */
const shares = new WeakMap<HTMLElement, number>();

/** The parts of its room that a chart to mark may take, the largest first; none where a frame has no such chart. */
export function sharesOf(frame: HTMLElement): readonly number[] {
  const grid = gridIn(frame);
  if (!grid) return [];
  takeShare(frame, 1);
  const row = Number(grid.style.getPropertyValue('--row'));
  const parts = [1];
  for (let part = LEAST.less; part >= SHARE.least && row * part >= SHARE.row; part *= LEAST.less) parts.push(part);
  return parts;
}

/** Gives a chart to mark this part of its room. */
export function takeShare(frame: HTMLElement, share: number): void {
  shares.set(frame, share);
  fitCells(frame);
}

/** Makes the cells of a chart to mark as large as lets what is shown of it stand on its frame. */
export function fitCells(frame: HTMLElement): void {
  const grid = gridIn(frame);
  const columns = (grid?.rows[0]?.cells.length ?? 0) - 1;
  if (!grid || columns < 1) return;
  const rows = rowsOf(grid).length;
  const isBand = rows < grid.rows.length;
  const share = shares.get(frame) ?? 1;
  const rowIn = ({ height }: { height: number }) => Math.min(CELL.most, height / rows - CELL.line) * share;
  const cellIn = (room: (typeof CHARTS)[keyof typeof CHARTS]) =>
    Math.min(rowIn(room), room.width / columns - CELL.line);
  const wider = cellIn(CHARTS.wide) - cellIn(CHARTS.tall);
  const isLow = rows * cellIn(CHARTS.wide) <= LOW;
  const shape = !isBand && (wider > 0 || (wider === 0 && isLow)) ? 'wide' : 'tall';
  frame.dataset['shape'] = shape;
  const cell = cellIn(CHARTS[shape]);
  // In a band only rows are counted.
  setCells(grid, cell, isBand ? rowIn(CHARTS[shape]) : Math.min(rowIn(CHARTS[shape]), cell * HIGH));
}

/** Makes the cells of a chart to mark a little smaller, where there is one that can be; says whether it could. */
export function smallerCells(frame: HTMLElement): boolean {
  const grid = gridIn(frame);
  if (!grid) return false;
  const [cell = 0, row = 0] = ['--cell', '--row'].map((size) => Number(grid.style.getPropertyValue(size)));
  const [narrower, lower] = [cell * LEAST.less, row * LEAST.less];
  if (lower >= LEAST.row) setCells(grid, Math.min(narrower, lower), lower);
  else if (narrower >= LEAST.cell) setCells(grid, narrower, row);
  else return false;
  return true;
}
