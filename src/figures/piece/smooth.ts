import { bends } from '../spline.ts';
import { between, type Path, type Point } from '../strand/point.ts';

/** Points along a smooth way with the given ones as corners of its frame, ends included. */
export function smooth(way: Path): Point[] {
  const [first] = way;
  if (!first || way.length < 3) return [...way];
  const along = bends<Point>(way, (a, b) => between(a, b, 0.5)).flatMap(([from, corner, to]) =>
    [1, 2, 3, 4, 5, 6].map((step): Point => {
      const t = step / 6;
      return between(between(from, corner, t), between(corner, to, t), t);
    }),
  );
  return [first, ...along];
}
