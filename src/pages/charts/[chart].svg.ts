import type { APIRoute } from 'astro';
import { chartPlan, charts } from '../../entries/charts.ts';
import { drawPiece, pieceModel, piecesOf } from '../../figures/piece/index.ts';

/** The finished piece of each chart as a small picture, for lists of charts. */
export const getStaticPaths = () =>
  charts.map((entry) => ({
    params: { chart: entry.id },
    props: { svg: drawPiece(pieceModel(piecesOf(chartPlan(entry))), { id: entry.id, level: 'stitch' }) },
  }));

export const GET: APIRoute<{ svg: string }> = ({ props }) =>
  new Response(props.svg, { headers: { 'content-type': 'image/svg+xml; charset=utf-8' } });
