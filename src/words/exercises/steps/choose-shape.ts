import type { ChooseGroup } from '../../../solver/exercises/choose/groups.ts';
import { count, figure } from '../../numbers.ts';
import { both } from '../choices/saying.ts';
import { SHAPE_CHOICES } from '../choices/shape.ts';
import { chosen } from './chosen.ts';
import type { Saying } from './saying.ts';

/** What has to be known to choose, and the choice. */
export const CHOOSE_SHAPE_STEPS: Readonly<Record<`why-${ChooseGroup['shape']}` | 'chosen', Saying>> = {
  'why-corner-cells': [
    ({ row, side, bundle, outside }) =>
      `In row ${figure(row)} one knot holds the ${count(bundle, 'string')} on the ${side}. It stands in the innermost of their columns, and ${count(outside, 'column')} outside it ${outside === 1 ? 'stays' : 'stay'} empty.`,
  ],
  'why-closing-end': [
    ({ height, closingLeft, closingRight }) =>
      `Only the last row is sure: row ${figure(height)} ties the whole bundles, ${both(closingLeft, closingRight)}. Each step back from there takes one string off.`,
  ],
  'why-bundle-knot': [
    ({ left, right, single, knots }) =>
      `One knot holds all ${figure(left)} strings on the left, one all ${figure(right)} on the right, and each of the ${count(single, 'single string')} has its own. That makes ${count(knots, 'knot')}.`,
    ({ single, knots }) => `1 + ${figure(single)} + 1 = ${figure(knots)}`,
  ],
  chosen: chosen(SHAPE_CHOICES),
};
