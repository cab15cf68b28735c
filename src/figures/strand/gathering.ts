import { hanging } from './frame.ts';
import { type Arrival, lower, twiceKeys } from './hitches.ts';
import type { Key } from './keys.ts';
import type { Path } from './point.ts';
import { baseRod, flat, round } from './row-knot.ts';
import type { FreeEnd, Tying } from './tying.ts';

/** A forward knot tied with a single string that hangs beside the bundle and is taken into it. */
function gatheringKeys(end: FreeEnd): Key[] {
  const y = lower;
  const beside: Arrival = {
    held: [
      [-5.4, -9, 0],
      [-5.4, -6, 0],
      [-5.4, -3.2, 0],
    ],
    on: [
      [-5.3, -1, 0],
      [-4.4, -0.1, 0],
    ],
  };
  const joins: Path = [
    [-1.4, y + 1.4, 1.5],
    [-0.5, y + 1.6, 1.3],
    [0.7, y + 1.7, 1.3],
    [1.6, y + 2.4, 0.8],
    [1.7, y + 3.6, 0.1],
    ...hanging(1.3, end.again),
  ];
  return twiceKeys(end, joins, beside);
}

/** Finishing: the next single string ties an ordinary knot round the bundle, which takes it in. */
export const gathering = (strands: number): Tying => ({
  ...round(gatheringKeys, 0, 0)(strands),
  moving: [{ id: 'single', role: 'tying', from: 'start' }],
  drawUp: { rods: [baseRod], steps: 170, snug: flat, pushedUpFrom: 1 },
});
