import { bottom, hanging } from './frame.ts';
import { type Key, keys } from './keys.ts';
import type { Path } from './point.ts';
import { freeAfter, type Route, towards, up } from './route.ts';
import type { FreeEnd, Tying } from './tying.ts';

/** The wire of the ring, a little thinner than the bar it grows out of. */
const wire = 0.75;
/** How far each leg of the fold hangs from the middle of it. */
const leg = 0.85;
/** How far from the middle of the wire the cord runs round it. */
const round = wire + 0.65;

/** The leg that hangs in front already, up to where it lies on the wire. */
const front: Path = [
  [-leg, bottom + 5, 0.6],
  [-leg, bottom, 0.6],
  [-leg, 5, 0.7],
  [-leg, 1.6, 1.2],
  [-leg * 0.9, 0, round],
];

/** Up in front of the wire, over it and through the ring, and down behind it. */
function loopKeys({ length }: FreeEnd): Key[] {
  const route: Route = [
    front,
    [
      [-leg * 0.5, -1, round * 0.72],
      [0, -round, 0],
    ],
    [
      [leg * 0.5, -1, -round * 0.72],
      [leg * 0.9, 0, -round],
    ],
    [[leg, 1.6, -1.2], [leg, 5, -0.7], ...hanging(leg, length).map(([x, y]): [number, number, number] => [x, y, -0.6])],
  ];
  return [
    keys([freeAfter(route, 1, up)], 'at-rest'),
    keys([freeAfter(route, 2, towards(0.5, -0.4, -0.77))], 'laid-over'),
    keys([freeAfter(route, 3, towards(0.1, 0.75, -0.65))]),
    keys([route.flat()], 'passed-behind'),
  ];
}

/** A fold of a side: through the ring beside the bar, with both ends level and no knot. */
export const sideFold: Tying = {
  moving: [{ id: 'fold', role: 'base', from: 'start' }],
  still: [
    {
      id: 'ring',
      role: 'bar',
      path: [
        [-14, 0, 0],
        [14, 0, 0],
      ],
      radius: wire,
    },
  ],
  keys: loopKeys,
  drawUp: null,
  spread: { x: 0, z: 0 },
  frame: { left: -7, right: 7, top: -5.5, bottom },
};
