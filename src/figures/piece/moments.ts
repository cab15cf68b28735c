import type { Plan } from '../../solver/plan.ts';
import type { Ending, PieceInput } from './model-types.ts';

/** The moments of the work at which a whole piece is worth looking at, in their order. */
export const MOMENTS = [
  'mounted',
  'first-row',
  'full-width',
  'before-closing',
  'last-row',
  'gathered',
  'finished',
] as const;
export type Moment = (typeof MOMENTS)[number];

/** How far a piece is worked: the last row that is begun, its tied knots (all when left out), and its end. */
export interface Standing {
  readonly upToRow: number;
  readonly upToKnot?: number | undefined;
  readonly ending: Ending;
}

export type MomentPlan = Pick<Plan, 'fit' | 'outline' | 'rows' | 'chart' | 'finish'>;

/** The row where a piece is widest for the first time. */
const widestRow = ({ rows, outline }: MomentPlan): number => {
  const most = Math.max(...rows.map(({ knots }) => knots));
  return outline.firstFullRow ?? rows.find(({ knots }) => knots === most)?.row ?? rows.length;
};

/** The last row at that width before strings are taken in; the last of all where none is. */
function openRow(plan: MomentPlan): number {
  const { rows } = plan;
  const widest = widestRow(plan);
  const closing = rows.find((row, i) => row.row > widest && row.knots < (rows[i - 1]?.knots ?? 0));
  return (closing?.row ?? rows.length + 1) - 1;
}

/** How far a piece is worked at a moment; a moment that it has not got is taken as the nearest it has. */
export function standingAt(plan: MomentPlan, moment: Moment): Standing {
  const height = plan.rows.length;
  const at = (upToRow: number): Standing => ({ upToRow: Math.min(height, upToRow), ending: 'hanging' });
  switch (moment) {
    case 'mounted':
      return at(0);
    case 'first-row':
      return at(1);
    case 'full-width':
      return at(widestRow(plan));
    case 'before-closing':
      return at(openRow(plan));
    case 'last-row':
      return at(height);
    case 'gathered':
      return plan.finish.perSide > 0 ? { upToRow: height, ending: 'gathered' } : at(height);
    case 'finished':
      return { upToRow: height, ending: 'finished' };
  }
}

const alike = (one: Standing, other: Standing): boolean => one.upToRow === other.upToRow && one.ending === other.ending;

/** The moments that a piece has, each unlike the one before. Of two that are the same the earlier stands. */
export function momentsOf(plan: MomentPlan): Moment[] {
  const kept: Moment[] = [];
  for (const moment of MOMENTS) {
    const last = kept.at(-1);
    if (last && alike(standingAt(plan, last), standingAt(plan, moment))) continue;
    kept.push(moment);
  }
  return kept;
}

/** What `pieceModel` takes of a plan, worked so far. */
export const piecesOf = ({ fit, outline, rows, chart }: MomentPlan, standing: Partial<Standing> = {}): PieceInput => ({
  fit,
  bundles: outline,
  rows,
  chart,
  ...standing,
});
