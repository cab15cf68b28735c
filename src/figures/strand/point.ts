/** A place in space: x across, y down the piece, z towards the viewer; the unit is the cord's diameter d. */
export type Point = readonly [x: number, y: number, z: number];
export type Path = readonly Point[];

export const plus = (a: Point, b: Point, times = 1): Point => [
  a[0] + b[0] * times,
  a[1] + b[1] * times,
  a[2] + b[2] * times,
];
export const between = (a: Point, b: Point, t: number): Point => [
  a[0] + (b[0] - a[0]) * t,
  a[1] + (b[1] - a[1]) * t,
  a[2] + (b[2] - a[2]) * t,
];
/** Length of a step; by square root alone, so that every machine gets the same figure. */
export const distance = (a: Point, b: Point): number => {
  const x = a[0] - b[0];
  const y = a[1] - b[1];
  const z = a[2] - b[2];
  return Math.sqrt(x * x + y * y + z * z);
};

export const mirrored = (p: Point): Point => [p[0] === 0 ? 0 : -p[0], p[1], p[2]];
