import { wholeDown } from './figure.ts';

/** Columns that a bar takes if each is `pitch` wide, both in mm; what is left over is no column. */
export const columnsOn = (barWidth: number, pitch: number): number => wholeDown(barWidth / pitch);

/** mm that each takes, where `count` of them take `size` mm side by side. */
export const eachOf = (count: number, size: number): number => size / count;
