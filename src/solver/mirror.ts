import type { Chart } from './chart.ts';
import { type Bundles, type Fit, type Knot, opposite, type Piece, type RowPlan, type Run } from './piece.ts';

const KNOTS: Readonly<Record<Knot, Knot>> = {
  forward: 'backward',
  backward: 'forward',
  'forward-backward': 'backward-forward',
  'backward-forward': 'forward-backward',
};

/** The knot as a mirror shows it. */
export const mirrorKnot = (knot: Knot): Knot => KNOTS[knot];

export const mirrorFit = (fit: Fit): Fit => ({
  ...fit,
  left: fit.right,
  right: fit.left,
  carrySide: fit.carrySide && opposite(fit.carrySide),
});

export const mirrorBundles = ({ left, right }: Bundles): Bundles => ({ left: right, right: left });

export function mirrorChart(chart: Chart): Chart {
  const { width, height } = chart;
  const cells = new Uint8Array(chart.cells.length);
  for (let row = 0; row < height; row += 1)
    for (let column = 0; column < width; column += 1)
      cells[row * width + column] = chart.cells[row * width + width - 1 - column] ?? 0;
  return { ...chart, cells };
}

const mirrorRun = (run: Run, width: number): Run => ({
  ...run,
  knot: KNOTS[run.knot],
  columns: [width + 1 - run.columns[0], width + 1 - run.columns[1]],
});

const mirrorRow = (row: RowPlan, width: number): RowPlan => ({
  ...row,
  direction: row.direction === 'rightward' ? 'leftward' : 'rightward',
  leftBundle: row.rightBundle,
  rightBundle: row.leftBundle,
  firstColumn: width + 1 - row.lastColumn,
  lastColumn: width + 1 - row.firstColumn,
  runs: row.runs.map((run) => mirrorRun(run, width)),
});

/**
 * Mirrors chart, sides and start together; planning the mirrored piece gives the mirrored plan.
 * Bundles are swapped; so is the side a carried end rides on.
 */
export function mirrorPiece<P extends Piece>(piece: P): P {
  const { fit, bundles, startSide, chart, rows } = piece;
  return {
    ...piece,
    fit: mirrorFit(fit),
    bundles: mirrorBundles(bundles),
    startSide: opposite(startSide),
    ...(chart ? { chart: mirrorChart(chart) } : {}),
    ...(rows ? { rows: rows.map((row) => mirrorRow(row, fit.width)) } : {}),
  };
}
