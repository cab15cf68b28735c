import type { Direction, SideName } from './piece.ts';

/** The direction of a row: row 1 begins on the start side and every row turns. */
export const directionOf = (row: number, startSide: SideName): Direction =>
  (row % 2 === 1) === (startSide === 'left') ? 'rightward' : 'leftward';

/** A side without a bundle has a single edge string. */
export const mounted = (columns: number): number => Math.max(1, columns);

/** The bundle in row r (from 1) while strings are let out, one every `step` rows (craft, section 4). */
export const openingBundle = (columns: number, row: number, step: number): number =>
  Math.max(1, mounted(columns) - Math.floor((row - 1) / step));

/** The bundle in row r (from 1) of `height` while strings are taken in, ending with `closing` (craft, section 4). */
export const closingBundleAt = (closing: number, row: number, height: number, step: number): number =>
  Math.max(1, closing - Math.floor((height - row) / step));
