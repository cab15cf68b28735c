import { type Part, type PieceModel, type PieceShape, type Place, partPath } from './piece/index.ts';
import { between, distance, type Path, type Point } from './strand/point.ts';

/** How work that went wrong differs from the work as it should be. Lengths in d, as in the model. */
export interface Alteration {
  /** Where a place of a string's own lines comes to lie; `id` is the string's. */
  readonly line: (point: Point, id: string) => Point;
  /** Where a knot, or what is fixed to the bar, comes to stand. */
  readonly place?: (place: Place) => Pick<Place, 'x' | 'y'>;
  /**
   * How a knot's cords are led within it, from its own middle, and a name for that; the same name stands for the same
   * way. What should lie over has to stay over: the map may stretch and shift, but not fold.
   */
  readonly knot?: (place: Place) => { readonly name: string; readonly point: (point: Point) => Point } | null;
}

/** How much of its height a row holds its strings straight, to both sides of its middle. */
const HELD = 0.38;

/**
 * What is so for a whole row at each height between rows: a string is held straight in its row and goes over to the next
 * between them.
 *
 * @param at the height in rows from the middle of a row
 * @param value what is so for a row, by its number
 */
export function fromRowToRow(at: number, value: (row: number) => number): number {
  const row = Math.floor(at);
  const part = Math.min(1, Math.max(0, (at - row - HELD) / (1 - 2 * HELD)));
  return value(row) * (1 - part) + value(row + 1) * part;
}

const apart = (a: Point, b: Point): boolean => Math.abs(a[0] - b[0]) + Math.abs(a[1] - b[1]) > 0.02;

/** A line in pieces of 1 d at most, so that it can bend where it ran straight. */
const divided = (path: Path): Path =>
  path.flatMap((point, i): Path => {
    const before = path[i - 1];
    const parts = before ? Math.max(1, Math.ceil(distance(before, point))) : 1;
    return before ? Array.from({ length: parts }, (_, k) => between(before, point, (k + 1) / parts)) : [point];
  });

/** The line without the places at which it runs straight on in space. */
function bending(path: Path): Path {
  const kept: Point[] = [];
  for (const [i, point] of path.entries()) {
    const [before, next] = [kept.at(-1), path[i + 1]];
    const on = before && next && distance(before, point) + distance(point, next) - distance(before, next) < 1e-4;
    if (!on) kept.push(point);
  }
  return kept;
}

/**
 * The same cords led otherwise, for a fault that is in the cords and not in the plan. Strings stay whole: where a knot
 * has moved away from what leads to it, the string goes there.
 */
export function altered(model: PieceModel, { line, place, knot }: Alteration): PieceModel {
  const shapes: Record<string, PieceShape> = {};
  const places = model.places.map((one): Place => {
    const own = knot?.(one);
    const shape = own ? `${one.shape} ${own.name}` : one.shape;
    const whole = model.shapes[one.shape];
    if (whole && !shapes[shape])
      shapes[shape] = own
        ? {
            ...whole,
            leads: whole.leads.map((lead) => lead.map(own.point)),
            bases: whole.bases.map((base) => base.map(own.point)),
          }
        : whole;
    return { ...one, ...place?.(one), shape };
  });
  const put = { shapes, places };
  const strings = model.strings.map((string) => {
    const led = string.parts.map(
      (part): Part =>
        part.is === 'line'
          ? { ...part, path: bending(divided(part.path).map((point) => line(point, string.id))) }
          : part,
    );
    const parts = led.flatMap((part, i): Part[] => {
      const [before, after] = [led[i - 1], led[i + 1]];
      if (part.is === 'line') {
        const start = before?.is === 'shape' ? partPath(put, before).at(-1) : part.path[0];
        const end = after?.is === 'shape' ? partPath(put, after)[0] : part.path.at(-1);
        const path: Path = [...(start ? [start] : []), ...part.path.slice(1, -1), ...(end ? [end] : [])];
        return [{ ...part, path }];
      }
      const [exit, entry] = [partPath(put, part).at(-1), after?.is === 'shape' ? partPath(put, after)[0] : undefined];
      return exit && entry && apart(exit, entry) ? [part, { is: 'line', what: 'link', path: [exit, entry] }] : [part];
    });
    return { ...string, parts };
  });
  return { ...model, shapes, places, strings };
}
