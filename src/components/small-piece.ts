import { type ChartEntry, chartPlan } from '../entries/charts.ts';
import { drawPiece, pieceModel, piecesOf } from '../figures/piece/index.ts';

/** The finished piece of a chart, as a file for lists: as fine as can be seen in a small picture. */
export const smallPiece = (entry: ChartEntry): string =>
  drawPiece(pieceModel(piecesOf(chartPlan(entry))), { id: entry.id, level: 'stitch' });
