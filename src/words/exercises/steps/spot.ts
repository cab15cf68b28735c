import type { SpotStepKey } from '../../../solver/exercises/spot/solution.ts';
import type { SumField } from '../../../solver/exercises/sum/problem.ts';
import { count, figure, type Value, type Values } from '../../numbers.ts';
import { lineName } from '../spot-sheet.ts';
import type { Saying } from './saying.ts';

const both = (left: Value, right: Value): string =>
  left === right ? `${figure(left)} on each side` : `${figure(left)} on the left and ${figure(right)} on the right`;

const onward = ({ direction }: Values): string => (direction === 'rightward' ? 'to the right' : 'to the left');

const edgeIs = ({ strings, side }: Values): string =>
  strings === 1 ? `the single string at the ${side} edge` : `the ${figure(strings)} strings at the ${side} edge`;

function rightInRow(values: Values): string {
  const { place } = values;
  if (place === 'lead')
    return values['strings'] === 1
      ? `The row ends past a single string at the ${values['side']} edge, so the leading string rests outside it.`
      : `The row ends at a bundle on the ${values['side']}, so the leading string rests on its inner side.`;
  if (place === 'start' || place === 'end') {
    const out = values['freed'] === 1 ? ' One string is let out, to the inner side, and has its own knot.' : '';
    return `In this row ${edgeIs(values)} ${values['strings'] === 1 ? 'gets' : 'get'} a ${values['knot']} knot.${out}`;
  }
  return `String ${figure(values['number'])} has a ${values['knot']} knot, which takes the leading string on ${onward(values)}.`;
}

const planLine = ({ row, left, right, width, knots }: Values): string =>
  `Row ${figure(row)} ties ${both(left, right)}. That leaves ${count(knots, 'knot')} of the ${count(width, 'column')}.`;

const sumLine = ({ place, shown }: Values): string => `“${lineName(place as SumField)}: ${figure(shown)}”`;

/** How one line of a written sum follows from those above it, as they stand. */
function lineFollows(values: Values): string {
  const shown = (field: SumField): Value => values[`${field}Shown`];
  const [half, borrowed, onBar] = [shown('eachSide'), shown('borrowed'), shown('onBar')];
  switch (values['place'] as SumField) {
    case 'places':
      return values['placesShown'] === values['capacity']
        ? `All ${figure(values['capacity'])} places are used for the ${figure(values['strands'])} strings.`
        : `The bar takes ${figure(values['capacity'])}, and one place stays idle for the ${figure(values['strands'])} strings.`;
    case 'spare':
      return `${figure(values['strands'])} − ${figure(shown('places'))} = ${figure(shown('spare'))}.`;
    case 'eachSide':
      return `${figure(shown('spare'))} ÷ 2 = ${figure(half)}.`;
    case 'parity':
      return `${figure(half)} is ${shown('parity')}.`;
    case 'borrowed':
      return borrowed === 0 ? 'An even half borrows nothing.' : 'An odd half borrows one string for each side.';
    case 'onBar':
      return `${figure(shown('places'))} − ${figure(borrowed)} = ${figure(onBar)}.`;
    case 'bundle':
      return `${figure(half)} + ${figure(Number(shown('bundle')) - Number(half))} = ${figure(shown('bundle'))}.`;
    default:
      return `${figure(onBar)} + 2 = ${figure(shown('firstRowKnots'))}.`;
  }
}

/** What is right on a sheet, place by place, and what is the matter at the last. */
export const SPOT_STEPS: Readonly<Record<SpotStepKey, Saying>> = {
  'right-row': [rightInRow],
  'right-plan': [planLine],
  'right-sum': [(values) => `${sumLine(values)} comes out. ${lineFollows(values)}`],
  'wrong-leans-wrong': [
    (values) =>
      `String ${figure(values['number'])} has a ${values['shown']} knot. This row goes ${onward(values)}, so every single string gets a ${values['knot']} knot.`,
  ],
  'wrong-ordinary-on-bundle': [
    (values) =>
      `A ${values['shown']} knot goes round ${edgeIs(values)}. It would carry the leading string past them. A bundle there takes a ${values['knot']} knot.`,
  ],
  'wrong-turns-wrong': [
    (values) =>
      `A ${values['shown']} knot goes round ${edgeIs(values)}. It begins on the outer side, where the leading string is not. On the ${values['side']} it has to be a ${values['knot']} knot.`,
  ],
  'wrong-lead-wrong-side': [
    ({ side, strings, rests }) =>
      strings === 1
        ? `The ${side} edge is a single string. An ordinary knot takes the leading string past it, so it has to rest ${rests} that edge.`
        : `The ${side} edge is a bundle. Its knot turns, so the leading string has to rest ${rests} that edge.`,
  ],
  'wrong-out-on-wrong-side': [
    ({ side }) =>
      `The string let out on the ${side} hangs outside its bundle. It has to pass behind the leading string to the inner side, where it becomes a column.`,
  ],
  'wrong-two-let-out': [
    (values) =>
      `Two strings are let out on the ${values['side']}. Each side lets out one string a row, and ${figure(values['strings'])} strings stay together in this row.`,
  ],
  'wrong-strings-counted': [
    (values) =>
      `${planLine(values)} The sheet has ${figure(values['shownKnots'])}, a knot for every string, though one knot holds a whole bundle.`,
  ],
  'wrong-bundles-left-out': [
    (values) =>
      values['in'] === 'sum'
        ? `Row 1 has ${figure(values['figure'])} knots. The sheet has ${figure(values['shown'])}: the strings on the bar, without a knot for each bundle.`
        : `${planLine(values)} The sheet has ${figure(values['shownKnots'])}: the knots of the bundles are missing.`,
  ],
  'wrong-row-after': [
    (values) =>
      `The sheet has ${both(values['shownLeft'], values['shownRight'])} here, which belongs to the row after. ${planLine(values)}`,
  ],
  'wrong-row-before': [
    (values) =>
      `The sheet has ${both(values['shownLeft'], values['shownRight'])} here, as in the row before: nothing has moved. ${planLine(values)}`,
  ],
  'wrong-one-side-only': [
    (values) =>
      `The sheet has ${both(values['shownLeft'], values['shownRight'])} here. Both sides move in the same row. ${planLine(values)}`,
  ],
  'wrong-not-halved': [
    ({ spare, shown, figure: right }) =>
      `${figure(spare)} are spare, and they go to two sides. The half is ${figure(right)}, not ${figure(shown)}.`,
  ],
  'wrong-none-borrowed': [
    ({ half }) =>
      `The half is ${figure(half)}, which is odd. Each side needs one string more to be made of folds, so 2 are borrowed from the bar.`,
  ],
  'wrong-one-borrowed': [
    ({ half }) =>
      `The half is ${figure(half)}, which is odd. There are two sides, and each needs one string more, so 2 are borrowed and not 1.`,
  ],
  'wrong-borrowed-from-even': [
    ({ half }) =>
      `The half is ${figure(half)}, which is even already. Each side is made of whole folds, and nothing is borrowed.`,
  ],
  'wrong-bar-kept': [
    ({ places, borrowed, figure: right }) =>
      `${figure(borrowed)} strings are borrowed from the ${figure(places)} places of the bar. So ${figure(right)} hang on it.`,
  ],
};
