import { outlineOf } from '../solver/outline.ts';
import type { Plan } from '../solver/plan.ts';
import { planRows } from '../solver/rows.ts';
import { silhouette as nearest, type WantedShape, waistShape, wantedShape } from '../solver/silhouette.ts';
import { type Drawing, type Figure, path, type Shape, step } from './drawing.ts';
import { type OutlineKey, type OutlinePlan, outline, outlineFrame } from './outline.ts';
import { stepped } from './stepped.ts';

export interface SilhouetteOptions {
  /** What is wished for: the shape that the chart’s blank cells leave (default), or a waist that steps in at once. */
  readonly wish?: 'chart' | 'waist' | undefined;
  readonly across?: number | undefined;
}

export type SilhouetteKey = 'silhouette' | 'silhouette-same' | 'silhouette-differs' | 'silhouette-bundle' | OutlineKey;

export type SilhouettePlan = OutlinePlan & Pick<Plan, 'startSide'>;

/** The wish, and the piece that comes nearest to it; the plan’s own outline where its rows are too few for any. */
function shaped(plan: SilhouettePlan, { wish = 'chart' }: SilhouetteOptions) {
  const { fit, rows, chart, startSide } = plan;
  const { width, maxBundle } = fit;
  const wanted: WantedShape =
    wish === 'waist' || !chart ? waistShape(width, rows.length, maxBundle) : wantedShape(chart);
  const found = nearest({ fit, wanted, maxBundle });
  const planned = found.ok ? planRows({ fit, bundles: found, startSide }) : null;
  // A made-up wish is drawn on plain paper: the picture was not drawn for it.
  const paper = { ...plan, chart: wish === 'waist' ? null : chart };
  return found.ok && Array.isArray(planned)
    ? { wanted, differing: found.differing, plan: { ...paper, rows: planned, outline: outlineOf(found) } }
    : { wanted, differing: null, plan: paper };
}

function draw(plan: SilhouettePlan, options: SilhouetteOptions = {}): Drawing<SilhouetteKey> {
  const { wanted, plan: worked } = shaped(plan, options);
  const { across } = options;
  const drawing = outline.draw(worked, { show: 'bundles', across });
  const { x, y } = outlineFrame(worked, { across });
  const rows = wanted.first.map((firstColumn, index) => ({
    row: index + 1,
    firstColumn,
    lastColumn: wanted.last[index] ?? firstColumn,
  }));
  const wish: Shape<SilhouetteKey> = path('wish', stepped(rows, x, y));
  return { ...drawing, shapes: [...drawing.shapes, wish] };
}

function describe(plan: SilhouettePlan, options: SilhouetteOptions = {}) {
  const { differing, plan: worked } = shaped(plan, options);
  const { rows } = worked;
  const most = rows.reduce((best, row) =>
    row.leftBundle + row.rightBundle > best.leftBundle + best.rightBundle ? row : best,
  );
  return [
    step<SilhouetteKey>('silhouette', { width: plan.fit.width, height: rows.length, cells: differing ?? 1 }),
    differing === null || differing > 0
      ? step<SilhouetteKey>('silhouette-differs', { cells: differing ?? 0 })
      : step<SilhouetteKey>('silhouette-same'),
    step<SilhouetteKey>('silhouette-bundle', {
      row: most.row,
      left: most.leftBundle,
      right: most.rightBundle,
      knots: most.knots,
    }),
  ];
}

/** A shape that is wished for as a dashed line, and round it the outline that can be tied, with its bundles. */
export const silhouette: Figure<'silhouette', SilhouetteOptions, SilhouetteKey, SilhouettePlan> = {
  name: 'silhouette',
  draw,
  describe,
};
