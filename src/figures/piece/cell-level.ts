import { blankOf } from '../../solver/chart-ground.ts';
import { mergedCells } from '../cells.ts';
import type { PieceModel } from './model-types.ts';
import { COLUMN, ROW } from './packed.ts';
import { PAINTS, packedFigures, unit } from './pen.ts';

/** More cells than this are drawn in blocks: no screen or paper shows them one by one. */
const MOST_CELLS = 40_000;
/** A knot's outline is round: its cell goes this much less far than its outermost point, in d. */
const ROUND = 0.3;

/** How far to the left and right the knots of each row reach, as seen from the front. */
function reaches({ places, shapes, view, width }: PieceModel): Map<number, [left: number, right: number]> {
  const rows = new Map<number, [number, number]>();
  const extents = new Map<string, [number, number]>();
  for (const { knot, shape, x } of places) {
    if (!knot) continue;
    const xs = (shapes[shape]?.leads[0] ?? []).map((point) => point[0]);
    const [low, high] = extents.get(shape) ?? [Math.min(...xs) - 0.5 + ROUND, Math.max(...xs) + 0.5 - ROUND];
    extents.set(shape, [low, high]);
    const [from, to] = view === 'back' ? [width * COLUMN - x - high, width * COLUMN - x - low] : [x + low, x + high];
    const row = rows.get(knot.row);
    rows.set(knot.row, row ? [Math.min(row[0], from), Math.max(row[1], to)] : [from, to]);
  }
  return rows;
}

/** The knots as cells of colour, each as large as its knot: bundles as broad as they are thick. */
export function cellLevel(model: PieceModel): string {
  const { chart, width, upToRow, upToKnot, coarse } = model;
  const rows = model.rows.slice(0, upToRow);
  const blank = chart ? blankOf(chart) : null;
  const paint = (index: number): string => chart?.palette[index]?.colour ?? PAINTS.lead;
  const back = model.view === 'back';
  const colourAt = (column: number, row: number): number => {
    const index = chart?.cells[row * width + column] ?? 0;
    return index === blank ? -1 : index;
  };
  if (coarse) {
    const block = Math.max(1, Math.ceil(Math.sqrt((width * model.height) / MOST_CELLS)));
    const across = Math.ceil(width / block);
    const merged = mergedCells(across, Math.ceil(rows.length / block), (x, y) => {
      const column = Math.min(width - 1, (back ? across - 1 - x : x) * block);
      const row = rows[Math.min(rows.length - 1, y * block)];
      return !row || column < row.firstColumn - 1 || column >= row.lastColumn ? -1 : colourAt(column, row.row - 1);
    });
    const scale = packedFigures([unit(COLUMN) * block, unit(ROW) * block]);
    return `<g transform="scale(${scale})">${[...merged].map(([index, d]) => `<path d="${d}" fill="${paint(index)}"/>`).join('')}</g>`;
  }
  const paths = new Map<number, string>();
  const reach = reaches(model);
  for (const row of rows) {
    const [from, to] = reach.get(row.row) ?? [0, 0];
    const most = row.row === upToRow ? upToKnot : row.knots;
    const ofRow = (column: number): number =>
      row.direction === 'rightward' ? column - row.firstColumn : row.lastColumn - column;
    let start: number | null = null;
    let colour = -1;
    for (let column = row.firstColumn; column <= row.lastColumn + 1; column += 1) {
      const is =
        column > row.lastColumn || ofRow(column) >= most || ofRow(column) < 0
          ? -1
          : Math.max(0, colourAt(column - 1, row.row - 1));
      if (is === colour) continue;
      if (start !== null && colour >= 0) {
        const left = start === row.firstColumn ? from : (start - 1) * COLUMN;
        const right = column > row.lastColumn ? to : (column - 1) * COLUMN;
        const [x, y, far, low] = [
          unit(back ? width * COLUMN - right : left),
          unit((row.row - 1) * ROW),
          unit(back ? width * COLUMN - left : right),
          unit(row.row * ROW),
        ];
        paths.set(colour, `${paths.get(colour) ?? ''}M${packedFigures([x, y])}h${far - x}v${low - y}h${x - far}z`);
      }
      [start, colour] = [column, is];
    }
  }
  return [...paths].map(([index, d]) => `<path d="${d}" fill="${paint(index)}"/>`).join('');
}
