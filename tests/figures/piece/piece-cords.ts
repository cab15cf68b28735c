import { type Part, type PieceModel, partPath } from '../../../src/figures/piece/index.ts';
import type { Point } from '../../../src/figures/strand/index.ts';
import type { Cord } from '../over-under.ts';

const same = (a: Point | undefined, b: Point | undefined): boolean =>
  a !== undefined && b !== undefined && Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]) < 1e-6;

const isAside = (part: Part): boolean => part.is === 'line' && (part.what === 'float' || part.what === 'tail');

/** What of a string follows on without a break: floats and tails are told from the rest. */
function stretchesOf(parts: readonly Part[]): Part[][] {
  const stretches: Part[][] = [];
  for (const [i, part] of parts.entries()) {
    const before = parts[i - 1];
    if (!before || isAside(part) || isAside(before)) stretches.push([part]);
    else stretches.at(-1)?.push(part);
  }
  return stretches;
}

/**
 * The cords of a piece in space, with its bar and the ring's wire: both halves of a fold are one cord.
 *
 * @param aside whether floats and tails belong to the picture; from the front of a piece whose rows lie close they do not
 */
export function cordsOf(model: PieceModel, aside: boolean): Cord[] {
  const cords: { id: string; path: Point[] }[] = [];
  for (const { id, parts } of model.strings)
    for (const [i, stretch] of stretchesOf(parts).entries()) {
      if (!aside && stretch.some(isAside)) continue;
      const path = stretch.flatMap((part) => partPath(model, part));
      const last = cords.at(-1);
      if (last && same(last.path[0], path[0]) && id.startsWith('base')) {
        last.id += ` and ${id}`;
        last.path = [...last.path.reverse(), ...path.slice(1)];
      } else cords.push({ id: i === 0 ? id : `${id}, stretch ${i + 1}`, path });
    }
  if (model.laid.fromRow > 1) return cords;
  return [...cords, { id: 'bar', path: [...model.ring.bar] }, { id: 'wire', path: [...model.ring.arch] }];
}
