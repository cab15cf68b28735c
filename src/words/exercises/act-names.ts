import type { RowAct } from '../../solver/exercises/row/problem.ts';

/** Moves and knots as they are offered. */
export const ACT_NAMES: Readonly<Record<RowAct, string>> = {
  'let-out': 'let one string out',
  'take-in': 'take one string in',
  'carry-behind': 'carry the leading string behind',
  forward: 'forward knot',
  backward: 'backward knot',
  'forward-backward': 'forward-backward knot',
  'backward-forward': 'backward-forward knot',
};
