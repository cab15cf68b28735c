import type { Placement } from '../solver/advise.ts';
import type { Plan } from '../solver/plan.ts';
import { count, list } from './numbers.ts';

const cells = (lost: number): string => `${count(lost, 'cell')} of the picture`;

/** What becomes of a picture as it is placed, and what that costs. */
export function placedWords(lost: number, { fit, rows }: Pick<Plan, 'fit' | 'rows'>): string {
  const knots = rows.reduce((sum, row) => sum + row.knots, 0);
  const size = `The piece is ${count(fit.width, 'column')} wide and ${count(rows.length, 'row')} high, with ${count(knots, 'knot')}.`;
  return `${lost === 0 ? 'Nothing of the picture is lost.' : `${cells(lost)} ${lost === 1 ? 'is' : 'are'} lost.`} ${size}`;
}

/** How plain rows save a picture whose corners are cut off; empty where they don't. */
export function adviceWords(lost: number, advice: Placement): string {
  if (advice.lost >= lost) return '';
  const added = [
    ...(advice.rowsAbove > 0 ? [`${count(advice.rowsAbove, 'plain row')} above`] : []),
    ...(advice.rowsBelow > 0 ? [`${count(advice.rowsBelow, 'plain row')} below`] : []),
  ];
  const saved =
    advice.lost === 0
      ? 'nothing of the picture is lost'
      : `only ${cells(advice.lost)} ${advice.lost === 1 ? 'is' : 'are'} lost`;
  return `Add ${list(added)} the picture, and ${saved}. The piece then has ${count(advice.rows, 'row')} and ${count(advice.knots, 'knot')}.`;
}
