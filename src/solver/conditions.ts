import { pictureLost } from './advise.ts';
import type { Plan } from './plan.ts';

/** From the first row that takes a string in to the last; 0 where none does. */
const closingRows = ({ outline, rows }: Plan): number =>
  outline.firstClosingRow === null ? 0 : rows.length - outline.firstClosingRow + 1;

const lastBundle = ({ rows }: Plan): number => Math.max(rows.at(-1)?.leftBundle ?? 1, rows.at(-1)?.rightBundle ?? 1);

/**
 * What can be so of one piece and not of another. Lessons show a passage only where its condition holds, so
 * that prose stays true when a learner reads it with their own figures.
 */
const CONDITIONS = {
  straight: ({ fit }: Plan) => fit.left.columns + fit.right.columns === 0,
  bundles: ({ fit }: Plan) => fit.left.columns + fit.right.columns > 0,
  borrows: ({ fit }: Plan) => fit.borrowed > 0,
  'half-even': ({ fit }: Plan) => fit.borrowed === 0 && fit.left.columns > 0,
  idle: ({ fit }: Plan) => fit.idle > 0,
  'even-width': ({ fit }: Plan) => fit.width % 2 === 0,
  'odd-width': ({ fit }: Plan) => fit.width % 2 === 1,
  'lone-string': ({ fit }: Plan) => fit.loneStrings > 0,
  'carried-end': ({ fit }: Plan) => fit.carrySide !== null,
  /** The carried end rides with a single column, which is an ordinary edge whatever its strands. */
  'carried-alone': ({ fit }: Plan) => fit.carrySide !== null && fit[fit.carrySide].columns === 1,
  /** Row 2 lets one string out on each side. */
  'opens-each-row': ({ rows: [first, second] }: Plan) =>
    first !== undefined &&
    second !== undefined &&
    second.leftBundle < first.leftBundle &&
    second.rightBundle < first.rightBundle,
  /** More than one row from one string let out to the next. */
  'opens-slowly': ({ fit, outline }: Plan) => (outline.firstFullRow ?? 0) > fit.rowsToFullWidth,
  closes: ({ outline }: Plan) => outline.firstClosingRow !== null,
  /** One string taken in on each side in every row from the first closing row to the last. */
  'closes-each-row': (plan: Plan) => closingRows(plan) > 0 && closingRows(plan) === lastBundle(plan) - 1,
  /** More than one row from one string taken in to the next. */
  'closes-slowly': (plan: Plan) => closingRows(plan) > lastBundle(plan) - 1,
  'several-closing-rows': (plan: Plan) => closingRows(plan) > 1,
  /** The first closing row begins at a single edge string, so the leading string is carried behind two. */
  'carries-behind': ({ outline, rows }: Plan) => rows[(outline.firstClosingRow ?? 0) - 1]?.startMove === 'carry-behind',
  /** Both edges of the last row are alike. */
  'ends-alike': ({ rows }: Plan) => rows.at(-1)?.leftBundle === rows.at(-1)?.rightBundle,
  'full-width': ({ outline }: Plan) => outline.firstFullRow !== null,
  /** More than one colour is tied, so that colours change and rest. */
  coloured: ({ rows }: Plan) => new Set(rows.flatMap(({ runs }) => runs.map(({ colour }) => colour ?? 0))).size > 1,
  /** The larger bundle of row 1 and the larger one of the last row differ. */
  'unequal-ends': (plan: Plan) =>
    Math.max(plan.rows[0]?.leftBundle ?? 1, plan.rows[0]?.rightBundle ?? 1) !== lastBundle(plan),
  /** A row ties several strings as one, so that cells beside its knot stay empty. */
  corners: ({ rows }: Plan) => rows.some(({ leftBundle, rightBundle }) => leftBundle > 1 || rightBundle > 1),
  gathers: ({ fit }: Plan) => fit.width >= 4,
  /** More single strings than the two that tie, and the one that may lie between them. */
  'strings-to-gather': ({ finish }: Plan) => finish.perSide > 0,
  'middle-three': ({ finish }: Plan) => finish.middle === 3,
  'odd-capacity': ({ fit }: Plan) => fit.capacity % 2 === 1,
  /** Another way to hang the piece that can be made: lopsided, or the other one with an odd string. */
  lopsided: ({ alternatives }: Plan) => alternatives.some(({ level }) => !level),
  'picture-whole': (plan: Plan) => pictureLost(plan) === 0,
  'picture-cut': (plan: Plan) => (pictureLost(plan) ?? 0) > 0,
  'starts-left': ({ startSide }: Plan) => startSide === 'left',
  'starts-right': ({ startSide }: Plan) => startSide === 'right',
} as const satisfies Readonly<Record<string, (plan: Plan) => boolean>>;

export type Condition = keyof typeof CONDITIONS;

export const CONDITION_NAMES = Object.keys(CONDITIONS) as readonly Condition[];

/** Whether a condition holds of a plan; a name with `!` before it asks whether it doesn't. */
export const holds = (plan: Plan, condition: Condition | `!${Condition}`): boolean =>
  condition.startsWith('!')
    ? !CONDITIONS[condition.slice(1) as Condition](plan)
    : CONDITIONS[condition as Condition](plan);
