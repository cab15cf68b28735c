import { bends } from '../spline.ts';
import { between, type Path, type Point } from '../strand/point.ts';

/** Points along a smooth way with the given ones as corners of its frame, ends included; so many to each bend. */
export function smooth(way: Path, each = 6): Point[] {
  const [first] = way;
  if (!first || way.length < 3) return [...way];
  const along = bends<Point>(way, (a, b) => between(a, b, 0.5)).flatMap(([from, corner, to]) =>
    Array.from({ length: each }, (_, step): Point => {
      const t = (step + 1) / each;
      return between(between(from, corner, t), between(corner, to, t), t);
    }),
  );
  return [first, ...along];
}
