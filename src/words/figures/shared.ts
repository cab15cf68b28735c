import { count, figure, type Values } from '../numbers.ts';

/** A sentence or label from its figures. */
export type Words = Readonly<Record<string, (values: Values) => string>>;

export const folds = ({ folds: number, over }: Values): string =>
  number === 0 && over ? 'no fold' : `${count(number, 'fold')}${over ? ' + 1' : ''}`;
export const side = ({ side: name }: Values): string => (name === 'left' ? 'left' : 'right');

/** 'a single string' or 'a bundle of 6'. */
const edge = (bundle: Values[string] | undefined): string =>
  bundle === 1 ? 'a single string' : `a bundle of ${figure(bundle)}`;

/** What stands at the two edges of a row. */
export const edges = ({ left, right }: Values): string =>
  left === right
    ? left === 1
      ? 'a single string at either edge'
      : `${edge(left)} at either edge`
    : `${edge(left)} on the left and ${edge(right)} on the right`;

/** A row of a stack: its knots and its two edges. */
export const rowEdges = ({ row, knots, ...values }: Values): string =>
  `Row ${figure(row)}: ${count(knots, 'knot')}, with ${edges(values)}.`;
