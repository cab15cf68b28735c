import type { Picture } from './problem.ts';

/** The cells of a row (from 1), as palette indices. */
export const cellsOf = ({ rows }: Pick<Picture, 'rows'>, row: number): readonly number[] =>
  Array.from(rows[row - 1] ?? '', Number);

/** Where each stretch of a colour begins and how many cells it has, from left to right; columns from 1. */
export function stretchesOf(cells: readonly number[], colour: number): { column: number; length: number }[] {
  const found: { column: number; length: number }[] = [];
  cells.forEach((cell, index) => {
    if (cell !== colour) return;
    const last = found.at(-1);
    if (last && last.column + last.length === index + 1) last.length += 1;
    else found.push({ column: index + 1, length: 1 });
  });
  return found;
}
