import { HABITS } from '../../solver/exercises/row/habits.ts';
import type { RowAct, RowProblem } from '../../solver/exercises/row/problem.ts';
import { bundlesAfter, edgesOf, isMove } from '../../solver/exercises/row/tie.ts';
import type { TiedSlip } from '../../solver/missteps/knots.ts';
import { count, figure } from '../numbers.ts';
import type { SlipText } from './slip-text.ts';

/** A row, and all that the learner did in it. */
export interface SlippedTying {
  readonly row: RowProblem;
  readonly acts: readonly RowAct[];
}

const way = ({ direction }: RowProblem): string => (direction === 'rightward' ? 'to the right' : 'to the left');
const sides = ({ direction }: RowProblem): readonly [string, string] =>
  direction === 'rightward' ? ['left', 'right'] : ['right', 'left'];
const bundlesOf = (row: RowProblem): string => {
  const [left, right] = bundlesAfter(row);
  return left === right
    ? `${count(left, 'string')} on each side`
    : `${figure(left)} on the left and ${figure(right)} on the right`;
};
const ordinaryIn = (acts: readonly RowAct[]): number =>
  acts.filter((act) => act === 'forward' || act === 'backward').length;

export const KNOT_WORDS: Readonly<Record<TiedSlip, (tying: SlippedTying) => SlipText>> = {
  'direction-not-swapped': ({ row }) => {
    const due = HABITS.ordinary(row);
    return {
      did: `tied ${due === 'forward' ? 'backward' : 'forward'} knots, as in the row before`,
      why: `Row ${figure(row.row)} goes ${way(row)}. A ${due === 'forward' ? 'backward' : 'forward'} knot begins on the side where the leading string has not come yet.`,
      next: `Turn with the row: tie ${due} knots on the single strings.`,
    };
  },
  'ordinary-knot-on-bundle': ({ row }) => ({
    did: `tied a ${HABITS.ordinary(row)} knot where the knot has to turn`,
    why: 'At a bundle, and at the one string left of it, the leading string lies on the inner side. An ordinary knot carries it across, and the next knot would have to reach over.',
    next: 'Give that edge a knot that comes back to the side where it began.',
  }),
  'turning-knots-swapped': () => ({
    did: 'swapped the two turning knots',
    why: 'A forward-backward knot begins and ends on the left, and a backward-forward knot on the right. The leading string is on the inner side of a bundle, so each edge has its own.',
    next: 'Tie a backward-forward knot on the left edge, and a forward-backward knot on the right.',
  }),
  'turning-knot-on-edge-string': ({ row }) => ({
    did: 'tied a turning knot on a single edge string',
    why: `The leading string has to pass this string, ${way(row)}. A knot that turns keeps it on the side where it came from.`,
    next: `Tie a ${HABITS.ordinary(row)} knot there. Only a bundle, or the one string left of it where a row begins, has a knot that turns.`,
  }),
  'two-let-out': ({ row }) => ({
    did: 'let two strings out on one side',
    why: `A bundle lets out one string a row. Two at once give the edge a step that everybody sees. Row ${figure(row.row)} keeps ${bundlesOf(row)} together.`,
    next: 'Let one string out, and keep the next one for the row after.',
  }),
  'carry-behind-forgotten': ({ row, acts }) => ({
    did: `left the leading string outside the two edge strings on the ${sides(row)[0]}${acts.includes('take-in') ? ', and took them together' : ''}`,
    why: 'The row before ended past a single string, so the leading string lies outside. The knot on the new bundle begins on its inner side.',
    next: 'Carry the leading string behind both edge strings first.',
  }),
  'bundle-counted-as-strings': ({ row, acts }) => ({
    did: `tied ${count(ordinaryIn(acts), 'ordinary knot')}, one for every string of a bundle`,
    why: `The edges hold ${bundlesOf(row)} in this row. One knot goes round a whole bundle.`,
    next: 'Tie each bundle once, with a knot that turns.',
  }),
  'bundle-not-counted': ({ row }) => ({
    did: 'tied only the single strings between the bundles',
    why: `The edges hold ${bundlesOf(row)} in this row. A bundle that gets no knot hangs loose beside the picture.`,
    next: 'Tie a knot round each bundle too: one where the row begins, one where it ends.',
  }),
  'one-string-a-row': ({ row, acts }) => {
    const { was, due } = edgesOf(row);
    const first = acts.findIndex((act) => !isMove(act));
    const movedFirst = acts.slice(0, first).some(isMove);
    const [start, end] = sides(row);
    const lets = due.start < was.start || due.end < was.end;
    return {
      did: `${lets ? 'let a string out' : 'took a string in'} on the ${movedFirst ? start : end} only`,
      why: 'Both sides do the same in one row. If only one of them does, the picture leans over.',
      next: `${lets ? 'Let' : 'Take'} one string ${lets ? 'out' : 'in'} on the ${movedFirst ? end : start} as well.`,
    };
  },
};
