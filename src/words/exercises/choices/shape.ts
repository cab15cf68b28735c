import type { ChooseGroup } from '../../../solver/exercises/choose/groups.ts';
import { count, figure } from '../../numbers.ts';
import { type AskedOf, both, bundles, columns } from './saying.ts';

export const SHAPE_CHOICES: AskedOf<ChooseGroup['shape']> = {
  'corner-cells': {
    given: (values) => `${bundles(values)} Count the columns of a bundle from the edge.`,
    ask: ({ side }) => `Which cells are corner cells on the ${side}?`,
    choices: {
      'outside-the-knot': ({ outside }) => `Those in ${columns(1, outside)}`,
      'all-of-the-bundle': ({ bundle }) => `Those in ${columns(1, bundle)}`,
      'inside-the-edge': ({ bundle }) => `Those in ${columns(2, bundle)}`,
    },
  },
  'closing-end': {
    given: ({ height, closingLeft, closingRight, fullWidthRow }) =>
      `The piece has ${count(height, 'row')}. It has its full width from row ${figure(fullWidthRow)} on, and ends with bundles of ${both(closingLeft, closingRight)}.`,
    ask: () => 'From where do you count to find the row in which closing begins?',
    choices: {
      'last-row': ({ height }) => `From row ${figure(height)}, the last, back towards the ring`,
      ring: () => 'From row 1, the row at the ring',
      'full-width': ({ fullWidthRow }) => `From row ${figure(fullWidthRow)}: as soon as the width is full`,
    },
  },
  'bundle-knot': {
    given: (values) => `${bundles(values)} Between them hang ${count(values['single'], 'single string')}.`,
    ask: () => 'What do you count for one bundle when you count the knots of this row?',
    choices: {
      one: () => 'One knot',
      strings: ({ left }) => `As many knots as it has strings, ${figure(left)} on the left`,
      nothing: () => 'No knot: only single strings count',
    },
  },
};
