import { fitProblem } from './fit-check.ts';
import { outlineProblem } from './outline.ts';
import type { Bundles, Fit, SideName } from './piece.ts';
import { choiceProblem, type Refusal, refuse, type Step } from './problem.ts';
import { SIDES } from './ranges.ts';

export type FinishStepKey =
  | 'lay-leading-strings'
  | 'gather'
  | 'lay-middle'
  | 'pass-behind'
  | 'square-knot'
  | 'repeat-square-knot'
  | 'tie-together'
  | 'trim'
  | 'patch';
export type FinishStep = Step<FinishStepKey>;

export interface FinishInput {
  readonly fit: Fit;
  readonly bundles: Bundles;
  readonly startSide?: SideName | undefined;
}

export interface Finish {
  readonly ok: true;
  /** Single strings between the two bundles of the last row. */
  readonly singles: number;
  /** Strings each side gathers. */
  readonly perSide: number;
  /** Strings left in the middle: 2, or 3 of which one is laid by unknotted. Below four columns, what there is. */
  readonly middle: number;
  readonly steps: readonly FinishStep[];
}

/**
 * Gathering and finishing, after the last row (craft, section 8). Columns count from 1, from the left.
 *
 * @returns how many singles each side takes in, how many stay in the middle, and the steps in order; or a
 *   problem when the outline breaks a rule of the craft, section 4.
 */
export function finishSteps(input: FinishInput): Finish | Refusal {
  const { fit, bundles, startSide = 'left' } = input ?? {};
  const bad = fitProblem(fit) ?? choiceProblem('startSide', startSide, SIDES) ?? outlineProblem(fit, bundles);
  if (bad) return refuse(bad);
  const left = bundles.left.at(-1) ?? 1;
  const right = bundles.right.at(-1) ?? 1;
  const singles = fit.width - left - right;
  const steps: FinishStep[] = [];
  const step = (key: FinishStepKey, values: FinishStep['values'] = {}) => steps.push({ key, values });

  step('lay-leading-strings', { left, right });
  if (fit.width < 4) {
    // Too few strings for a core and two that tie round it.
    step('tie-together', { strings: fit.width });
    step('trim');
    step('patch');
    return { ok: true, singles, perSide: 0, middle: singles, steps };
  }
  const middle = singles % 2 === 0 ? 2 : 3;
  const perSide = (singles - middle) / 2;
  if (perSide > 0) {
    step('gather', {
      side: 'left',
      count: perSide,
      from: left + 1,
      to: left + perSide,
      bundle: left,
      becomes: left + perSide,
    });
    const innermost = fit.width - right;
    step('gather', {
      side: 'right',
      count: perSide,
      from: innermost,
      to: innermost - perSide + 1,
      bundle: right,
      becomes: right + perSide,
    });
  }
  const first = left + perSide + 1;
  if (middle === 3) step('lay-middle', { column: first + 1, side: startSide });
  step('pass-behind', { side: 'left', column: first });
  step('pass-behind', { side: 'right', column: first + middle - 1 });
  step('square-knot', { half: 'first' });
  step('square-knot', { half: 'second' });
  step('repeat-square-knot', { least: 2, most: 3 });
  step('trim');
  step('patch');
  return { ok: true, singles, perSide, middle, steps };
}
