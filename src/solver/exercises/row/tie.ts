import type { Direction, Knot } from '../../piece.ts';
import type { Pair } from '../outline.ts';
import type { RowAct, RowField, RowProblem } from './problem.ts';

/** The piece in the way of the work: its starting edge, its ending edge, and all else counted from the start. */
export interface Edges {
  readonly width: number;
  readonly start: number;
  readonly end: number;
}

/** One act as it was done, with what it did to the row; what cannot be done is told and changes nothing. */
export interface Done {
  readonly act: RowAct;
  readonly part: RowField;
  readonly possible: boolean;
  /** The strings that were tied or moved, counted from the left, both ends counting; null where there are none. */
  readonly strings: Pair | null;
  /** Base strings to the left of the leading string, before and after. */
  readonly from: number;
  readonly at: number;
  /** Base strings to the left of the place where this knot begins; where it is, for a move. */
  readonly needs: number;
  /** Strings of each edge after it, left and right. */
  readonly sizes: Pair;
}

/** A group of strings under one knot, counted from the left. */
export interface Unit {
  readonly strings: Pair;
  /** null while it is not tied. */
  readonly knot: Knot | null;
}

/** A row as far as it is tied. */
export interface TiedRow {
  readonly done: readonly Done[];
  /** From left to right, tied or not. */
  readonly units: readonly Unit[];
  readonly sizes: Pair;
  /** Base strings to the left of the leading string: where it lay before the row, and where it is now. */
  readonly begins: number;
  readonly at: number;
  readonly finished: boolean;
}

export const isMove = (act: RowAct): boolean => act === 'let-out' || act === 'take-in' || act === 'carry-behind';
export const isTurning = (knot: RowAct): boolean => knot.includes('-') && !isMove(knot);

/** From which side of its strings a knot begins, and on which it ends, seen in the direction of the row. */
const beginsNear = (knot: RowAct, rightward: boolean): boolean => knot.startsWith('forward') === rightward;
const endsNear = (knot: RowAct, rightward: boolean): boolean => beginsNear(knot, rightward) === isTurning(knot);

/** Left and right as start and end of the work, or the other way about. */
export const asWorked = ([left, right]: Pair, direction: Direction): Pair =>
  direction === 'rightward' ? [left, right] : [right, left];

const sized = (before: number, change: RowProblem['change']): number =>
  change === 'none' ? before : change === 'take-in' ? before + 1 : Math.max(1, before - 1);

/** What each edge has in this row, left and right. */
export const bundlesAfter = ({ before, change }: Pick<RowProblem, 'before' | 'change'>): Pair => [
  sized(before[0], change),
  sized(before[1], change),
];

/** The row as it lies, and as it is to be tied, from the starting edge. */
export function edgesOf(problem: RowProblem): { readonly was: Edges; readonly due: Edges } {
  const [start, end] = asWorked(problem.before, problem.direction);
  const [dueStart, dueEnd] = asWorked(bundlesAfter(problem), problem.direction);
  const { width } = problem;
  return { was: { width, start, end }, due: { width, start: dueStart, end: dueEnd } };
}

/**
 * Does these acts one after the other, right or wrong, and says after each where the leading string is. A knot goes
 * round the next strings in the direction of the row, whether the leading string can begin it or not.
 *
 * Before the first knot, moves are of the starting edge, after it of the ending edge (craft, section 5).
 */
export function tieRow(problem: RowProblem, acts: readonly RowAct[]): TiedRow {
  const { width, direction } = problem;
  const rightward = direction === 'rightward';
  let [start, end] = asWorked(problem.before, direction);
  // The row before left the leading string inside a bundle, or outside a single edge string.
  let at = start > 1 ? start : 0;
  let tied = 0;
  const fromLeft = (place: number): number => (rightward ? place : width - place);
  const strings = (from: number, to: number): Pair => (rightward ? [from + 1, to] : [width - to + 1, width - from]);
  const knots: { from: number; to: number; knot: Knot }[] = [];
  const done: Done[] = [];
  const begins = fromLeft(at);

  const move = (act: RowAct): readonly [number, number] | null => {
    if (act === 'carry-behind') {
      if (tied > 0 || at > 0 || start > 2 || start + end + (start === 1 ? 1 : 0) > width) return null;
      start = 2;
      at = 2;
      return [0, 2];
    }
    if (tied === 0) {
      const inside = at > 0;
      if (act === 'let-out') {
        if (start < 2) return null;
        start -= 1;
        if (inside) at -= 1;
        return [start, start + 1];
      }
      if (start + end >= width) return null;
      start += 1;
      if (inside) at += 1;
      return [start - 1, start];
    }
    if (act === 'let-out') {
      if (end < 2 || tied > width - end) return null;
      end -= 1;
      return [width - end - 1, width - end];
    }
    if (tied > width - end - 1) return null;
    end += 1;
    return [width - end, width - end + 1];
  };

  for (const act of acts) {
    const from = at;
    if (isMove(act)) {
      const part: RowField = tied === 0 ? 'start-move' : 'end-move';
      const moved = move(act);
      done.push({
        act,
        part,
        possible: moved !== null,
        strings: moved && strings(...moved),
        from: fromLeft(from),
        at: fromLeft(at),
        needs: fromLeft(from),
        sizes: asWorked([start, end], direction),
      });
      continue;
    }
    const part: RowField = tied === 0 ? 'start-edge' : tied >= width - end ? 'end-edge' : 'between';
    const first = tied;
    const to = tied === 0 ? start : tied < width - end ? tied + 1 : width;
    const possible = tied < width;
    const needs = !possible ? at : beginsNear(act, rightward) ? first : to;
    if (possible) {
      at = endsNear(act, rightward) ? first : to;
      knots.push({ from: first, to, knot: act as Knot });
      tied = to;
    }
    done.push({
      act,
      part,
      possible,
      strings: possible ? strings(first, to) : null,
      from: fromLeft(from),
      at: fromLeft(at),
      needs: fromLeft(needs),
      sizes: asWorked([start, end], direction),
    });
  }

  const rest: { from: number; to: number; knot: Knot | null }[] = [...knots];
  for (let place = tied; place < width; ) {
    const to = place === 0 ? start : place < width - end ? place + 1 : width;
    rest.push({ from: place, to, knot: null });
    place = to;
  }
  const units = rest.map(({ from, to, knot }): Unit => ({ strings: strings(from, to), knot }));
  if (!rightward) units.reverse();
  return {
    done,
    units,
    sizes: asWorked([start, end], direction),
    begins,
    at: fromLeft(at),
    finished: tied === width,
  };
}
