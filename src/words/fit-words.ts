import type { Fit, Side } from '../solver/piece.ts';
import { count, figure } from './numbers.ts';

const sideWords = ({ strands, folds }: Side, where: string): string =>
  strands === 0 ? `none ${where}` : `${figure(strands)} ${where} (${count(folds, 'fold')})`;

/**
 * How the strings are shared, in one line: '14 on the bar (7 folds), 6 on each side (3 folds)'. Lopsided splits
 * name each side.
 */
export function fitWords({ onBar, folds, loneStrings, left, right, level, carrySide }: Fit): string {
  const bar = `${figure(onBar)} on the bar (${count(folds, 'fold')}${loneStrings > 0 ? ' and a lone string' : ''})`;
  const carries = carrySide === null ? '' : `, the carried end on the ${carrySide}`;
  if (level && left.strands === 0) return `${bar}, no side bundles`;
  if (level) return `${bar}, ${sideWords(left, 'on each side')}${carries}`;
  return `${bar}, ${sideWords(left, 'on the left')}, ${sideWords(right, 'on the right')}${carries}`;
}
