import type { APIRoute } from 'astro';
import { charts } from '../../entries/charts.ts';

/** Each chart as the text that can be pasted into Your piece. */
export const getStaticPaths = () => charts.map(({ id, text }) => ({ params: { chart: id }, props: { text } }));

export const GET: APIRoute<{ text: string }> = ({ props }) =>
  new Response(props.text, { headers: { 'content-type': 'text/plain; charset=utf-8' } });
