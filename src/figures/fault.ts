import type { Fit, Knot, RowPlan, Run } from '../solver/piece.ts';
import type { Plan } from '../solver/plan.ts';
import { altered } from './altered.ts';
import { knotAt } from './cord-rows.ts';
import { type Drawing, type Figure, step } from './drawing.ts';
import { isTurning } from './knots.ts';
import { type Part, type PieceModel, type Place, ROW, topOf } from './piece/index.ts';
import { smooth } from './piece/smooth.ts';
import { drawStack, type StackOptions } from './stack.ts';
import type { Path, Point } from './strand/point.ts';

/** Faults that show in the rows of a piece. */
export const ROW_FAULTS = [
  'sides-unequal',
  'one-short',
  'two-let-out',
  'closing-skipped',
  'leaning',
  'colour-off',
  'edge-loose',
  'ran-out',
] as const;
export type RowFault = (typeof ROW_FAULTS)[number];

export interface FaultOptions extends Pick<StackOptions, 'across'> {
  /** Which; two strings let out when left out. */
  readonly fault?: RowFault | undefined;
  /** The same rows as they should be. */
  readonly mended?: boolean | undefined;
}

export type FaultKey = 'fault' | 'fault-mended' | 'fault-nowhere' | 'fault-row';

export type FaultPlan = Pick<Plan, 'fit' | 'rows' | 'outline' | 'chart'>;

/** Rows drawn: enough to see what came before and what comes of it. */
const SHOWN = 5;

/** A row with other bundles, in the knots that belong to them. */
function withBundles(row: RowPlan, width: number, leftBundle: number, rightBundle: number): RowPlan {
  const rightward = row.direction === 'rightward';
  const ordinary: Knot = rightward ? 'forward' : 'backward';
  const [firstColumn, lastColumn] = [leftBundle, width - rightBundle + 1];
  const edge = (column: number, strands: number, turning: Knot): Run => ({
    knot: strands > 1 ? turning : ordinary,
    columns: [column, column],
    count: 1,
    strands,
  });
  const left = edge(firstColumn, leftBundle, 'backward-forward');
  const right = edge(lastColumn, rightBundle, 'forward-backward');
  const [from, to] = [firstColumn + 1, lastColumn - 1];
  const middle: Run[] =
    from > to
      ? []
      : [{ knot: ordinary, columns: rightward ? [from, to] : [to, from], count: to - from + 1, strands: 1 }];
  const runs = rightward ? [left, ...middle, right] : [right, ...middle, left];
  return { ...row, leftBundle, rightBundle, firstColumn, lastColumn, knots: lastColumn - firstColumn + 1, runs };
}

/** A row whose colours have all slipped on by one knot. */
function slipped(row: RowPlan): RowPlan {
  const cells = row.runs.flatMap(({ colour = 0, count }) => Array.from({ length: count }, () => colour));
  let tied = 0;
  const runs = row.runs.flatMap((run) => {
    const way = run.columns[1] < run.columns[0] ? -1 : 1;
    return Array.from({ length: run.count }, (_, done): Run => {
      const column = run.columns[0] + done * way;
      tied += 1;
      return { ...run, columns: [column, column], count: 1, colour: cells[Math.max(0, tied - 2)] ?? 0 };
    });
  });
  return { ...row, runs };
}

const OTHER: Readonly<Record<Knot, Knot>> = {
  forward: 'backward',
  backward: 'forward',
  'forward-backward': 'backward-forward',
  'backward-forward': 'forward-backward',
};

/** A row whose leading string came to its end half way. */
function tiedHalf(row: RowPlan): RowPlan {
  const knots = Math.max(1, row.knots >> 1);
  let left = knots;
  const runs = row.runs.flatMap((run): Run[] => {
    const count = Math.min(left, run.count);
    left -= count;
    const way = run.columns[1] < run.columns[0] ? -1 : 1;
    return count > 0 ? [{ ...run, count, columns: [run.columns[0], run.columns[0] + way * (count - 1)] }] : [];
  });
  return { ...row, runs, knots };
}

