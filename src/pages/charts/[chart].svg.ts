import type { APIRoute } from 'astro';
import { smallPiece } from '../../components/small-piece.ts';
import { charts } from '../../entries/charts.ts';

/** The finished piece of each chart as a small picture. */
export const getStaticPaths = () =>
  charts.map((entry) => ({ params: { chart: entry.id }, props: { svg: smallPiece(entry) } }));

export const GET: APIRoute<{ svg: string }> = ({ props }) =>
  new Response(props.svg, { headers: { 'content-type': 'image/svg+xml; charset=utf-8' } });
