import type { Knot } from '../solver/piece.ts';
import { MOST_STRANDS, type ShapeKind, shapeOf } from './piece/packed.ts';
import { PAINT_STYLE, PEN_STYLE, wound } from './piece/pen.ts';

/** Each knot as it is drawn where it stands by itself: its string ends where the knot lets go of it. */
const SHAPES: { readonly [K in Knot]: ShapeKind } = {
  forward: 'forward-stop',
  backward: 'backward-stop',
  'forward-backward': 'forward-backward',
  'backward-forward': 'backward-forward',
};

/** The shape of a knot in the strand model, round so many strands. */
export const tiedShape = (knot: Knot, strands: number) => shapeOf(SHAPES[knot], strands);

/**
 * Every knot of the strand model round 1 to 8 strands, right or wrong in any row, and how cords are painted: once in a
 * page, for all its tied rows. They are part of the page and not of its script, since a learner ties rows of any kind
 * and the script would have to hold what draws them all.
 */
export function tiedKnots(): string {
  let shapes = '';
  for (const knot of Object.keys(SHAPES) as Knot[])
    for (let strands = 1; strands <= MOST_STRANDS; strands += 1) {
      const { lead, bases } = tiedShape(knot, strands);
      shapes += `<g id="tied-${knot}-${strands}">${wound({ leads: [lead], bases }, 'currentColor', 'cord')}</g>`;
    }
  // Not `display: none` on the picture itself: what is used from it has to be laid out.
  return `<svg class="tied-knots" width="0" height="0" aria-hidden="true"><style>${PEN_STYLE}.fig-tied-row{${PAINT_STYLE}}</style><defs>${shapes}</defs></svg>`;
}
