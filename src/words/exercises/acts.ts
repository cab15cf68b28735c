import type { RowProblem } from '../../solver/exercises/row/problem.ts';
import { asWorked, type Done, isMove } from '../../solver/exercises/row/tie.ts';
import { capital, count, figure } from '../numbers.ts';
import { ACT_NAMES } from './act-names.ts';

/** 'string 4', 'strings 1 to 3'. */
const stringsWords = ([from, to]: readonly [number, number]): string =>
  from === to ? `string ${figure(from)}` : `strings ${figure(from)} ${to - from === 1 ? 'and' : 'to'} ${figure(to)}`;

/** Where the leading string is, by the base strings to its left. */
export const leadWords = (at: number, width: number): string =>
  at <= 0
    ? 'left of all strings'
    : at >= width
      ? 'right of all strings'
      : `between strings ${figure(at)} and ${figure(at + 1)}`;

const sideOf = ({ direction }: RowProblem, part: Done['part']): 'left' | 'right' =>
  (direction === 'rightward') === part.startsWith('start') ? 'left' : 'right';

function moveWords(problem: RowProblem, { act, part, possible, strings, at, from, sizes }: Done): string {
  const side = sideOf(problem, part);
  if (!possible || !strings)
    return {
      'let-out': `Nothing moves: there is no string to let out on the ${side} now`,
      'take-in': `Nothing moves: there is no string to take in on the ${side} now`,
      'carry-behind': 'Nothing moves: the leading string can’t be carried behind an edge here',
    }[act as 'let-out'];
  const [start, end] = asWorked(sizes, problem.direction);
  const bundle = part === 'start-move' ? start : end;
  const now = `${bundle === 1 ? 'One string is' : `${figure(bundle)} strings are`} at the ${side} edge now`;
  if (act === 'carry-behind')
    return `The leading string is carried behind the two edge strings on the ${side}, to their inner side`;
  // The string that moves is the one on the inner side.
  const moving = `String ${figure(side === 'left' ? strings[1] : strings[0])}`;
  const behind = at === from ? '' : ' passes behind the leading string and';
  return `${moving}${behind} ${act === 'let-out' ? 'comes out' : 'joins the edge'}. ${now}`;
}

/** What was done, in one or two sentences; where the leading string is now is said apart. */
export function doneWords(problem: RowProblem, step: Done): string {
  if (isMove(step.act)) return `${moveWords(problem, step)}.`;
  const name = capital(ACT_NAMES[step.act]);
  return step.strings ? `${name} round ${stringsWords(step.strings)}.` : `${name}: no base string is left for it.`;
}

/** How the row lies before the first move. */
export const rowBegins = ({ before, width }: RowProblem): string =>
  `${count(width, 'base string')}: ${before[0] === 1 ? 'a single one' : `${figure(before[0])} in a bundle`} at the left edge, ${before[1] === 1 ? 'a single one' : `${figure(before[1])} in a bundle`} at the right edge.`;
