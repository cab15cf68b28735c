import { stringAt } from '../../solver/exercises/spot/places.ts';
import type { ShownEdge, SpotFault, SpotPlace, SpotProblem } from '../../solver/exercises/spot/problem.ts';
import type { SumField } from '../../solver/exercises/sum/problem.ts';
import { capital, count, figure } from '../numbers.ts';
import { sumLabel } from './labels.ts';

/** The faults as they are offered. */
export const FAULT_NAMES: Readonly<Record<SpotFault, string>> = {
  'leans-wrong': 'A knot leans against the row',
  'ordinary-on-bundle': 'An ordinary knot round a bundle',
  'turns-wrong': 'The turning knot of the other side',
  'lead-wrong-side': 'The leading string rests on the side where it can’t be used',
  'out-on-wrong-side': 'The string let out hangs outside its bundle',
  'two-let-out': 'Two strings of one side let out in one row',
  'strings-counted': 'A knot is counted for every string of a bundle',
  'bundles-left-out': 'The knots of the bundles are left out',
  'row-after': 'It has what belongs to the row after it',
  'row-before': 'It has what belongs to the row before it',
  'one-side-only': 'Only one of the two sides has moved',
  'not-halved': 'The spare strings are not halved',
  'none-borrowed': 'An odd half, and nothing is borrowed',
  'one-borrowed': 'Only one string is borrowed for two sides',
  'borrowed-from-even': 'Strings are borrowed though the half is even',
  'bar-kept': 'What is borrowed is not taken off the bar',
};

function edgeWords(name: string, { strings, knot, freed, side }: ShownEdge): string {
  const out =
    freed.length === 0
      ? ''
      : ` ${freed.length === 1 ? 'One string is' : `${figure(freed.length)} strings are`} let out, on the ${side} side, with a ${freed[0]} knot${freed.length === 1 ? '' : ' each'}.`;
  return `${name}: ${strings === 1 ? 'a single string' : `a bundle of ${count(strings, 'string')}`}, with a ${knot} knot.${out}`;
}

const both = (left: number, right: number): string =>
  left === right
    ? left === 1
      ? 'single edge strings'
      : `bundles of ${figure(left)}`
    : `${figure(left)} at the left edge and ${figure(right)} at the right`;

/** The name of a line of a written sum. */
export const lineName = (field: SumField): string => (field === 'parity' ? 'Even or odd' : capital(sumLabel(field)));

/** What stands at one place of the sheet, and nothing of whether it should. */
export function placeWords(problem: SpotProblem, place: SpotPlace): string {
  if (problem.in === 'row') {
    const { shown, direction } = problem;
    const [startSide, endSide] = direction === 'rightward' ? ['left', 'right'] : ['right', 'left'];
    if (place === 'lead') return `At the end the leading string rests ${shown.rests} the ${endSide} edge.`;
    if (place === 'start') return edgeWords(`Where the row begins, on the ${startSide}`, shown.start);
    if (place === 'end') return edgeWords(`Where the row ends, on the ${endSide}`, shown.end);
    const at = Number(place.slice('between-'.length));
    return `String ${figure(stringAt(problem, at))}: a ${shown.between[at - 1]} knot.`;
  }
  if (problem.in === 'plan') {
    const line = problem.shown.find(({ row }) => place === `row-${row}`);
    return line ? `Row ${figure(line.row)}: ${both(line.left, line.right)}, ${count(line.knots, 'knot')}.` : '';
  }
  const index = problem.fields.indexOf(place as SumField);
  return `${lineName(place as SumField)}: ${figure(problem.shown[index])}.`;
}
