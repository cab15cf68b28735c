import type { Fit } from '../../solver/piece.ts';
import { mirrored, type Path, type Point } from '../strand/point.ts';
import * as kept from './kept.ts';
import type { PieceModel, PieceShape } from './model-types.ts';
import { COLUMN } from './packed.ts';

/** Where the bar lies above row 1, its radius, and the radius of the ring's wire, in d. */
export const BAR_AT = -4.6;
export const BAR_RADIUS = 1;
export const WIRE_RADIUS = 0.75;
/** From one leg of a side fold to the next along the ring, in d. */
const LEG = 0.98;
/** A lark's head is laid a little wider than one alone, so that its ends hang over their columns. */
const HEAD_WIDER = 1.5;

/** How far the foot of the ring reaches beyond the bar for the folds of one side. */
const footOf = (strands: number): number => (strands === 0 ? 0 : strands * LEG + 1.4);

export function ringOf({ width, left, right }: Fit): PieceModel['ring'] {
  const from = left.columns * COLUMN - (left.columns ? 0.2 : -0.1);
  const to = (width - right.columns) * COLUMN + (right.columns ? 0.2 : -0.1);
  const footLeft = from - footOf(left.strands);
  const footRight = to + footOf(right.strands);
  const middle = (from + to) / 2;
  const rise = Math.max(7, Math.min(26, (footRight - footLeft) * 0.42));
  const top = BAR_AT - rise;
  const round = Math.min(rise * 0.9, (footRight - footLeft) / 2);
  const corner = (foot: number, way: number): Point[] => [
    [foot + way * 0.4, BAR_AT, 0],
    [foot - way * 1.1, BAR_AT - 0.1, 0],
    [foot - way * 2.1, BAR_AT - 1.2, 0],
    [foot - way * 2.2, BAR_AT - rise * 0.42, 0],
    [foot - way * 1.2, BAR_AT - rise * 0.78, 0],
    [foot + way * round * 0.34, top + rise * 0.05, 0],
    [foot + way * round * 0.8, top, 0],
  ];
  const r = Math.max(3.4, Math.min(9, (footRight - footLeft) * 0.16));
  return {
    bar: [
      [from, BAR_AT, 0],
      [to, BAR_AT, 0],
    ],
    arch: [
      [from, BAR_AT, 0],
      ...corner(footLeft, 1),
      [middle, top, 0],
      ...corner(footRight, -1).reverse(),
      [to, BAR_AT, 0],
    ],
    key: { x: middle, y: top - r + 1.1, r },
  };
}

/** The shapes of the bar; the other half of a lark's head is no mirror image, so both are kept. */
export const barShapes: Record<string, PieceShape> = {
  'larks-head': { leads: [kept.larksHead.map(([x, y, z]): Point => [x * HEAD_WIDER, y * 0.9, z])], bases: [] },
  'lone-string': { leads: [kept.loneString.map(([x, y, z]): Point => [x - 1.2, y * 0.9, z])], bases: [] },
  'lone-string-left': {
    leads: [kept.loneString.map(([x, y, z]): Point => mirrored([x - 1.2, y * 0.9, z]))],
    bases: [],
  },
};

/** A side fold's two legs and the turn over the ring between them: the first leg in front, the second behind. */
export function foldOver(at: number): { readonly front: Path; readonly back: Path } {
  const y = BAR_AT;
  const [before, after] = [at - LEG / 2, at + LEG / 2];
  return {
    front: [
      [at, y - 1.35, 0],
      [at - LEG * 0.25, y - 1.1, 0.8],
      [before, y, 1.3],
      [before, y + 1.6, 0.7],
    ],
    back: [
      [at, y - 1.35, 0],
      [at + LEG * 0.25, y - 1.1, -0.8],
      [after, y, -1.3],
      [after, y + 1.6, -0.5],
    ],
  };
}

/** Where each strand of a side leaves the ring, from the left, paired in folds; `first` tells which leg it is. */
export function legsOf(
  { fit }: { readonly fit: Fit },
  side: 'left' | 'right',
): { readonly fold: number; readonly first: boolean }[] {
  const { strands } = fit[side];
  const from =
    side === 'left' ? fit.left.columns * COLUMN - 1 - strands * LEG : (fit.width - fit.right.columns) * COLUMN + 1;
  return Array.from({ length: strands }, (_, i) => ({
    fold: from + (2 * Math.floor(i / 2) + 1) * LEG,
    first: i % 2 === 0,
  }));
}

/** Where the columns on the bar are fixed: folds in pairs from the start, and the lone string where row 1 ends. */
export function onBar(
  fit: Fit,
  startsLeft: boolean,
): { readonly folds: readonly number[]; readonly lone: number | null } {
  const first = fit.left.columns + 1;
  const last = fit.width - fit.right.columns;
  const lone = fit.loneStrings > 0 ? (startsLeft ? last : first) : null;
  const folds: number[] = [];
  for (let column = lone === first ? first + 1 : first; column + 1 <= (lone === last ? last - 1 : last); column += 2)
    folds.push(column);
  return { folds, lone };
}
