import { advisePlan, pictureLost } from './advise.ts';
import type { Plan } from './plan.ts';
import { eveningOf, makingMinutes } from './thread/evening.ts';
import { RESTING_ROWS } from './thread/floats.ts';
import { LONGEST_FREE_FLOAT } from './thread/free-float.ts';

/**
 * The figures a sentence may name. Lessons ask for them by these names, so that no number is typed into
 * prose and all of them follow the learner's own ring and chart.
 */
export type FigureName =
  | 'width'
  | 'strands'
  | 'height'
  | 'capacity'
  | 'places'
  | 'idle'
  | 'spare'
  | 'half'
  | 'borrowed'
  | 'on-bar'
  | 'folds-on-bar'
  | 'lone-strings'
  | 'spare-in-all'
  | 'side-columns'
  | 'side-strands'
  | 'side-folds'
  | 'folds-in-all'
  | 'first-row-knots'
  | 'full-width-row'
  | 'full-width-rows'
  | 'last-full-row'
  | 'first-closing-row'
  | 'last-bundle'
  | 'knots-in-all'
  | 'corner-cells'
  | 'corner-cells-opening'
  | 'singles'
  | 'gathered-each-side'
  | 'left-in-middle'
  | 'picture-lost'
  | 'plain-rows-above'
  | 'plain-rows-below'
  | 'colours'
  | 'colours-in-a-row'
  | 'free-float'
  | 'rest-rows'
  | 'folds-for-eight'
  | 'minutes-practised'
  | 'minutes-steady'
  | 'minutes-first-time'
  | 'evening-minutes'
  | 'knots-in-row'
  | 'left-bundle-in-row'
  | 'right-bundle-in-row'
  | 'first-column-in-row'
  | 'last-column-in-row'
  | 'corner-cells-in-row';

/** Names that need a row to be given. */
export const ROW_FIGURES = [
  'knots-in-row',
  'left-bundle-in-row',
  'right-bundle-in-row',
  'first-column-in-row',
  'last-column-in-row',
  'corner-cells-in-row',
] as const satisfies readonly FigureName[];

const cornersOf = (row: { leftBundle: number; rightBundle: number }): number =>
  row.leftBundle - 1 + row.rightBundle - 1;

/** The rows before the first of full width; all of them where there is none. */
const openingRows = (plan: Plan): number => (plan.outline.firstFullRow ?? plan.rows.length + 1) - 1;

/** Different colours of these rows; a piece that is planned without a chart is tied in one. */
const coloursOf = (rows: Plan['rows']): number =>
  new Set(rows.flatMap(({ runs }) => runs.map(({ colour }) => colour ?? 0))).size;

/** Learners of the evening that the lesson for teachers speaks of. */
const LEARNERS = 8;

