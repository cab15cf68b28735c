import type { Plan } from './plan.ts';

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
  closes: ({ outline }: Plan) => outline.firstClosingRow !== null,
  'full-width': ({ outline }: Plan) => outline.firstFullRow !== null,
  gathers: ({ fit }: Plan) => fit.width >= 4,
  'middle-three': ({ finish }: Plan) => finish.middle === 3,
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
