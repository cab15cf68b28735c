import { bottom, hanging } from './frame.ts';
import { type Key, key } from './keys.ts';
import type { Path, Point } from './point.ts';
import { freeAfter, mirror, type Route, up } from './route.ts';
import type { FreeEnd, Tying } from './tying.ts';

/** A bar twice as thick as the cord: the craft, section 9, takes 2 mm for a bar. */
export const barRadius = 1;
export const bar = {
  id: 'bar',
  role: 'bar',
  path: [
    [-14, 0, 0],
    [14, 0, 0],
  ],
  radius: barRadius,
} as const;
const barRod = { along: 'x', at: [0, 0], radius: barRadius } as const;

const closed = 2.2;

/** Half of the fold, from the middle of its loop to one end; the other half is its mirror image. */
const half = (loopDown: number, loopFront: number, bight: number, free: number): Route => [
  [
    [0, loopDown, loopFront],
    [1, loopDown - 0.1, loopFront],
    [1.8, loopDown - 1, loopFront * 0.8],
  ],
  [
    [1.9, 2, loopFront > 0 ? -0.2 : -2],
    [1.9, 0.7, -2.1],
    [1.9, -0.7, -2.1],
  ],
  [
    [1.6, -bight, -2],
    [1.1, -bight - 1, 0.3],
    [0.8, -bight, 2.4],
  ],
  [[0.7, 0, 2.2], [0.7, 1.8, 1.7], [0.7, 3, 1], [0.7, 4.2, 0.8], [0.7, 6, 0.4], ...hanging(0.7, free)],
];

const fold = (line: Path): Path => [...mirror([...line].reverse()), ...line.slice(1)];

function foldKeys({ length }: FreeEnd): Key[] {
  const low = 4.2;
  const front = 2.6;
  const reach = length / 2;
  const whole = (bight: number): Route => half(low, front, bight, length);
  const behind = fold(freeAfter(half(low, -2, reach, length), 2, up));
  return [
    key(raised(behind), 'at-rest'),
    key(behind, 'passed-behind', 2),
    key(fold(freeAfter(whole(reach), 2, up))),
    key(fold(whole(reach).flat())),
    key(fold(whole((reach - 10) / 2).flat()), 'laid-over', 2),
    key(fold(whole(closed).flat()), 'brought-through', 2),
  ];
}

/** The fold held above the bar, before its loop goes down behind it. */
const raised = (line: Path): Path => line.map(([x, y, z]): Point => [x, y - 6.6, z]);

/** A fold fixed to the bar: its loop behind the bar, its ends over the bar and down through the loop. */
export const larksHead: Tying = {
  moving: [{ id: 'fold', role: 'base', from: 'middle' }],
  still: [bar],
  keys: foldKeys,
  drawUp: { rods: [barRod], steps: 220 },
  spread: { x: 0, z: 0 },
  frame: { left: -7, right: 7, top: -5.5, bottom },
};
