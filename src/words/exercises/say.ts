import type { SayTopic } from '../../solver/exercises/say/problem.ts';
import { count, figure, type Value, type Values } from '../numbers.ts';

type Say = (values: Values) => string;

const both = (left: Value, right: Value): string =>
  left === right ? `${figure(left)} on each side` : `${figure(left)} on the left and ${figure(right)} on the right`;

const onBar: Say = ({ width, capacity }) =>
  `The chart is ${count(width, 'column')} wide. The bar takes ${count(capacity, 'string')}.`;
const inRow: Say = ({ width, row, left, right }) =>
  `The chart is ${count(width, 'column')} wide. In row ${figure(row)} the bundles hold ${both(left, right)}.`;

/** What is known, and what is to be explained. */
export const SAY_WORDS: { readonly [T in SayTopic]: { readonly given: Say; readonly ask: Say } } = {
  'two-borrowed': {
    given: onBar,
    ask: () => 'Why are two strings borrowed from the bar? Explain it to your neighbour in a sentence or two.',
  },
  'bundle-one-knot': {
    given: inRow,
    ask: () => 'Why does a whole bundle count as one knot? Explain it in a sentence or two.',
  },
  'sides-even': {
    given: (values) => `${onBar(values)} In the end each side has ${count(values['strands'], 'string')}.`,
    ask: () => 'Why must each side be even? Explain it in a sentence or two.',
  },
  'leading-inside': {
    given: inRow,
    ask: ({ row }) =>
      `Why does the leading string have to be on the inner side of the bundle when row ${figure(row)} begins? Explain it in a sentence or two.`,
  },
  'closing-from-the-end': {
    given: ({ height, closingLeft, closingRight }) =>
      `The piece has ${count(height, 'row')} and ends with bundles of ${both(closingLeft, closingRight)}.`,
    ask: () => 'Why do you count the closing rows from the end? Explain it in a sentence or two.',
  },
  'rows-short': {
    given: inRow,
    ask: ({ row, width }) =>
      `Somebody counts the knots of row ${figure(row)} and finds fewer than ${figure(width)}. Is that a mistake? Explain why in a sentence or two.`,
  },
  'trim-last': {
    given: ({ width, height }) =>
      `The last of ${count(height, 'row')} is tied. ${count(width, 'base string')} and the leading string hang down.`,
    ask: () => 'Why is nothing trimmed until the very end? Explain it in a sentence or two.',
  },
};
