import { distance, type Path, type Point } from './point.ts';

/** One meeting of two cords as the viewer sees it, told from the one that is followed. */
export interface Crossing {
  /** The cord that is followed. */
  readonly strand: string;
  /** How far along it, in d from its start. */
  readonly at: number;
  /** The cord it meets: itself in a self-crossing. */
  readonly meets: string;
  /** How far along that one. */
  readonly there: number;
  readonly over: boolean;
  /** Where it is seen. */
  readonly x: number;
  readonly y: number;
  /** Depth between the two centre lines, in d. */
  readonly gap: number;
  /** For a self-crossing: whether this is the earlier or the later of its two passes. */
  readonly pass?: 'earlier' | 'later';
}

export interface Drawn {
  readonly id: string;
  readonly path: Path;
}

interface Piece {
  readonly strand: number;
  readonly index: number;
  readonly a: Point;
  readonly b: Point;
  readonly walked: number;
  readonly length: number;
}

/**
 * Every crossing of a set of cords, each listed twice (once from either cord), in order along each cord.
 * Over and under is depth alone: the larger z is nearer to the viewer. Cords drawn side by side that never
 * cross in the picture have none.
 */
export function crossingsOf(strands: readonly Drawn[]): Crossing[] {
  const pieces = strands.flatMap(({ path }, strand) => piecesOf(path, strand));
  const found: Crossing[] = [];
  for (const [i, p] of pieces.entries())
    for (let j = i + 1; j < pieces.length; j++) {
      const q = pieces[j] as Piece;
      if (q.strand === p.strand && q.index - p.index < 2) continue;
      const met = meeting(p, q);
      if (!met) continue;
      const [t, u] = met;
      const zp = p.a[2] + (p.b[2] - p.a[2]) * t;
      const zq = q.a[2] + (q.b[2] - q.a[2]) * u;
      const seen = {
        x: p.a[0] + (p.b[0] - p.a[0]) * t,
        y: p.a[1] + (p.b[1] - p.a[1]) * t,
        gap: Math.abs(zp - zq),
      };
      const [first, second] = [(strands[p.strand] as Drawn).id, (strands[q.strand] as Drawn).id];
      const atP = p.walked + p.length * t;
      const atQ = q.walked + q.length * u;
      const self = p.strand === q.strand;
      found.push({
        strand: first,
        at: atP,
        meets: second,
        there: atQ,
        over: zp > zq,
        ...seen,
        ...(self ? { pass: 'earlier' as const } : {}),
      });
      found.push({
        strand: second,
        at: atQ,
        meets: first,
        there: atP,
        over: zq > zp,
        ...seen,
        ...(self ? { pass: 'later' as const } : {}),
      });
    }
  const place = new Map(strands.map(({ id }, i) => [id, i]));
  return found.sort((a, b) => (place.get(a.strand) ?? 0) - (place.get(b.strand) ?? 0) || a.at - b.at);
}

function piecesOf(path: Path, strand: number): Piece[] {
  const pieces: Piece[] = [];
  let walked = 0;
  for (let index = 1; index < path.length; index++) {
    const a = path[index - 1] as Point;
    const b = path[index] as Point;
    const length = distance(a, b);
    pieces.push({ strand, index, a, b, walked, length });
    walked += length;
  }
  return pieces;
}

/** Where two pieces cross in the picture, as parts of each (the start counts, the end does not), or null. */
function meeting(p: Piece, q: Piece): [number, number] | null {
  if (Math.max(p.a[0], p.b[0]) < Math.min(q.a[0], q.b[0]) || Math.min(p.a[0], p.b[0]) > Math.max(q.a[0], q.b[0]))
    return null;
  if (Math.max(p.a[1], p.b[1]) < Math.min(q.a[1], q.b[1]) || Math.min(p.a[1], p.b[1]) > Math.max(q.a[1], q.b[1]))
    return null;
  const px = p.b[0] - p.a[0];
  const py = p.b[1] - p.a[1];
  const qx = q.b[0] - q.a[0];
  const qy = q.b[1] - q.a[1];
  const cross = px * qy - py * qx;
  if (cross === 0) return null;
  const dx = q.a[0] - p.a[0];
  const dy = q.a[1] - p.a[1];
  const t = (dx * qy - dy * qx) / cross;
  const u = (dx * py - dy * px) / cross;
  return t >= 0 && t < 1 && u >= 0 && u < 1 ? [t, u] : null;
}
