import type { Knot, RowPlan, Run } from '../solver/piece.ts';
import type { Plan } from '../solver/plan.ts';
import { type Drawing, type Figure, step } from './drawing.ts';
import { isTurning } from './knots.ts';
import { drawStack, type StackOptions } from './stack.ts';

/** Faults that show in the rows of a piece. */
export const ROW_FAULTS = [
  'sides-unequal',
  'one-short',
  'two-let-out',
  'closing-skipped',
  'leaning',
  'colour-off',
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

interface Faulty {
  readonly rows: readonly RowPlan[];
  /** The row that has the fault. */
  readonly at: number;
  /** A row as the fault leaves it. */
  readonly made: (row: RowPlan) => RowPlan;
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
    case 'colour-off':
      return change(rows.find(({ runs }) => new Set(runs.map(({ colour }) => colour)).size > 2)?.row, slipped);
  }
}

const DEFAULT: RowFault = 'two-let-out';

/** The rows that are drawn, with the fault or as they should be; and where it is, if anywhere. */
function shownRows(plan: FaultPlan, { fault = DEFAULT, mended = false }: FaultOptions) {
  const found = faulty(plan, fault);
  const shown = found?.rows ?? plan.rows.slice(0, SHOWN);
  return { at: found?.at, rows: shown.map((row) => (found && !mended ? found.made(row) : row)) };
}

function draw(plan: FaultPlan, options: FaultOptions = {}): Drawing<FaultKey> {
  const { fault = DEFAULT, across } = options;
  const { at, rows } = shownRows(plan, options);
  return drawStack(plan, rows, { coloured: fault === 'colour-off', marked: at, across });
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
