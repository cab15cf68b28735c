import type { SayStepKey } from '../../../solver/exercises/say/solution.ts';
import { capital, count, figure, noun, type Values } from '../../numbers.ts';
import type { Saying } from './saying.ts';

type Say = (values: Values) => string;

/** Each point as a clause. It is a sentence of the model answer, and what the learner ticks: 'I said that …'. */
export const SAY_CLAUSES: Readonly<Record<SayStepKey, Say>> = {
  'two-borrowed:half-odd': ({ spare, eachSide }) =>
    `half of the ${figure(spare)} spare strings is ${figure(eachSide)}, and that is odd`,
  'two-borrowed:folds-are-twos': () =>
    'a side bundle is made of folds, and a fold is two strings, so it has to be even',
  'two-borrowed:one-for-each': ({ strands }) =>
    `each side needs one string more to have ${figure(strands)}, and two sides make two`,
  'bundle-one-knot:held-as-one': ({ left }) => `one knot goes round all ${figure(left)} strings of a bundle`,
  'bundle-one-knot:one-base': () => 'a knot treats the whole bundle as if it were one base string',
  'bundle-one-knot:one-cell': ({ row }) =>
    `in row ${figure(row)} the knot fills one cell of the chart, in the innermost column of the bundle`,
  'sides-even:folds-are-twos': () => 'the strings of a side hang in folds, and each fold hangs down as two',
  'sides-even:no-half-fold': ({ strands, foldsEachSide }) =>
    `${figure(strands)} strings are ${count(foldsEachSide, 'fold')}, and an odd number would leave half a fold over`,
  'sides-even:both-alike': () => 'both sides have to be alike, or the piece hangs askew',
  'leading-inside:next-knot': ({ row }) =>
    `the next knot of row ${figure(row)} is tied further in, so the leading string has to be there`,
  'leading-inside:turning-returns': () =>
    'a turning knot goes out round the bundle and comes back, so it begins and ends on the inner side',
  'leading-inside:no-jump': () => 'the leading string can’t jump over the bundle without a move of its own',
  'closing-from-the-end:last-is-whole': ({ height, closingLeft, closingRight }) =>
    `the bundles have to be whole in the last row, row ${figure(height)}, with ${closingLeft === closingRight ? `${figure(closingLeft)} on each side` : `${figure(closingLeft)} on the left and ${figure(closingRight)} on the right`}`,
  'closing-from-the-end:one-a-row': ({ closingStep }) =>
    `each side takes in one string ${closingStep === 1 ? 'in a row' : `in ${figure(closingStep)} rows`}, and no more`,
  'closing-from-the-end:count-back': ({ firstClosingRow }) =>
    `the rows that this takes are counted back from the last one, which gives row ${figure(firstClosingRow)}`,
  'rows-short:tied-as-one': ({ row, left, right }) =>
    `in row ${figure(row)} the bundles of ${figure(left)} and ${figure(right)} have one knot each`,
  'rows-short:corner-cells': () => 'the cells outside the knot of a bundle are corner cells, and no knot belongs there',
  'rows-short:not-a-fault': ({ knots, width }) =>
    `${count(knots, 'knot')} instead of ${figure(width)} ${noun(knots, 'is', 'are')} no mistake, since the piece starts narrow and widens`,
  'trim-last:held-by-nothing': () =>
    'the last turning knots are held only by the leading strings that lie in the bundles',
  'trim-last:tied-with': ({ width }) =>
    `the gathering and the square knots are tied with the ends of the ${count(width, 'base string')}`,
  'trim-last:needs-length': () => 'an end that is cut short can’t be drawn tight, and the knot opens',
};

/** The model answers, point by point. */
export const SAY_STEPS = Object.fromEntries(
  Object.entries(SAY_CLAUSES).map(([key, clause]): [string, Saying] => [
    key,
    [(values) => `${capital(clause(values))}.`],
  ]),
) as Readonly<Record<SayStepKey, Saying>>; // fromEntries forgets which keys it was given; the clauses hold them all
