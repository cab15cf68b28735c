import type { APIRoute } from 'astro';
import { galleryFiles } from '../../components/gallery.ts';
import { standAlone } from '../../components/stand-alone.ts';
import figures from '../../styles/figures.css?raw';
import tokens from '../../styles/tokens.css?raw';

/** Each plate as a file that can be kept, shown or put into a hand-out. */
export const getStaticPaths = () =>
  galleryFiles().map(({ file, svg }) => ({
    params: { plate: file },
    props: { svg: standAlone(svg(), { tokens, figures }) },
  }));

export const GET: APIRoute<{ svg: string }> = ({ props }) =>
  new Response(props.svg, { headers: { 'content-type': 'image/svg+xml; charset=utf-8' } });