/** How long a leading string that has run out still is, from its last knot, in d: aside, down, towards the viewer. */
const STUB: Path = [
  [1, 0.1, 0.8],
  [1.7, 0.7, 1],
  [2, 1.9, 1],
];

/** The end of the leading string cut short. */
const ranOut = (model: PieceModel): PieceModel => ({
  ...model,
  strings: model.strings.map((string) => ({
    ...string,
    parts: string.parts.map((part): Part => {
      const [start, next] = part.is === 'line' && part.what === 'end' ? part.path : [];
      if (part.is !== 'line' || !start || !next) return part;
      const way = next[0] < start[0] ? -1 : 1;
      const stub = STUB.map(([x, y, z]): Point => [start[0] + way * x, start[1] + y, z]);
      return { ...part, path: smooth([start, ...stub]) };
    }),
  })),
});

/**
 * A knot that was not drawn up stands so much wider and higher at its outer side, and farther out, in d; its loops gape, so
 * much for each d from their front to their back. Above and below the row it fades within some d.
 */
const LOOSE = { wider: 1.9, higher: 0.75, out: 1.9, gapes: 0.95, fades: 1.3 };

/** The last knot of a row at the right edge, not drawn up. */
const looseAt =
  (fit: Fit, row: RowPlan) =>
  (model: PieceModel): PieceModel => {
    const own = ({ knot }: Place): boolean => knot?.row === row.row && knot.column === row.lastColumn;
    const shape = model.shapes[model.places.find(own)?.shape ?? ''];
    // Only what turns round beyond the outermost string can stand out.
    const outer = Math.max(...(shape?.bases ?? []).map(([point]) => point?.[0] ?? 0), 0);
    const beside = knotAt(fit, row, row.lastColumn) + outer;
    const height = topOf(model.laid, row.row) + ROW / 2;
    const eased = (part: number): number => {
      const held = Math.min(1, Math.max(0, part));
      return held * held * (3 - 2 * held);
    };
    const turns = isTurning((row.runs.find(({ columns }) => columns.includes(row.lastColumn)) as Run).knot);
    /** Of an ordinary knot's loops the back lies above the front; the lower loop of a turning knot is the other way round. */
    const back = (y: number): number => (turns ? Math.max(-1, Math.min(1, (height - y) / 0.4)) : 1);
    const loosened = ([x, y, z]: Point): Point => {
      const near = eased((ROW / 2 + LOOSE.fades - Math.abs(y - height)) / LOOSE.fades);
      const by = near * eased((x - beside) / 0.9);
      return [
        x + by * ((x - beside) * LOOSE.wider + LOOSE.out),
        y + by * ((y - height) * LOOSE.higher + z * back(y) * LOOSE.gapes),
        z,
      ];
    };
    return altered(model, {
      line: (point, id) => (id.startsWith('leading') ? loosened(point) : point),
      knot: (place) =>
        own(place)
          ? {
              name: 'loose',
              point: ([x, y, z]) => {
                const [u, v] = loosened([x + place.x, y + place.y, z]);
                return [u - place.x, v - place.y, z];
              },
            }
          : null,
    });
  };

interface Faulty {
  readonly rows: readonly RowPlan[];
  /** The row that has the fault. */
  readonly at: number;
  /** A row as the fault leaves it. */
  readonly made: (row: RowPlan) => RowPlan;
  /** What the fault does to the cords alone. */
  readonly altered?: (model: PieceModel) => PieceModel;
}

