import type { Knot } from '../../piece.ts';
import { HABITS } from '../row/habits.ts';
import type { RowProblem } from '../row/problem.ts';
import { edgesOf } from '../row/tie.ts';
import type { ShownEdge, ShownRow, SpotFault, SpotPlace, SpotRow } from './problem.ts';

type Row = Omit<SpotRow, 'shown'>;

/** A sheet with this fault in this place. */
export interface Faulty<Shown> {
  readonly place: SpotPlace;
  readonly fault: SpotFault;
  readonly shown: Shown;
}

export const rowOf = (problem: Row): RowProblem => {
  const { width, row, direction, before, change } = problem;
  return { kind: 'row', width, row, direction, before, change };
};

/** The row as it should be. */
export function trueRow(problem: Row): ShownRow {
  const row = rowOf(problem);
  const { was, due } = edgesOf(row);
  const [startSide, endSide] =
    row.direction === 'rightward' ? (['left', 'right'] as const) : (['right', 'left'] as const);
  const plain = HABITS.ordinary(row);
  const freed = (before: number, now: number): Knot[] => Array.from({ length: Math.max(0, before - now) }, () => plain);
  return {
    start: {
      strings: due.start,
      knot: Math.max(was.start, due.start) > 1 ? HABITS.turning(row, startSide) : plain,
      freed: freed(was.start, due.start),
      side: 'inner',
    },
    between: Array.from(
      { length: row.width - Math.max(was.start, due.start) - Math.max(was.end, due.end) },
      () => plain,
    ),
    end: {
      strings: due.end,
      knot: due.end > 1 ? HABITS.turning(row, endSide) : plain,
      freed: freed(was.end, due.end),
      side: 'inner',
    },
    rests: due.end > 1 ? 'inside' : 'outside',
  };
}

const TURNED: Readonly<Record<Knot, Knot>> = {
  forward: 'backward',
  backward: 'forward',
  'forward-backward': 'backward-forward',
  'backward-forward': 'forward-backward',
};

/** Every way in which one thing can be wrong in this row. */
export function faultyRows(problem: Row): Faulty<ShownRow>[] {
  const right = trueRow(problem);
  const [plain] = [HABITS.ordinary(rowOf(problem))];
  const faulty: Faulty<ShownRow>[] = right.between.map((knot, index) => ({
    place: `between-${index + 1}`,
    fault: 'leans-wrong',
    shown: { ...right, between: right.between.with(index, TURNED[knot]) },
  }));
  for (const place of ['start', 'end'] as const) {
    const edge = right[place];
    const put = (fault: SpotFault, change: Partial<ShownEdge>): void => {
      faulty.push({ place, fault, shown: { ...right, [place]: { ...edge, ...change } } });
    };
    if (edge.strings > 1) {
      put('ordinary-on-bundle', { knot: plain });
      put('turns-wrong', { knot: TURNED[edge.knot] });
    }
    if (edge.freed.length === 0) continue;
    // Beside one single string both sides look alike.
    if (edge.strings > 1) put('out-on-wrong-side', { side: 'outer' });
    // Two are left in the bundle, so that its knot stays as it should be.
    if (edge.strings > 2) put('two-let-out', { strings: edge.strings - 1, freed: [...edge.freed, plain] });
  }
  faulty.push({
    place: 'lead',
    fault: 'lead-wrong-side',
    shown: { ...right, rests: right.rests === 'inside' ? 'outside' : 'inside' },
  });
  return faulty;
}
