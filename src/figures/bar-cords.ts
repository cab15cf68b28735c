import { d } from './drawing.ts';
import { bends } from './spline.ts';

/** A stretch of cord, the corners of a smooth line: x from the middle of its place on the bar, y from the bar's, in d. */
export type Stretch = readonly (readonly [x: number, y: number])[];

/** What of a string lies behind the bar, or under other parts of itself, and what before; each in the order of painting. */
export interface Fixed {
  readonly behind: readonly Stretch[];
  readonly before: readonly Stretch[];
}

/*
 * The strand model's lark's head and lone string on a bar, as they are seen from the front. They are kept, since this
 * figure is drawn in the browser too, where the model would be too much to load; a test compares every corner.
 */

/** How far down the kept ends of a fold and of a lone string go, in d. */
export const KEPT_DOWN = { fold: 2.9, lone: 4.2 } as const;

/** How far the crown of a side fold lies above the wire's middle, in d. */
export const OVER_WIRE = 1.35;

/** Half of a side fold, from where it lies on the ring's wire down one leg; x towards that leg, y from the wire's middle. */
export const foldOver: Stretch = [
  [0, -OVER_WIRE],
  [0.25, -1.1],
  [0.49, 0],
  [0.49, 1.6],
];

/** How thick the bar and the ring's wire are, in d. */
export const BAR_THICK = 2;
export const WIRE_THICK = 1.5;

export const larksHead: Fixed = {
  behind: [
    [
      [-0.55, 2.71],
      [-0.54, 1.34],
    ],
    [
      [0.5, 1.26],
      [0.38, 1.81],
      [0.44, 2.71],
    ],
    [
      [-0.86, -1.13],
      [-0.96, -1.46],
      [-1.05, -1.18],
      [-1.3, 1.14],
      [-1.45, 1.63],
      [-1.31, 1.95],
    ],
    [
      [0.98, 2.11],
      [1.27, 1.93],
      [1.31, 1.63],
      [0.98, -1.3],
      [0.95, -1.4],
      [0.92, -1.46],
      [0.9, -1.45],
      [0.82, -1.14],
    ],
  ],
  before: [
    [
      [0.87, -1.38],
      [0.48, 1.3],
    ],
    [
      [-0.53, 1.41],
      [-0.91, -1.37],
    ],
    [
      [-1.45, 1.75],
      [-1.28, 1.98],
      [-0.78, 2.11],
      [0.68, 2.16],
      [1.15, 2.06],
      [1.25, 1.95],
    ],
  ],
};

export const loneString: Fixed = {
  behind: [
    [
      [1.12, 2.47],
      [1.37, 2.5],
      [2.24, 2.34],
      [2.58, 2.14],
      [2.73, 1.87],
    ],
    [
      [0.52, 4.06],
      [0.93, 1.82],
      [0.94, 1.68],
      [0.81, 1.46],
    ],
    [
      [2.38, -1.44],
      [2.33, -1.45],
      [2.31, -1.42],
      [2.2, -0.94],
      [2.02, 1.09],
      [1.94, 1.4],
      [1.91, 1.44],
      [1.88, 1.46],
      [1.84, 1.48],
      [1.8, 1.53],
      [1.8, 1.53],
    ],
    [
      [0.29, -1.44],
      [0.23, -1.43],
      [0.15, -1],
      [-0.05, 1.68],
      [0.03, 2.01],
      [0.39, 2.32],
    ],
  ],
  before: [
    [
      [0.12, 2.11],
      [0.51, 2.36],
      [1.38, 2.5],
    ],
    [
      [1.86, 1.47],
      [1.8, 1.77],
      [2.08, 2.55],
      [2.36, 4.09],
    ],
    [
      [2.61, 2.11],
      [2.74, 1.85],
      [2.73, 1.48],
      [2.62, 1.03],
      [2.48, -1.01],
      [2.35, -1.47],
    ],
    [
      [0.85, 1.52],
      [0.65, 1.11],
      [0.42, -0.92],
      [0.26, -1.46],
    ],
  ],
};

/** A smooth line with the given points as corners of its frame, as path data; two make a straight one, fewer none. */
export function smooth(corners: Stretch): string {
  const [first, second] = corners;
  if (!first || !second) return '';
  const along = bends(corners, ([x, y], [u, v]): Stretch[number] => [(x + u) / 2, (y + v) / 2])
    .map(([, corner, to]) => d`Q${corner[0]} ${corner[1]} ${to[0]} ${to[1]}`)
    .join('');
  return d`M${first[0]} ${first[1]}` + (along || d`L${second[0]} ${second[1]}`);
}

/**
 * Half of a fold that lies over the ring's wire: from the middle of its crown down one leg. `leg` is where that leg
 * hangs, whose own height on the wire may be another.
 */
export function overWire(weight: number, [x, y]: Stretch[number], [legX, legY]: Stretch[number]): Stretch {
  const half = (foldOver.at(-1)?.[0] ?? 1) * weight;
  return foldOver.map(([u, v], i): Stretch[number] => [
    x + ((u * weight) / half) * (legX - x),
    v * weight + (i < 2 ? y : legY),
  ]);
}
