import type { RowProblem, RowResult } from '../../solver/exercises/row/problem.ts';
import { ordinal } from '../numbers.ts';
import { ACT_NAMES } from './act-names.ts';

const beginsOn = (act: string): string => (act.startsWith('forward') ? 'left' : 'right');

/** Why the first act that does not follow can’t stand there; nothing where every act follows. */
export function rowFaultWords({ change }: RowProblem, { at, act, fault }: RowResult): string {
  if (!at || !act || !fault) return '';
  const name = ACT_NAMES[act];
  const moves = {
    none: '',
    'let-out': ' This row lets one string out on each side.',
    'take-in': ' This row takes one string in on each side.',
  }[change];
  const why = {
    'move-missing': `Something has to move before this ${name}.${moves}`,
    'move-not-due': `There is no such move to make at this edge.${moves || ' In this row the edges stay as they are.'}`,
    'nothing-to-move': 'There is nothing here that could move like that.',
    'plain-on-bundle': `A ${name} carries the leading string to the other side. Round a bundle it has to come back to the inner side.`,
    'lead-elsewhere': `A ${name} begins with the leading string on the ${beginsOn(act)} of the string it goes round. The leading string lies on the other side.`,
    'leads-astray': `A ${name} can begin there. But it leaves the leading string where the next string, or the next row, can’t use it.`,
    'nothing-left': 'Every base string has its knot already.',
  }[fault];
  return `The ${ordinal(at)} thing you did is the first that does not follow: ${name}. ${why}`;
}