const PLAN_FIGURES: Readonly<Record<Exclude<FigureName, (typeof ROW_FIGURES)[number]>, (plan: Plan) => number | null>> =
  {
    width: ({ fit }) => fit.width,
    /** The columns, and a carried end where there is one. */
    strands: ({ fit }) => fit.onBar + fit.left.strands + fit.right.strands,
    height: ({ rows }) => rows.length,
    capacity: ({ fit }) => fit.capacity,
    places: ({ fit }) => Math.min(fit.capacity, fit.width) - fit.idle,
    idle: ({ fit }) => fit.idle,
    spare: ({ fit }) => fit.left.strands + fit.right.strands - fit.borrowed,
    half: ({ fit }) => (fit.left.strands + fit.right.strands - fit.borrowed) / 2,
    borrowed: ({ fit }) => fit.borrowed,
    'on-bar': ({ fit }) => fit.onBar,
    'folds-on-bar': ({ fit }) => fit.folds,
    'lone-strings': ({ fit }) => fit.loneStrings,
    /** With a carried end; so it is always a multiple of four. */
    'spare-in-all': ({ fit }) => fit.left.strands + fit.right.strands,
    'side-columns': ({ fit }) => Math.max(fit.left.columns, fit.right.columns),
    'side-strands': ({ fit }) => Math.max(fit.left.strands, fit.right.strands),
    'side-folds': ({ fit }) => Math.max(fit.left.folds, fit.right.folds),
    'folds-in-all': ({ fit }) => fit.folds + fit.left.folds + fit.right.folds,
    'first-row-knots': ({ fit }) => fit.firstRowKnots,
    'full-width-row': ({ outline }) => outline.firstFullRow,
    'full-width-rows': ({ outline }) => outline.fullWidthRows,
    'last-full-row': ({ outline }) =>
      outline.firstFullRow === null ? null : outline.firstFullRow + outline.fullWidthRows - 1,
    'first-closing-row': ({ outline }) => outline.firstClosingRow,
    'last-bundle': ({ rows }) => Math.max(rows.at(-1)?.leftBundle ?? 1, rows.at(-1)?.rightBundle ?? 1),
    'knots-in-all': ({ rows }) => rows.reduce((sum, row) => sum + row.knots, 0),
    'corner-cells': ({ rows }) => rows.reduce((sum, row) => sum + cornersOf(row), 0),
    'corner-cells-opening': (plan) =>
      plan.rows.slice(0, openingRows(plan)).reduce((sum, row) => sum + cornersOf(row), 0),
    singles: ({ finish }) => finish.singles,
    'gathered-each-side': ({ finish }) => finish.perSide,
    'left-in-middle': ({ finish }) => finish.middle,
    /** Picture cells among the corner cells, and the plain rows that save most of them. */
    'picture-lost': pictureLost,
    'plain-rows-above': (plan) => advisePlan(plan)?.rowsAbove ?? null,
    'plain-rows-below': (plan) => advisePlan(plan)?.rowsBelow ?? null,
    colours: ({ rows }) => coloursOf(rows),
    'colours-in-a-row': ({ rows }) => rows.reduce((most, row) => Math.max(most, coloursOf([row])), 1),
    /** Columns that a float may skip before it is caught. */
    'free-float': () => LONGEST_FREE_FLOAT,
    /** Rows after which a resting colour is ended and joined anew. */
    'rest-rows': () => RESTING_ROWS,
    /** Folds for a table of eight who all make this piece. */
    'folds-for-eight': ({ fit }) => LEARNERS * (fit.folds + fit.left.folds + fit.right.folds),
    'minutes-practised': (plan) => makingMinutes(plan, 'practised'),
    'minutes-steady': (plan) => makingMinutes(plan, 'steady'),
    'minutes-first-time': (plan) => makingMinutes(plan, 'first-time'),
    /** From the open door to the swept floor, for hands that do it for the first time. */
    'evening-minutes': (plan) => eveningOf(plan).at(-1)?.to ?? 0,
  };

/** Every name; those that need a row come last. */
export const FIGURE_NAMES = [...Object.keys(PLAN_FIGURES), ...ROW_FIGURES] as readonly FigureName[];

/**
 * A figure of a plan by its name.
 *
 * @param row from 1, for the names in `ROW_FIGURES`; a row the piece has not got gives null
 * @returns the figure, or null where this piece has none (no closing row, never full width)
 */
export function namedFigure(plan: Plan, name: FigureName, row?: number): number | null {
  if (name in PLAN_FIGURES) return PLAN_FIGURES[name as keyof typeof PLAN_FIGURES](plan);
  const found = row === undefined ? undefined : plan.rows[row - 1];
  if (!found) return null;
  switch (name as (typeof ROW_FIGURES)[number]) {
    case 'knots-in-row':
      return found.knots;
    case 'left-bundle-in-row':
      return found.leftBundle;
    case 'right-bundle-in-row':
      return found.rightBundle;
    case 'first-column-in-row':
      return found.firstColumn;
    case 'last-column-in-row':
      return found.lastColumn;
    case 'corner-cells-in-row':
      return cornersOf(found);
  }
}

/**
 * The row that a lesson speaks of: by its number from 1, or by the figure that gives it, and so many rows after.
 *
 * @returns undefined where no row was meant, or this piece has no such figure
 */
export function namedRow(plan: Plan, row: number | FigureName | undefined, after = 0): number | undefined {
  const start = typeof row === 'string' ? namedFigure(plan, row) : row;
  return start === undefined || start === null ? undefined : start + after;
}