/** The rows to show, and how they look with the fault; null where this piece has no room for it. */
function faulty({ fit, rows, outline }: FaultPlan, fault: RowFault): Faulty | null {
  const { width } = fit;
  const [first, second, third] = rows;
  const change = (at: number | undefined, made: Faulty['made'], on = false): Faulty | null => {
    if (at === undefined || at > rows.length) return null;
    const from = Math.max(0, Math.min(at - 3, rows.length - SHOWN));
    const shown = rows.slice(from, from + SHOWN);
    return { rows: shown, at, made: (row) => (row.row === at || (on && row.row > at) ? made(row) : row) };
  };
  switch (fault) {
    case 'two-let-out':
      return first && second && second.leftBundle > 2 && second.leftBundle < first.leftBundle
        ? change(2, (row) => withBundles(row, width, row.leftBundle - 1, row.rightBundle))
        : null;
    case 'sides-unequal':
      // The side that missed its turn stays behind from then on.
      return second && third && third.rightBundle < second.rightBundle
        ? change(3, (row) => withBundles(row, width, row.leftBundle, (rows[row.row - 2] ?? row).rightBundle), true)
        : null;
    case 'one-short':
      return second && second.runs.length > 2
        ? change(2, (row) => ({ ...row, runs: row.runs.slice(0, -1), knots: row.knots - 1 }))
        : null;
    case 'closing-skipped': {
      const before = rows[(outline.firstClosingRow ?? 0) - 1];
      const row = rows[outline.firstClosingRow ?? -1];
      return before && row && row.leftBundle > before.leftBundle && row.rightBundle > before.rightBundle
        ? change(row.row, (own) => withBundles(own, width, before.leftBundle, before.rightBundle))
        : null;
    }
    case 'leaning':
      return change(Math.min(3, rows.length), (row) => ({
        ...row,
        runs: row.runs.map((run) => (isTurning(run.knot) ? run : { ...run, knot: OTHER[run.knot] })),
      }));
    case 'edge-loose': {
      const row = rows[Math.min(2, rows.length - 1)];
      return row ? { ...(change(row.row, (same) => same) as Faulty), altered: looseAt(fit, row) } : null;
    }
    case 'ran-out': {
      // What would follow the row is not tied yet.
      const found = change(Math.min(3, rows.length), tiedHalf);
      return found && { ...found, rows: found.rows.filter(({ row }) => row <= found.at), altered: ranOut };
    }
    case 'colour-off':
      return change(rows.find(({ runs }) => new Set(runs.map(({ colour }) => colour)).size > 2)?.row, slipped);
  }
}

const DEFAULT: RowFault = 'two-let-out';

/** The rows that are drawn, with the fault or as they should be; and where it is, if anywhere. */
function shownRows(plan: FaultPlan, { fault = DEFAULT, mended = false }: FaultOptions) {
  const found = faulty(plan, fault);
  const shown = found?.rows ?? plan.rows.slice(0, SHOWN);
  const wrong = found && !mended;
  return {
    at: found?.at,
    rows: shown.map((row) => (wrong ? found.made(row) : row)),
    altered: wrong ? found.altered : undefined,
  };
}

function draw(plan: FaultPlan, options: FaultOptions = {}): Drawing<FaultKey> {
  const { fault = DEFAULT, across } = options;
  const { at, rows, altered } = shownRows(plan, options);
  return drawStack(plan, rows, { coloured: fault === 'colour-off', marked: at, across, altered });
}

function describe(plan: FaultPlan, options: FaultOptions = {}) {
  const { fault = DEFAULT, mended = false } = options;
  const { at, rows } = shownRows(plan, options);
  return [
    at === undefined
      ? step<FaultKey>('fault-nowhere')
      : step<FaultKey>(mended ? 'fault-mended' : 'fault', { fault, row: at }),
    ...rows.map(({ row, knots, leftBundle, rightBundle }) =>
      step<FaultKey>('fault-row', { row, knots, left: leftBundle, right: rightBundle }),
    ),
  ];
}

/** A few rows with a fault in one of them, or the same rows as they should be. */
export const fault: Figure<'fault', FaultOptions, FaultKey, FaultPlan> = { name: 'fault', draw, describe };
