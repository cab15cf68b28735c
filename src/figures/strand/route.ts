import { distance, mirrored, type Path, type Point } from './point.ts';

/** A control line in its parts, in order along the cord. */
export type Route = readonly Path[];

export const mirror = (path: Path): Point[] => path.map(mirrored);

/** A direction of length 1. */
export const towards = (x: number, y: number, z: number): Point => {
  const size = distance([x, y, z], [0, 0, 0]);
  return [x / size, y / size, z / size];
};

/** The two ways an end hangs or is held out of the way along the piece. */
export const down: Point = [0, 1, 0];
export const up: Point = [0, -1, 0];

/**
 * The route with all that follows its first `parts` parts laid out straight, as a free end held taut in
 * `direction`: each point as far along it as it is along the route.
 */
export function freeAfter(route: Route, parts: number, direction: Point): Point[] {
  const line = route.flat();
  const from = route.slice(0, parts).flat().length;
  const pivot = line[from - 1] as Point;
  let along = 0;
  return line.map((p, i) => {
    if (i < from) return p;
    along += distance(p, line[i - 1] as Point);
    return [pivot[0] + direction[0] * along, pivot[1] + direction[1] * along, pivot[2] + direction[2] * along];
  });
}
